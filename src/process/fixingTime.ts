import { inRange, positive } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { handbookFixTimes } from "../handbook/process.js";

/** What {@link fixingTime} is asked. */
export interface FixingQuestion {
  /** clearing time in this bath, s, above 0 to 1e6 */
  readonly clearingS: number;
  /** how many clearing times, 1 to 10; 2 when left out */
  readonly times?: number | undefined;
}

/**
 * The fixing time from the clearing time.
 *
 * @param question - `clearingS`, the time in s in which a scrap of the material turns clear in this bath, and
 * `times`
 * @returns the fixing time in s
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range
 *
 * @remarks fixing time = times × clearing time. The sources split: twice (US Navy, Photography (Basic),
 * NAVEDTRA 14209, p. 10-7; Cyclopedia of Photography, 1911), and three times for iodide-rich and
 * tabular films (K. Guttikar, Black and white film fixer times; practice after Anchell and Troop). Plans
 * take three for plates too, and where the clearing time is assumed. Older
 * manuals add 5 or 10 minutes instead (Henley, 1914, p. 524; Schriever, 1909, sec. 526), which is more than
 * twice only where clearing is quick.
 *
 * @example
 * ```ts
 * fixingTime({ clearingS: 45 }) // => 90
 * fixingTime({ clearingS: 45, times: 3 }) // => 135
 * ```
 */
export function fixingTime(question: FixingQuestion): number {
  onlyFields("fixingTime/question", question, ["clearingS", "times"]);
  const clearingS = positive("fixingTime/question/clearingS", question.clearingS, 1e6, "timeS");
  const { times = handbookFixTimes.conventional.times } = question;
  return clearingS * inRange("fixingTime/question/times", times, 1, 10);
}
