import { limitSd, timeOfGamma, type GrowthLaw } from "./growth.js";

/**
 * The standard deviation of ln of the ratio of two times of development, from the spread of a checked growth
 * law; both gradients above 0 and below its limit.
 *
 * @remarks The derivatives of ln t(to) − ln t(from) by γ∞, k and t0, through their covariance: the standard
 * deviations of the law and, where it carries them, its correlations, as `fitGrowth` finds them. A law given
 * without a spread is taken as known to 10 % in γ∞ and k and 20 % in t0. It is a linear estimate, and near
 * the ends of the law it is worth little. Where a gradient comes within 1.6 standard deviations of γ∞, the
 * limit may lie below it, and the true 90 % interval has no upper end; within one, the figure says no more
 * than that the time is not known: under the generic law the interval from 0.6 to 1.7 begins below the time
 * of 0.6, which it cannot, and that from 0.6 to 1.79 has ends that mean nothing. Near 0 the time is shorter
 * than what is unknown of t0: there the interval from 0.6 to 0.05 ends above the time of 0.6. `compensate`
 * says `"near-limit"` in all of these.
 */
export function contrastSpread(law: GrowthLaw, from: number, to: number): number {
  const { gammaInfinity, ratePerS, appearanceS, sd } = law;
  const fromS = timeOfGamma(law, from);
  const toS = timeOfGamma(law, to);
  const byLimit = (gamma: number, timeS: number): number =>
    gamma / (gammaInfinity * (gammaInfinity - gamma) * ratePerS * timeS);
  const byAppearance = 1 / toS - 1 / fromS;
  const limit = (byLimit(from, fromS) - byLimit(to, toS)) * limitSd(law);
  // d ln t/dk = −(t − t0)/(k t), so the difference is that of t0/(k t).
  const rate = ((byAppearance * appearanceS) / ratePerS) * (sd?.ratePerS ?? ratePerS / 10);
  const appearance = byAppearance * (sd?.appearanceS ?? appearanceS / 5);
  const { limitRate = 0, limitAppearance = 0, rateAppearance = 0 } = sd?.correlation ?? {};
  const shared =
    limitRate * limit * rate + limitAppearance * limit * appearance + rateAppearance * rate * appearance;
  // Correlations rounded by storage can bring a variance of nearly 0 below it.
  return Math.sqrt(Math.max(0, limit ** 2 + rate ** 2 + appearance ** 2 + 2 * shared));
}
