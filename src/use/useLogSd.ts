import { increaseSd, useSlope, type UseLaw } from "./useFactor.js";

/**
 * The standard deviation of the ln of the use factor between two states of a bath.
 *
 * @param law - the use rule; without `sdIncrease` a quarter of its `increase`
 * @param fromCm2PerL - area developed in a litre when the known time was found, 0 to 1e6 cm²/l
 * @param toCm2PerL - area developed in a litre by today, 0 to 1e6 cm²/l
 * @returns the standard deviation in ln(time), 0 when both are the same
 * @throws TypeError or RangeError as {@link useFactor} does
 *
 * @remarks sd(increase)/increase × |ln f(to) − ln f(from)|: ln of the factor is known to the share of itself
 * to which the increase is; for an increase and shape of 0 sd(increase) times the difference in portions.
 *
 * @example
 * ```ts
 * useLogSd({ increase: 0.1, perCm2PerL: 516.128, growth: "compound" }, 0, 516.128) // => 0.02383
 * ```
 */
export function useLogSd(law: UseLaw, fromCm2PerL: number, toCm2PerL: number): number {
  const slope = (usedCm2PerL: number): number => useSlope("useLogSd", law, usedCm2PerL);
  // The slopes first: they check the law.
  return Math.abs(slope(toCm2PerL) - slope(fromCm2PerL)) * increaseSd(law);
}
