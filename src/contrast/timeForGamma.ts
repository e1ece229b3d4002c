import { inRange, refuse } from "../core/guards.js";
import { checkedGrowth, type GrowthLaw } from "./growth.js";

/**
 * The time of development that gives a wanted gradient.
 *
 * @param law - the growth law of developer and material
 * @param gamma - the wanted gradient, from 0 and below the law's limit γ∞
 * @returns the time in s; for a gradient of 0 the time of appearance
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is out of range; a gradient at or above the limit cannot be reached by any
 * time, and the text says so
 *
 * @remarks t = t0 − ln(1 − γ/γ∞)/k, the inverse of {@link gammaAt}. Near the limit the time hangs on γ∞ more
 * than on anything else.
 *
 * @example
 * ```ts
 * timeForGamma({ gammaInfinity: 2, ratePerS: 0.2 / 60, appearanceS: 0 }, 1.2642) // => 300
 * ```
 */
export function timeForGamma(law: GrowthLaw, gamma: number): number {
  const { gammaInfinity, ratePerS, appearanceS } = checkedGrowth("timeForGamma", law);
  inRange("timeForGamma/gamma", gamma, 0, 1000);
  if (gamma >= gammaInfinity)
    refuse(
      `timeForGamma/gamma`,
      `must be below gammaInfinity (${gammaInfinity}), which no time reaches, got ${gamma}`,
      gamma,
    );
  return appearanceS - Math.log1p(-gamma / gammaInfinity) / ratePerS;
}
