import { factorOf } from "../core/cause.js";
import { temperatureEffect } from "./cause.js";
import { genericTemperatureLaw } from "./genericTemperatureLaw.js";
import { bathTemperature, checkedTemperatureLaw, logTimeRatio, type TemperatureLaw } from "./law.js";

/**
 * The factor by which development time changes between two temperatures: time at `toC` divided by time at
 * `fromC`.
 *
 * @param fromC - temperature the time is known for, 0 to 100 °C
 * @param toC - temperature of today's bath, 0 to 100 °C
 * @param law - the temperature law of the developer and material; the wide generic law when left out
 * @returns the time factor, dimensionless, above 0: below 1 when `toC` is the warmer
 * @throws TypeError when the law or a temperature is of the wrong kind
 * @throws RangeError when a temperature or a figure of the law is out of range, or a table's rows cannot be a
 * table
 *
 * @remarks Arrhenius: exp((E/R)(1/T − 1/T0)), T in kelvin. Coefficient: ratio^((T0 − T)/interval). Table: the
 * ratio of the table's own times, exact at its rows, a monotone cubic of ln t in 1/T between them, and
 * straight on outside with the slope of its last rows 2.6 °C apart. This is a factor on time; the rate is its
 * inverse. Nothing here knows whether the emulsion takes the temperature or whether hydroquinone still works
 * in the cold: see the cautions of `compensate`.
 *
 * Source of the forms: S. Arrhenius, Z. phys. Chem. 4, 1889, p. 226; temperature coefficient over 10 °C: C.
 * E. K. Mees, Jahrbuch für Photographie 25, 1911, p. 170.
 *
 * @example
 * ```ts
 * temperatureFactor(20, 10, { kind: "coefficient", ratio: 2, intervalC: 10 }) // => 2
 * ```
 */
export function temperatureFactor(
  fromC: number,
  toC: number,
  law: TemperatureLaw = genericTemperatureLaw,
): number {
  const ready = checkedTemperatureLaw("temperatureFactor/law", law);
  bathTemperature("temperatureFactor/fromC", fromC);
  bathTemperature("temperatureFactor/toC", toC);
  if (ready.kind !== "table") return Math.exp(logTimeRatio(ready, fromC, toC));
  return factorOf(temperatureEffect(ready, fromC, toC));
}
