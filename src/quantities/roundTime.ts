import { inRange, positive } from "../core/guards.js";
import { toStep } from "./toStep.js";

/**
 * Rounds a time to the nearest step, halves up, as one does on paper.
 *
 * @param timeS - time in seconds, from 0 to 1e7
 * @param stepS - step in seconds, above 0 to 86400; 1 when left out
 * @returns the rounded time in seconds
 * @throws TypeError when an argument is not a number
 * @throws RangeError when it is out of range
 *
 * @remarks Exact in decimals: 2.675 s in steps of 0.01 s is 2.68, although the double nearest to 2.675 lies
 * below it.
 *
 * @example
 * ```ts
 * roundTime(517, 15) // => 510
 * roundTime(517.5, 15) // => 525
 * ```
 */
export function roundTime(timeS: number, stepS: number | undefined = 1): number {
  inRange("roundTime/timeS", timeS, 0, 1e7, "timeS");
  positive("roundTime/stepS", stepS, 86400, "timeS");
  return toStep(timeS, stepS);
}
