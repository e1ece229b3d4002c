import { inRange } from "../core/guards.js";
import { genericGrowthLaw } from "./genericGrowthLaw.js";
import { checkedGrowth, type GrowthLaw } from "./growth.js";

/**
 * The gradient that a time of development gives.
 *
 * @param timeS - time of development, 0 to 1e7 s
 * @param law - the growth law of developer and material; the generic law when left out
 * @returns the gradient γ, 0 until the time of appearance, always below the limit γ∞ (or equal to it once the
 * difference is lost in rounding)
 * @throws TypeError or RangeError when an argument is of the wrong kind or out of range
 *
 * @remarks γ(t) = γ∞(1 − e^(−k(t − t0))), the integral of dγ/dt = K(γ∞ − γ): C. E. K. Mees, Zeitentwicklung,
 * Jahrbuch für Photographie und Reproduktionstechnik 25, Halle, 1911, pp. 167 and 170. It holds at one
 * temperature and strength, and leaves fog out.
 *
 * @example
 * ```ts
 * gammaAt(125, { gammaInfinity: 1.45, ratePerS: 0.32 / 60, appearanceS: 0 }) // => 0.706
 * ```
 */
export function gammaAt(timeS: number, law: GrowthLaw = genericGrowthLaw): number {
  const { gammaInfinity, ratePerS, appearanceS } = checkedGrowth("gammaAt/law", law);
  const since = inRange("gammaAt/timeS", timeS, 0, 1e7, "timeS") - appearanceS;
  return since > 0 ? -gammaInfinity * Math.expm1(-ratePerS * since) : 0;
}
