import { usePortions, type UseLaw } from "./useFactor.js";

/**
 * The standard deviation of the ln of the use factor between two states of a bath.
 *
 * @param law - the use rule; without `sdIncrease` a quarter of its `increase`
 * @param fromCm2PerL - area developed in a litre when the known time was found, 0 to 1e6 cm²/l
 * @param toCm2PerL - area developed in a litre by today, 0 to 1e6 cm²/l
 * @returns the standard deviation in ln(time), 0 when both are the same
 * @throws TypeError or RangeError as {@link useFactor} does
 *
 * @remarks sd(increase) × |∂ln f/∂increase|, which is p/(1 + increase·p) for a linear and p/(1 + increase) for a compound rule, p the
 * portions used.
 *
 * @example
 * ```ts
 * useLogSd({ increase: 0.1, perCm2PerL: 516.128, growth: "compound" }, 0, 516.128) // => 0.02273
 * ```
 */
export function useLogSd(law: UseLaw, fromCm2PerL: number, toCm2PerL: number): number {
  const slope = (usedCm2PerL: number): number => {
    const portions = usePortions("useLogSd:", law, usedCm2PerL);
    return portions / (1 + law.increase * (law.growth === "linear" ? portions : 1));
  };
  // The slopes first: they check the law.
  const difference = Math.abs(slope(toCm2PerL) - slope(fromCm2PerL));
  return (law.sdIncrease ?? law.increase / 4) * difference;
}
