import { inRange, positive } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { COLD_FIX } from "../handbook/process.js";

/** What {@link clearingTimeAt} is asked: a clearing time measured at `fromC`, wanted at `toC`. */
export interface ClearingQuestion {
  /** s, above 0 to 7200 */
  readonly clearingS: number;
  /** °C, 0 to 100 */
  readonly fromC: number;
  /** °C, 0 to 100 */
  readonly toC: number;
}

/**
 * A clearing time at another temperature.
 *
 * @param question - clearing time in s (above 0 to 7200), the temperature it was measured at and the bath's,
 * 0 to 100 °C
 * @returns the clearing time in s
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range
 *
 * @remarks A colder bath takes 2.7 times as long for each 10 °C. L. P. Clerc (Photography: Theory and
 * Practice, c. 1937, sec. 392, after C. E. K. Mees, 1921) prints the order: cold slows fixing more than
 * development. The steepest development coefficient of the handbook is 2 over 7 °C, which is 2.69 over 10 °C
 * (H. E. Ives, Airplane Photography, 1920). A warmer bath is taken as quicker by 2 for each 10 °C, and up to
 * 20 °C only: US War Department, TM 11-2323, sec. 33 c, prints twice the time for 18 °F. Both err toward the
 * longer time, so there and back is longer than before. A fixing time that is too long does less harm than
 * one that is too short.
 *
 * @example
 * ```ts
 * clearingTimeAt({ clearingS: 60, fromC: 20, toC: 10 }) // => 162
 * clearingTimeAt({ clearingS: 120, fromC: 10, toC: 20 }) // => 60
 * ```
 */
export function clearingTimeAt(question: ClearingQuestion): number {
  const where = "clearingTimeAt/question";
  onlyFields(where, question, ["clearingS", "fromC", "toC"]);
  const clearingS = positive(`${where}/clearingS`, question.clearingS, 7200, "timeS");
  const fromC = inRange(`${where}/fromC`, question.fromC, 0, 100, "temperatureC");
  const toC = inRange(`${where}/toC`, question.toC, 0, 100, "temperatureC");
  const { belowC, intervalC, slower, quicker } = COLD_FIX;
  const stepC = fromC - Math.min(toC, Math.max(fromC, belowC));
  return clearingS * (stepC > 0 ? slower : quicker) ** (stepC / intervalC);
}
