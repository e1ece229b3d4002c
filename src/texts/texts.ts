import type { NoBrewReason } from "../brew/noBrew.js";
import type { ChartTexts } from "../chart/text.js";
import type { CautionSentences, CautionTexts } from "../core/cautionTexts.js";
import type { Ingredient } from "../handbook/ingredients.js";
import type { SetAsideReason } from "../learning/types.js";
import type { PictureTexts } from "../picture/text.js";
import type { AnswerTexts } from "../text/answerTexts.js";
import type { MixingTexts } from "../text/mixingTexts.js";
import type { SteeringTexts } from "../text/steeringTexts.js";
import type { EveningTexts } from "../text/eveningTexts.js";
import type { PlanTexts } from "../text/planTexts.js";
import type { InputRuleTexts } from "../core/errorRules.js";
import type { ProblemTexts } from "../text/problemTexts.js";

/** All that the package says, in one language: a catalogue for each function that takes one. */
export interface Texts {
  /** for `describeCompensation` and `describeFactor` */
  readonly answer: AnswerTexts;
  /** for `describeCautions`; it has a sentence for every code */
  readonly cautions: CautionTexts & {
    /** the sentence of every code */
    readonly sentences: CautionSentences;
  };
  /** for `describeChart` and `chartSvg` */
  readonly chart: ChartTexts;
  /** for `describePicture` and `pictureSvg`, beside `answer` */
  readonly picture: PictureTexts;
  /** for `describePlan` */
  readonly plan: PlanTexts;
  /** for `describeEvening` */
  readonly evening: EveningTexts;
  /** for `describeSteering` */
  readonly steering: SteeringTexts;
  /** for `describeMixing` */
  readonly mixing: MixingTexts;
  /** for `describeProblem` and `describeProblems`; it has what every rule wants */
  readonly problems: ProblemTexts & {
    /** what every rule wants */
    readonly rules: InputRuleTexts;
  };
  /** why `proposeBrew` has no brew */
  readonly noBrew: Readonly<Record<NoBrewReason, string>>;
  /** the causes, pairs and marks by their names */
  readonly causes: AnswerTexts["causes"];
  /** the ingredients of the handbook by their names */
  readonly ingredients: Readonly<Record<Ingredient, string>>;
  /** why a run is not fitted or counts for less; it follows "the run" */
  readonly setAside: Readonly<Record<SetAsideReason, string>>;
}
