import { inverseSpan } from "./asArrheniusLaw.js";
import {
  checkedTemperatureLaw,
  logTimeRatio,
  temperatureSpread,
  settled,
  type CoefficientLaw,
  type TemperatureLaw,
} from "./law.js";

/**
 * The temperature coefficient law that agrees with another law over a stated interval.
 *
 * @param law - any temperature law
 * @param lowC - lower end of the interval at which both agree, 0 to 100 °C
 * @param highC - upper end, above `lowC`, to 100 °C
 * @returns a coefficient law over `highC − lowC` degrees, with the standard deviation of its ratio
 * @throws TypeError or RangeError as {@link temperatureFactor} does, and a RangeError when `highC` is not
 * above `lowC` or the interval is too short for the ratio or its spread to be told
 *
 * @remarks ratio = rate(high)/rate(low). A ratio over 7 °C is not one over 10 °C: state the interval with the
 * number.
 *
 * @example
 * ```ts
 * asCoefficientLaw({ kind: "coefficient", ratio: 1.4, intervalC: 7 }, 15, 25).ratio // => 1.6172
 * ```
 */
export function asCoefficientLaw(law: TemperatureLaw, lowC: number, highC: number): CoefficientLaw {
  const ready = checkedTemperatureLaw("asCoefficientLaw/law", law);
  inverseSpan("asCoefficientLaw", lowC, highC);
  const intervalC = highC - lowC;
  const ratio = settled(Math.max(1, Math.exp(logTimeRatio(ready, highC, lowC))), Math.exp(intervalC));
  const sdRatio = settled(ratio * temperatureSpread(ready, lowC, highC), ratio * intervalC);
  const found: CoefficientLaw = { kind: "coefficient", ratio, intervalC, sdRatio };
  // A law that comes out must be one that may go in.
  checkedTemperatureLaw("asCoefficientLaw/resulting", found);
  return found;
}
