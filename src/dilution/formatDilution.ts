import { checkedDilution, type Dilution } from "./dilution.js";

/**
 * Writes a dilution as the trade does.
 *
 * @param dilution - parts of stock and of water, and of each stock where there are several
 * @returns `"1+9"`, `"2+1+7"`; undiluted is `"stock"`
 * @throws TypeError when `dilution` is not an object with numbers
 * @throws RangeError when its parts are out of range
 *
 * @example
 * ```ts
 * formatDilution({ stockParts: 1, waterParts: 9 }) // => "1+9"
 * formatDilution({ stockParts: 1, waterParts: 0 }) // => "stock"
 * ```
 */
export function formatDilution(dilution: Dilution): string {
  const { stockParts, waterParts, stocks } = checkedDilution("formatDilution/dilution", dilution);
  if (stocks === undefined && waterParts === 0) return "stock";
  return [...(stocks ?? [stockParts]), waterParts].join("+");
}
