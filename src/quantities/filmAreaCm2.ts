import { readFilmFormat } from "./parseFilmFormat.js";

/**
 * The sensitive area of a film, plate or sheet, on one side.
 *
 * @param format - a roll (`"135-36"`, `"135-24"`, `"135-12"`, `"120"`, `"220"`) or a sheet or plate as
 * width × height: `"4x5in"`, `"9x12cm"`, `"6,5x9cm"`; without a unit as {@link parseFilmFormat} takes it
 * @returns the area in cm²
 * @throws TypeError when `format` is not text
 * @throws RangeError when the text is anything else, or a side is 0 or above 200 cm; code `"ambiguous"` for
 * another size without a unit
 *
 * @remarks A roll counts as 80 square inches, as capacities are printed: one 135-36, one 120, half a 220,
 * four 4x5 in sheets and one 8x10 in sheet (Brodie-Tyrrell, Fixer Capacity, analogue FAQ). Shorter 135 rolls
 * in proportion: common practice.
 *
 * @example
 * ```ts
 * filmAreaCm2("120") // => 516.128
 * filmAreaCm2("9x12cm") // => 108
 * ```
 */
export function filmAreaCm2(format: string): number {
  return readFilmFormat("filmAreaCm2/format", format).areaCm2;
}
