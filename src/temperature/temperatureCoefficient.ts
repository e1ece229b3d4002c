import { factorOf } from "../core/cause.js";
import { temperatureEffect } from "./cause.js";
import { genericTemperatureLaw } from "./genericTemperatureLaw.js";
import { bathTemperature, checkedTemperatureLaw, type TemperatureLaw } from "./law.js";

/**
 * The temperature coefficient of a law over a stated interval: rate at `highC` divided by rate at `lowC`.
 *
 * @param lowC - lower end of the interval, 0 to 100 °C
 * @param highC - upper end of the interval, 0 to 100 °C
 * @param law - the temperature law; the wide generic law when left out
 * @returns the ratio of rates, dimensionless
 * @throws TypeError or RangeError as {@link temperatureFactor} does
 *
 * @remarks A coefficient means nothing without its interval: Ives (1920) prints ratios over 7 °C, Mees (1911)
 * K25/K15, the older lists 10 °C. C. E. K. Mees, Jahrbuch für Photographie 25, 1911, p. 170.
 *
 * @example
 * ```ts
 * temperatureCoefficient(15, 25, { kind: "coefficient", ratio: 2, intervalC: 7 }) // => 2.6918
 * ```
 */
export function temperatureCoefficient(
  lowC: number,
  highC: number,
  law: TemperatureLaw = genericTemperatureLaw,
): number {
  const ready = checkedTemperatureLaw("temperatureCoefficient/law", law);
  bathTemperature("temperatureCoefficient/lowC", lowC);
  bathTemperature("temperatureCoefficient/highC", highC);
  return factorOf(temperatureEffect(ready, highC, lowC));
}
