import { inRange } from "../core/guards.js";

/**
 * Converts °C to °F.
 *
 * @param c - temperature in °C, from absolute zero (−273.15 °C) to 5500 °C
 * @returns temperature in °F
 * @throws TypeError when `c` is not a number
 * @throws RangeError when it is out of range
 *
 * @remarks F = 1.8 C + 32, exact by definition: NIST Special Publication 811, 2008, appendix B.8.
 *
 * @example
 * ```ts
 * celsiusToFahrenheit(20) // => 68
 * ```
 */
export function celsiusToFahrenheit(c: number): number {
  return Number((inRange("celsiusToFahrenheit/c", c, -273.15, 5500, "temperatureC") * 1.8 + 32).toFixed(10));
}
