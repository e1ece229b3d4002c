import { bathTemperature, GAS_CONSTANT_KJ, inverseKelvin, logTimeFunction, ZERO_CELSIUS_K, type TemperatureLaw } from "./law.js";

/**
 * The relative rate of development as a function of temperature, prepared once for hot loops.
 *
 * @param law - the temperature law of the developer and material
 * @param referenceC - the temperature at which the rate is 1, 0 to 100 °C
 * @returns a function from °C (0 to 100) to the relative rate, dimensionless; it throws a RangeError outside that range
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
  const logTime = logTimeFunction("rateFunction:", law);
  const reference = logTime(bathTemperature("rateFunction: referenceC", referenceC));
  if (law.kind === "arrhenius") {
    // The same numbers as below, with the division by R and the subtraction taken out of the loop.
    const slope = law.activationEnergyKJPerMol / GAS_CONSTANT_KJ;
    const inverseReference = inverseKelvin(referenceC);
    return (temperatureC) =>
      Math.exp(
        slope * (inverseReference - 1 / (bathTemperature("rateFunction: temperatureC", temperatureC) + ZERO_CELSIUS_K)),
      );
  }
  return (temperatureC) =>
    Math.exp(reference - logTime(bathTemperature("rateFunction: temperatureC", temperatureC)));
}
