import { timeEstimate, type TimeEstimate, checkedSpread } from "../core/estimate.js";
import { inRange } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { inNameOf } from "../core/inNameOf.js";
import { timeFromAppearance } from "./timeFromAppearance.js";

/** What was seen, and how well. */
export interface AppearanceSeen {
  /** time of appearance, s, above 0 to 1e5 */
  readonly appearanceS: number;
  /** the developer's factor, 1 to 1000 */
  readonly factor: number;
  /** standard deviation of ln(factor), 0 to 3; 0.15 when left out, as printed lists differ for one agent */
  readonly factorLogSd?: number | undefined;
  /**
   * standard deviation of the moment itself, s, 0 to 60: the eye under the safelight and the hand on the
   * clock; 1.5 s when left out
   */
  readonly reactionS?: number | undefined;
}

/**
 * The whole time of development from the time of appearance, with its 90 % interval.
 *
 * @param seen - time of appearance and factor, and how well each is known
 * @returns median and 90 % interval in s, unrounded
 * @throws TypeError or RangeError when a field is of the wrong kind or out of range
 *
 * @remarks The spread in ln(time) is √(factorLogSd² + (reactionS/appearanceS)²): a reaction of 1.5 s (common
 * practice) is 17 % of an appearance at 9 s and 2 % of one at 70 s, so a fast developer is judged badly by
 * its appearance.
 *
 * @example
 * ```ts
 * appearanceEstimate({ appearanceS: 30, factor: 12, factorLogSd: 0.1 }).highS // => 432.7
 * ```
 */
export function appearanceEstimate(seen: AppearanceSeen): TimeEstimate {
  onlyFields("appearanceEstimate/seen", seen, ["appearanceS", "factor", "factorLogSd", "reactionS"]);
  const { appearanceS, factor } = seen;
  const timeS = inNameOf("appearanceEstimate", () => timeFromAppearance({ appearanceS, factor }));
  const { factorLogSd = 0.15, reactionS = 1.5 } = seen;
  const byFactor = inRange("appearanceEstimate/seen/factorLogSd", factorLogSd, 0, 3);
  const byHand = inRange("appearanceEstimate/seen/reactionS", reactionS, 0, 60, "timeS") / appearanceS;
  return timeEstimate(timeS, checkedSpread("appearanceEstimate/seen", Math.hypot(byFactor, byHand)));
}
