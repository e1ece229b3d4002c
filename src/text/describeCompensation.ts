import { cautionSentence } from "./cautionSentence.js";
import type { Compensation } from "../compensate/types.js";
import { gravestFirst, refuses } from "../core/caution.js";
import { arrayOf } from "../core/guards.js";
import { checkedEstimate, LONGEST_ANSWER_S, Z90 } from "../core/estimate.js";
import { clockText } from "../quantities/clockText.js";
import { checkedTexts } from "./checkedTexts.js";
import { answerTexts, type AnswerTexts } from "./answerTexts.js";
import { temperatureUnit, type TemperatureUnitOptions } from "../quantities/parseTemperature.js";
import { checkedCautions } from "./checkedCautions.js";
import { factorText } from "./describeFactor.js";

/**
 * Learned from the same runs, the parts of an answer may be off against each other: from so many times it is
 * told (assumed).
 */
const OFFSET = 1.25;

/**
 * A compensated time in short lines, to read aloud or to pin to the wall.
 *
 * @param compensation - what `compensate` returns
 * @param texts - the catalogue of another language; English when left out
 * @param options - `unit`: `"C"` or `"F"` for every temperature; °C when left out
 * @returns the time with its interval, a line for each cause that changes it or makes it less sure, one more
 * where they are known better together than apart, then all cautions, gravest first; with a caution to stop,
 * the cautions first, and the time as what the laws alone would say
 * @throws TypeError when `compensation` or a part of it is of the wrong kind
 * @throws RangeError when a time or a factor is not above 0, a spread not from 0 to 100, or the unit
 * none of the two
 *
 * @remarks Every interval and every "give or take" means nine in ten. Where a caution is in the data, its
 * path says; here it is left out.
 *
 * @example
 * ```ts
 * const law: TemperatureLaw = { kind: "coefficient", ratio: 2, intervalC: 10, sdRatio: 0.1 };
 * const answer = compensate({ timeS: 510, temperatureC: 20 }, { temperatureC: 18 }, { temperature: law });
 * const lines = describeCompensation(answer);
 * lines[0] // => "Develop 9:46, with 90 % certainty between 9:07 and 10:27."
 * lines[1] // => "the known time itself, good to 7 %"
 * ```
 */
export function describeCompensation(
  compensation: Compensation,
  texts: AnswerTexts = answerTexts,
  options: TemperatureUnitOptions = {},
): readonly string[] {
  const at = "describeCompensation/compensation";
  checkedTexts("describeCompensation/texts", texts, answerTexts);
  const unit = temperatureUnit("describeCompensation/options", options) ?? "C";
  const { timeS, lowS, highS } = checkedEstimate(at, compensation, LONGEST_ANSWER_S);
  const { factors, cautions } = compensation;
  const rows = arrayOf(`${at}/factors`, factors, 0) as Compensation["factors"];
  const all = rows.map((row, i) => factorText(`${at}/factors/${i}`, row, texts, unit));
  const lines = all.filter((_, i) => rows[i]?.value !== 1 || rows[i].logSd > 0);
  const apart = Z90 * Math.sqrt(rows.reduce((sum, { logSd }) => sum + logSd * logSd, 0));
  const together = Math.log(highS / lowS) / 2;
  if (together > 0 && apart > OFFSET * together) lines.push(texts.together(Math.exp(together)));
  checkedCautions(`${at}/cautions`, cautions);
  const said = gravestFirst(cautions).map(
    (one) => `${texts.cautions.severities[one.severity]}: ${cautionSentence(one, texts.cautions, unit)}`,
  );
  const clock = (value: number): string => clockText(value, texts.months);
  const times = [clock(timeS), clock(lowS), clock(highS)] as const;
  return refuses(cautions)
    ? [texts.refused, ...said, texts.refusedTime(...times), ...lines]
    : [texts.time(...times), ...lines, ...said];
}
