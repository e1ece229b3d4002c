import { genericTemperatureLaw } from "./genericTemperatureLaw.js";
import {
  bathTemperature,
  checkedTemperatureLaw,
  GAS_CONSTANT_KJ,
  inverseKelvin,
  logTimeRatio,
  ZERO_CELSIUS_K,
  type ReadyTemperatureLaw,
  type TemperatureLaw,
} from "./law.js";

/**
 * The relative rate of development as a function of temperature, prepared once for hot loops.
 *
 * @param referenceC - the temperature at which the rate is 1, 0 to 100 °C
 * @param law - the temperature law of the developer and material; the wide generic law when left out
 * @returns a function from °C (0 to 100) to the relative rate, dimensionless; it throws a RangeError outside
 * that range
 * @throws TypeError or RangeError as {@link temperatureFactor} does
 *
 * @remarks rate(T) = 1 / temperatureFactor(referenceC, T, law).
 *
 * @example
 * ```ts
 * const rate = rateFunction(20, { kind: "coefficient", ratio: 2, intervalC: 10 });
 * rate(30) // => 2
 * ```
 */
export function rateFunction(
  referenceC: number,
  law: TemperatureLaw = genericTemperatureLaw,
): (temperatureC: number) => number {
  const ready = checkedTemperatureLaw("rateFunction/law", law);
  return rateUnder(ready, bathTemperature("rateFunction/referenceC", referenceC));
}

const AT = "rateFunction/temperatureC";

/** The same under a checked law, from a checked temperature. */
export function rateUnder(law: ReadyTemperatureLaw, referenceC: number): (temperatureC: number) => number {
  const exact = law.kind !== "table" || (law.energyOffKJPerMol ?? 0) === 0;
  if (law.kind !== "coefficient" && (law.walk !== undefined || !exact))
    return (c) => Math.exp(-logTimeRatio(law, referenceC, bathTemperature(AT, c)));
  if (law.kind === "table") {
    const { timeAt } = law.table;
    const referenceS = timeAt(inverseKelvin(referenceC));
    return (c) => referenceS / timeAt(inverseKelvin(bathTemperature(AT, c)));
  }
  if (law.kind === "coefficient") {
    const perC = Math.log(law.ratio) / law.intervalC;
    return (c) => Math.exp(perC * (bathTemperature(AT, c) - referenceC));
  }
  const perInverse = law.activationEnergyKJPerMol / GAS_CONSTANT_KJ;
  const reference = perInverse / (referenceC + ZERO_CELSIUS_K);
  return (c) => Math.exp(reference - perInverse / (bathTemperature(AT, c) + ZERO_CELSIUS_K));
}
