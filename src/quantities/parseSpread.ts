import { Z90 } from "../core/estimate.js";
import { ambiguous, inRange, positive, type TextForm, unreadable } from "../core/guards.js";
import { plainFigures } from "./numberText.js";
import { timeFromText } from "./timeText.js";

const SPREADS: TextForm = { format: "spread", examples: ["10 %", "± 30 s", "0:30"] };

/** A factor of 1 and more each way. */
const FACTOR = /^(?:x|\u00d7|(?:an? |ein )?fa[ck]tor(?: of| von)?)\s*([1-9]\d*(?:\.\d+)?)$/i;

/**
 * Reads how well a time is known: nine times in ten within so much of it.
 *
 * @param text - a share or a time, with or without a plus-minus sign: `"10 %"`, `"± 30 s"`, `"0:30"`,
 * `"10 percent"`, `"½ min"`; or a factor each way: `"x 1.9"`, `"factor 1.9"`; in German `"10 Prozent"`
 * @param timeS - the time that it belongs to, in s, above 0 to 1e7
 * @returns the standard deviation of ln(time), as `logSd` of a baseline takes it, 0 to 3
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when the text is no spread, has no unit (`"10"` could be either), or the time is out of
 * range
 *
 * @remarks logSd = ln(1 + spread)/1.645: the upper end of the 90 % interval lies so much above the time, and
 * the lower as many times below it. For 10 % of 8:30 that is 9:21 and 7:44.
 *
 * @example
 * ```ts
 * parseSpread("10 %", 510) // => 0.05794
 * parseSpread("± 51 s", 510) // => 0.05794
 * ```
 */
export function parseSpread(text: string, timeS: number): number {
  const at = "parseSpread/text";
  if (typeof text !== "string") unreadable(at, SPREADS, text);
  const time = positive("parseSpread/timeS", timeS, 1e7, "timeS");
  const plain = plainFigures(text.trim().replace(/^(?:\u00b1|\+\/?[-\u2212])\s*/, ""));
  const [, factor] = FACTOR.exec(plain) ?? [];
  if (factor !== undefined) return inRange(at, Math.log(Number(factor)) / Z90, 0, 3);
  const [, number, percent] = /^(\d+(?:\.\d+)?)\s*(%|per ?cent|prozent)?$/i.exec(plain) ?? [];
  if (number === undefined && !/^(?:\d|PT)/.test(plain)) unreadable(at, SPREADS, text);
  if (number !== undefined && percent === undefined)
    ambiguous(at, SPREADS, [`${number} %`, `${number} s`], text);
  const share =
    number === undefined
      ? timeFromText(at, plain, { form: SPREADS, whole: text.trimEnd() }) / time
      : Number(number) / 100;
  return inRange(at, Math.log1p(share) / Z90, 0, 3);
}
