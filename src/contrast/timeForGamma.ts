import { inRange } from "../core/guards.js";
import { belowLimit } from "./cause.js";
import { genericGrowthLaw } from "./genericGrowthLaw.js";
import { checkedGrowth, timeOfGamma, type GrowthLaw } from "./growth.js";

/**
 * The time of development that gives a wanted gradient.
 *
 * @param gamma - the wanted gradient, from 0 and below the law's limit γ∞
 * @param law - the growth law of developer and material; the generic law when left out
 * @returns the time in s; for a gradient of 0 the time of appearance
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is out of range; a gradient at or above the limit cannot be reached by any
 * time, and the text says so
 *
 * @remarks t = t0 − ln(1 − γ/γ∞)/k, the inverse of {@link gammaAt}. Near the limit the time depends on γ∞
 * more than on anything else.
 *
 * @example
 * ```ts
 * timeForGamma(1.2642, { gammaInfinity: 2, ratePerS: 0.2 / 60, appearanceS: 0 }) // => 300
 * ```
 */
export function timeForGamma(gamma: number, law: GrowthLaw = genericGrowthLaw): number {
  const ready = checkedGrowth("timeForGamma/law", law);
  inRange("timeForGamma/gamma", gamma, 0, 1000, "gamma");
  belowLimit("timeForGamma/gamma", ready, gamma);
  return timeOfGamma(ready, gamma);
}
