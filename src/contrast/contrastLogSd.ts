import { positive } from "../core/guards.js";
import { checkedGrowth, limitSd, type GrowthLaw } from "./growth.js";
import { timeForGamma } from "./timeForGamma.js";

/**
 * The standard deviation of ln of the ratio of two times of development, from the spread of the growth law.
 *
 * @param law - the growth law
 * @param from - the gradient that the known time gave, above 0 and below the limit
 * @param to - the wanted gradient, above 0 and below the limit
 * @returns the standard deviation in ln(time), 0 when both are equal
 * @throws TypeError or RangeError as {@link timeForGamma} does, and a RangeError for a spread of the law that
 * is none
 *
 * @remarks The derivatives of ln t(to) − ln t(from) by γ∞, k and t0, each times its standard deviation, in
 * quadrature. A law given without a spread is taken as known to 10 % in γ∞ and k and 20 % in t0. What γ∞ and
 * k share is left out: with the image at once k cancels. It is a linear estimate, and near the ends of the
 * law it is worth little. Where a gradient comes within 1.6 standard deviations of γ∞, the limit may lie
 * below it, and the true 90 % interval has no upper end; within one, the figure says no more than that the
 * time is not known: under the generic law the interval from 0.6 to 1.7 begins below the time of 0.6, which
 * it cannot, and that from 0.6 to 1.79 has ends that mean nothing. Near 0 the time is shorter than what is
 * unknown of t0: there the interval from 0.6 to 0.05 ends above the time of 0.6. `compensate` says
 * `"near-limit"` in all of these.
 *
 * @example
 * ```ts
 * contrastLogSd({ gammaInfinity: 1.4, ratePerS: 0.004, appearanceS: 0 }, 0.6, 0.7) // => 0.01025
 * contrastLogSd(genericGrowthLaw, 0.6, 1.7) // => 1.297
 * contrastLogSd(genericGrowthLaw, 0.6, 1.79) // => 9.23
 * contrastLogSd(genericGrowthLaw, 0.6, 0.05) // => 1.98
 * ```
 */
export function contrastLogSd(law: GrowthLaw, from: number, to: number): number {
  const { gammaInfinity, ratePerS, appearanceS, sd } = checkedGrowth("contrastLogSd", law);
  const fromS = timeForGamma(law, positive("contrastLogSd/from", from, 1000));
  const toS = timeForGamma(law, positive("contrastLogSd/to", to, 1000));
  if (from === to) return 0;
  const byLimit = (gamma: number, timeS: number): number =>
    gamma / (gammaInfinity * (gammaInfinity - gamma) * ratePerS * timeS);
  const byAppearance = 1 / toS - 1 / fromS;
  return Math.hypot(
    (byLimit(to, toS) - byLimit(from, fromS)) * limitSd(law),
    // d ln t/dk = −(t − t0)/(k t), so the difference is that of t0/(k t).
    ((byAppearance * appearanceS) / ratePerS) * (sd?.ratePerS ?? ratePerS / 10),
    byAppearance * (sd?.appearanceS ?? appearanceS / 5),
  );
}
