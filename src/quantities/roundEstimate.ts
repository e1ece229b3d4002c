import type { TimeEstimate } from "../core/estimate.js";
import { inRange, plainObject, wrongValue } from "../core/guards.js";
import { toStep } from "./toStep.js";

/** A rounded time with its interval, and the step that they were rounded to, in s. */
export interface RoundedEstimate extends TimeEstimate {
  readonly stepS: number;
}

const STEPS_S = [300, 60, 30, 15, 5] as const;

/**
 * Rounds a time and its interval to a step that suits how well it is known.
 *
 * @param estimate - median and 90 % interval in s, as `compensate` returns them
 * @returns all three rounded to `stepS`, the largest of 5, 15, 30 s, 1 and 5 min that is at most a tenth of
 * half the interval
 * @throws TypeError when `estimate` is not an object or a time not a number
 * @throws RangeError when a time is out of range, or `timeS` lies outside its interval
 *
 * @remarks Rounding then adds nothing that shows to the spread. Where even 5 s is more than that tenth, the
 * step is 5 s from 1 min on, and 1 s below. Halves are rounded up. The steps are those of darkroom clocks
 * (common practice).
 *
 * @example
 * ```ts
 * const rounded = roundEstimate({ timeS: 1283, lowS: 955, highS: 1724 });
 * rounded // => { timeS: 1290, lowS: 960, highS: 1710, stepS: 30 }
 * ```
 */
export function roundEstimate(estimate: TimeEstimate): RoundedEstimate {
  const { timeS, lowS, highS } = plainObject("roundEstimate/estimate", estimate) as unknown as TimeEstimate;
  for (const [field, value] of Object.entries({ timeS, lowS, highS }))
    inRange(`roundEstimate/estimate/${field}`, value, 0, 1e100, "timeS");
  if (!(lowS <= timeS && timeS <= highS))
    wrongValue("roundEstimate/estimate/timeS", `from ${lowS} to ${highS} s, its interval`, timeS);
  const most = (highS - lowS) / 20;
  const stepS = STEPS_S.find((step) => step <= most) ?? (timeS < 60 ? 1 : 5);
  return { timeS: toStep(timeS, stepS), lowS: toStep(lowS, stepS), highS: toStep(highS, stepS), stepS };
}
