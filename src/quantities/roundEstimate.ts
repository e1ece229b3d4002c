import { checkedEstimate, LONGEST_ANSWER_S, type TimeEstimate } from "../core/estimate.js";
import { inRange, plainObject } from "../core/guards.js";
import { toStep } from "./toStep.js";

/** A rounded time with its interval, and the step that it was rounded to, in s. */
export interface RoundedEstimate extends TimeEstimate {
  /** what `timeS` was rounded to, s; a shorter end may have a finer step */
  readonly stepS: number;
}

/** How {@link roundEstimate} rounds. */
export interface RoundEstimateOptions {
  /** no greater step than this, s, 1 to 300; 300 when left out */
  readonly mostS?: number | undefined;
}

const STEPS_S = [300, 60, 30, 15, 5] as const;

/**
 * Rounds a time and its interval to a step that suits how well it is known.
 *
 * @param estimate - median and 90 % interval in s, as `compensate` returns them
 * @param options - `mostS`: no greater step than this
 * @returns each of the three rounded to the largest of 5, 15, 30 s, 1 and 5 min that is at most a tenth of
 * half the interval and a tenth of itself; a time that would round to 0 stays as it is
 * @throws TypeError when `estimate` is not an object or a time not a number
 * @throws RangeError when a time is out of range, or `timeS` lies outside its interval
 *
 * @remarks Rounding then adds nothing that shows to the spread, and moves no time of 10 s or more by over
 * 5 %. Where even 5 s is more than those tenths, the step is 5 s from 1 min on, and 1 s below. Halves are
 * rounded up. The steps are those of darkroom clocks (common practice).
 *
 * @example
 * ```ts
 * const rounded = roundEstimate({ timeS: 1283, lowS: 955, highS: 1724 });
 * rounded // => { timeS: 1290, lowS: 960, highS: 1710, stepS: 30 }
 * ```
 */
export function roundEstimate(estimate: TimeEstimate, options: RoundEstimateOptions = {}): RoundedEstimate {
  const { timeS, lowS, highS } = checkedEstimate("roundEstimate/estimate", estimate, LONGEST_ANSWER_S);
  const { mostS = 300 } = plainObject("roundEstimate/options", options) as RoundEstimateOptions;
  inRange("roundEstimate/options/mostS", mostS, 1, 300, "timeS");
  const most = Math.min(mostS, (highS - lowS) / 20);
  // The short end of a wide interval has a finer step than the long one. The steps divide each other, and
  // each begins at a multiple of itself: so the three keep their order.
  const stepFor = (value: number): number =>
    STEPS_S.find((step) => step <= Math.min(most, value / 10)) ?? (value < 60 || mostS < 5 ? 1 : 5);
  // A development takes some time: an end below half a step would round to nothing, and stays as it is.
  const rounded = (value: number): number => toStep(value, stepFor(value)) || value;
  return { timeS: rounded(timeS), lowS: rounded(lowS), highS: rounded(highS), stepS: stepFor(timeS) };
}
