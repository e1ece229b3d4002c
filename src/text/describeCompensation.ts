import type { Compensation } from "../compensate/types.js";
import { gravestFirst, refuses } from "../core/caution.js";
import { arrayOf, plainObject } from "../core/guards.js";
import { formatTime } from "../quantities/formatTime.js";
import { checkedTexts } from "./checkedTexts.js";
import { answerTexts, type AnswerTexts } from "./answerTexts.js";
import { checkedCautions } from "./describeCautions.js";
import { aboveZero, factorText } from "./describeFactor.js";

/** Beyond this a clock has no face: the longest time that `formatTime` writes, s. */
const LONGEST_S = 1e7;

/**
 * A compensated time in short lines, to read aloud or to pin to the wall.
 *
 * @param compensation - what `compensate` returns
 * @param texts - the catalogue of another language; English when left out
 * @returns the time with its interval, a line for each cause that changes it or makes it less sure, then all
 * cautions, gravest first; with a caution to stop, the cautions first, and the time as what the laws alone
 * would say
 * @throws TypeError when `compensation` or a part of it is of the wrong kind
 * @throws RangeError when a time or a factor is not above 0, or a spread not from 0 to 100
 *
 * @remarks Every interval and every "give or take" means nine in ten. Where a caution is in the data, its
 * path says; here it is left out.
 *
 * @example
 * ```ts
 * const law = { kind: "coefficient", ratio: 2, intervalC: 10, sdRatio: 0.1 };
 * const answer = compensate({ timeS: 510, temperatureC: 20 }, { temperatureC: 18 }, { temperature: law });
 * const lines = describeCompensation(answer);
 * lines[0] // => "Develop 9:46, with 90 % certainty between 9:07 and 10:27."
 * lines[1] // => "known time: unchanged, give or take 7 % (general rule)"
 * ```
 */
export function describeCompensation(
  compensation: Compensation,
  texts: AnswerTexts = answerTexts,
): readonly string[] {
  const at = "describeCompensation/compensation";
  checkedTexts("describeCompensation/texts", texts, answerTexts);
  const { timeS, lowS, highS, factors, cautions } = plainObject(at, compensation) as unknown as Compensation;
  for (const [field, value] of Object.entries({ timeS, lowS, highS })) aboveZero(`${at}/${field}`, value);
  const rows = arrayOf(`${at}/factors`, factors, 0) as Compensation["factors"];
  const all = rows.map((row, i) => factorText(`${at}/factors/${i}`, row, texts));
  const lines = all.filter((_, i) => rows[i]?.value !== 1 || rows[i].logSd > 0);
  checkedCautions(`${at}/cautions`, cautions);
  const said = gravestFirst(cautions).map(
    ({ severity, message }) => `${texts.severities[severity]}: ${message}`,
  );
  const clock = (value: number): string => (value <= LONGEST_S ? formatTime(value) : texts.months);
  const times = [clock(timeS), clock(lowS), clock(highS)] as const;
  return refuses(cautions)
    ? [texts.refused, ...said, texts.refusedTime(...times), ...lines]
    : [texts.time(...times), ...lines, ...said];
}
