import { inRange } from "../core/guards.js";

/**
 * Converts °F to °C.
 *
 * @param f - temperature in °F, from absolute zero (−459.67 °F) to 10000 °F
 * @returns temperature in °C
 * @throws TypeError when `f` is not a number
 * @throws RangeError when it is out of range
 *
 * @remarks C = (F − 32)/1.8, exact by definition: BIPM, The International System of Units, 9th ed., 2019,
 * with NIST Special Publication 811, 2008, appendix B.8.
 *
 * @example
 * ```ts
 * fahrenheitToCelsius(68) // => 20
 * ```
 */
export function fahrenheitToCelsius(f: number): number {
  const celsius = (inRange("fahrenheitToCelsius/f", f, -459.67, 10000, "temperatureF") - 32) / 1.8;
  // As on paper: 55.4 °F are 13 °C, a limit of the trade, and not a hair below it.
  return Number(Number(celsius.toFixed(13)).toPrecision(15));
}
