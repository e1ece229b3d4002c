import { bathTemperature, lawSlope, tableTime, ZERO_CELSIUS_K, type TemperatureLaw } from "./law.js";

/**
 * The relative rate of development as a function of temperature, prepared once for hot loops.
 *
 * @param law - the temperature law of the developer and material
 * @param referenceC - the temperature at which the rate is 1, 0 to 100 °C
 * @returns a function from °C (0 to 100) to the relative rate, dimensionless; it throws a RangeError outside
 * that range
 * @throws TypeError or RangeError as {@link temperatureFactor} does
 *
 * @remarks rate(T) = 1 / temperatureFactor(law, referenceC, T).
 *
 * @example
 * ```ts
 * const rate = rateFunction({ kind: "coefficient", ratio: 2, intervalC: 10 }, 20);
 * rate(30) // => 2
 * ```
 */
export function rateFunction(law: TemperatureLaw, referenceC: number): (temperatureC: number) => number {
  const slope = lawSlope("rateFunction", law);
  bathTemperature("rateFunction/referenceC", referenceC);
  if (law.kind === "table") {
    const timeAt = tableTime(law.rows);
    const referenceS = timeAt(referenceC);
    return (c) => referenceS / timeAt(bathTemperature(WHERE, c));
  }
  const perUnit = slope as number;
  if (law.kind === "coefficient") return (c) => Math.exp(perUnit * (referenceC - bathTemperature(WHERE, c)));
  const reference = perUnit / (referenceC + ZERO_CELSIUS_K);
  return (c) => Math.exp(reference - perUnit / (bathTemperature(WHERE, c) + ZERO_CELSIUS_K));
}

const WHERE = "rateFunction/temperatureC";
