import { factorOf } from "../core/cause.js";
import { positive } from "../core/guards.js";
import { belowLimit, contrastEffect } from "./cause.js";
import { genericGrowthLaw } from "./genericGrowthLaw.js";
import { checkedGrowth, type GrowthLaw } from "./growth.js";

/**
 * The factor by which development time changes for another gradient.
 *
 * @param fromGamma - the gradient that the known time gave, above 0 and below the limit of the law
 * @param toGamma - the wanted gradient, above 0 and below the limit of the law
 * @param law - the growth law; the generic law when left out
 * @returns the time factor, dimensionless, above 0: above 1 when `toGamma` is the steeper
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a gradient or the law is out of range
 *
 * @remarks t(to)/t(from) with t = t0 − ln(1 − γ/γ∞)/k, as {@link timeForGamma} gives it.
 *
 * @example
 * ```ts
 * contrastFactor(0.6, 0.7, { gammaInfinity: 1.4, ratePerS: 0.004, appearanceS: 0 }) // => 1.2386
 * ```
 */
export function contrastFactor(
  fromGamma: number,
  toGamma: number,
  law: GrowthLaw = genericGrowthLaw,
): number {
  const ready = checkedGrowth("contrastFactor/law", law);
  const from = positive("contrastFactor/fromGamma", fromGamma, 1000, "gamma");
  const to = positive("contrastFactor/toGamma", toGamma, 1000, "gamma");
  belowLimit("contrastFactor/fromGamma", ready, from);
  belowLimit("contrastFactor/toGamma", ready, to);
  return factorOf(contrastEffect(ready, from, to));
}
