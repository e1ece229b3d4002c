import { plainNumber } from "../quantities/numberText.js";
import { readDilution, type Dilution } from "./dilution.js";

/**
 * Writes a dilution as the trade does.
 *
 * @param dilution - parts of stock and of water, and of each stock where there are several; or text, which is
 * written anew
 * @returns `"1+9"`, `"2+1+7"`; undiluted is `"stock"`
 * @throws TypeError when `dilution` is neither text nor an object with numbers
 * @throws RangeError when its parts are out of range, or a colon is ambiguous
 *
 * @remarks `parseDilution` reads the text back: the same parts, and of undiluted stock one part.
 *
 * @example
 * ```ts
 * formatDilution({ stockParts: 1, waterParts: 9 }) // => "1+9"
 * formatDilution("1 + 9,5") // => "1+9.5"
 * formatDilution({ stockParts: 1, waterParts: 0 }) // => "stock"
 * ```
 */
export function formatDilution(dilution: Dilution | string): string {
  const { stockParts, waterParts, stocks = [stockParts] } = readDilution("formatDilution/dilution", dilution);
  if (stocks.length === 1 && waterParts === 0) return "stock";
  return [...stocks, waterParts].map(plainNumber).join("+");
}
