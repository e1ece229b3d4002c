import { positive } from "../core/guards.js";
import { parseFilmFormat, tradeFormats } from "./parseFilmFormat.js";

/**
 * Writes an area as the size of a film, plate or sheet.
 *
 * @param areaCm2 - the sensitive area on one side, above 0 to 40000 cm²
 * @returns text that `parseFilmFormat` reads: the size that the trade names, where one has this area to 0.5
 * %, else the square that has it, to a tenth of a millimetre, and no smaller than that
 * @throws TypeError when the area is no number
 * @throws RangeError when it is out of range
 *
 * @example
 * ```ts
 * formatFilmArea(108) // => "9x12 cm"
 * formatFilmArea(516.128) // => "120"
 * formatFilmArea(100) // => "10x10 cm"
 * ```
 */
export function formatFilmArea(areaCm2: number): string {
  positive("formatFilmArea/areaCm2", areaCm2, 4e4, "areaCm2");
  const named = tradeFormats.find(
    (name) => Math.abs(parseFilmFormat(name).areaCm2 / areaCm2 - 1) <= SAME_WITHIN,
  );
  const side = Math.max(0.01, Number(Math.sqrt(areaCm2).toFixed(2)));
  return named ?? `${side}x${side} cm`;
}

/** Areas that differ by less are the same size: 4x5 in is given as 129 cm² too. */
const SAME_WITHIN = 0.005;
