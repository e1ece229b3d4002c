import { notOneOf, unreadable } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { type Dilution, dilutionFromText, DILUTIONS, fifteen } from "./dilution.js";

/**
 * How a colon is to be read: `"plus"`, 1:9 is 1 part and 9 of water; `"total"`, 1 part in 9 parts of bath.
 */
export interface ParseDilutionOptions {
  /** how "1:9" is read: as one plus nine or as one in nine; refused when left out */
  readonly colon?: "plus" | "total" | undefined;
}

/** What people call undiluted stock, in English and in German; documents say "stock". */
const STOCK = /^\s*(?:stock|undiluted|stammlösung|stamm|unverdünnt)\s*$/i;

/**
 * Reads a dilution as the trade writes it.
 *
 * @param text - `"1+9"`, `"stock"` (also `"undiluted"`, `"Stammlösung"`, `"Stamm"` or `"unverdünnt"`),
 * `"1+0"`, or with several stock solutions `"2+1+7"`, the water always last; a decimal comma is read too
 * @param options - `colon`: how to read `"1:9"`; without it a colon is refused, since both readings are in
 * print; `"1 to 9"`, `"1 in 10"` and `"1/10"` are always refused so
 * @returns parts of stock and of water; for several stocks also `stocks`, the parts of each
 * @throws TypeError when `text` is not text or `options` not an object
 * @throws RangeError when it is no dilution, a colon or its like may mean two (code `"ambiguous"`), stock is
 * 0 or water is more than 100000 parts to one
 *
 * @remarks "1+9" is one part of stock and nine of water, ten in all: the usage of makers' data sheets (common
 * practice).
 *
 * @example
 * ```ts
 * parseDilution("1+9") // => { stockParts: 1, waterParts: 9 }
 * parseDilution("1:9", { colon: "total" }) // => { stockParts: 1, waterParts: 8 }
 * parseDilution("1+9,5") // => { stockParts: 1, waterParts: 9.5 }
 * parseDilution("2+1+7") // => { stockParts: 3, waterParts: 7, stocks: [2, 1] }
 * ```
 */
export function parseDilution(text: string, options: ParseDilutionOptions = {}): Dilution {
  if (typeof text !== "string") unreadable("parseDilution/text", DILUTIONS, text);
  const { colon } = onlyFields("parseDilution/options", options, ["colon"]);
  if (colon !== undefined && colon !== "plus" && colon !== "total")
    notOneOf("parseDilution/options/colon", ["plus", "total"], colon);
  if (STOCK.test(text)) return { stockParts: 1, waterParts: 0 };
  const read = dilutionFromText("parseDilution/text", text, colon);
  // 0.1 and 0.2 of stock are 0.3, on paper.
  return read.stocks === undefined ? read : { ...read, stockParts: fifteen(read.stockParts) };
}
