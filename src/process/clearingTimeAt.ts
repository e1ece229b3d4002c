import { inRange, plainObject, positive } from "../core/guards.js";
import { COLD_FIX } from "../handbook/process.js";

/** What {@link clearingTimeAt} is asked: a clearing time measured at `fromC`, wanted at `toC`. */
export interface ClearingQuestion {
  readonly clearingS: number;
  readonly fromC: number;
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
 * @remarks The time doubles for each 10 °C (18 °F) below 20 °C (68 °F): US War Department, TM 11-2323, sec.
 * 33 c. A colder bath always takes longer by that rule; a warmer one is taken as quicker up to 20 °C only,
 * because the rule is printed for the cold and a fixing time that is too long does less harm than one that is
 * too short.
 *
 * @example
 * ```ts
 * clearingTimeAt({ clearingS: 60, fromC: 20, toC: 10 }) // => 120
 * ```
 */
export function clearingTimeAt(question: ClearingQuestion): number {
  plainObject("clearingTimeAt/question", question);
  const clearingS = positive("clearingTimeAt/clearingS", question.clearingS, 7200, "timeS");
  const fromC = inRange("clearingTimeAt/fromC", question.fromC, 0, 100, "temperatureC");
  const toC = inRange("clearingTimeAt/toC", question.toC, 0, 100, "temperatureC");
  return clearingS * 2 ** ((fromC - Math.min(toC, Math.max(fromC, COLD_FIX.belowC))) / COLD_FIX.doublingC);
}
