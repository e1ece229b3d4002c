/*
 * The German catalogues: all sentences of the package, made from its data. `darkroom-kinetics/texts/de` is
 * this file, and nothing else imports it.
 */
import { answer } from "./de/answer.js";
import { cautions } from "./de/cautions.js";
import { chart } from "./de/chart.js";
import { evening } from "./de/evening.js";
import { mixing } from "./de/mixing.js";
import { noBrew } from "./de/noBrew.js";
import { picture } from "./de/picture.js";
import { plan } from "./de/plan.js";
import { steering } from "./de/steering.js";
import { problems } from "./de/problems.js";
import { causes, ingredients, reasons } from "./de/words.js";
import type { Texts } from "./texts.js";

/**
 * All that the package says, in German: one catalogue for each function that takes one.
 *
 * @remarks `describeCompensation` and `describeFactor` take `de.answer`, `describeCautions` takes
 * `de.cautions`, `describePlan` takes `de.plan`, `describeEvening` takes `de.evening`, `describeSteering`
 * takes `de.steering`, `describePicture` takes `de.picture`, `describeChart` and `chartSvg` take `de.chart`,
 * `describeMixing` takes `de.mixing`, `describeProblem` and `describeProblems` take `de.problems`.
 *
 * @example
 * ```ts
 * const answer = compensate({ timeS: 510, temperatureC: 20 }, { temperatureC: 18 });
 * const [line] = describeCompensation(answer, de.answer);
 * line // => "10:04 entwickeln, mit 90 % Sicherheit zwischen 9:03 und 11:12."
 * ```
 */
export const de: Texts = {
  answer,
  cautions,
  chart,
  picture,
  plan,
  evening,
  steering,
  mixing,
  problems,
  noBrew,
  causes,
  ingredients,
  setAside: reasons,
};
