import { inRange, type TextForm, unreadable } from "../core/guards.js";
import { withPoint } from "./numberText.js";

const COUNTS: TextForm = { format: "count", examples: ["3", "1,5", "none"] };

/**
 * Reads how many there are, as people write it: films, plates, sheets.
 *
 * @param text - a number without a unit: `"3"`, `"1,5"`, or `"none"`
 * @returns the number, from 0 to 10,000
 * @throws TypeError when `text` is not text
 * @throws RangeError when it is not a number, or out of range
 *
 * @example
 * ```ts
 * parseCount("3") // => 3
 * parseCount("none") // => 0
 * ```
 */
export function parseCount(text: string): number {
  const at = "parseCount/text";
  if (typeof text !== "string") unreadable(at, COUNTS, text);
  const plain = withPoint(text.trim().toLowerCase());
  if (/^(?:none|no|keine[rs]?)$/.test(plain)) return 0;
  if (!/^\d+(?:\.\d+)?$/.test(plain)) unreadable(at, COUNTS, text);
  return inRange(at, Number(plain), 0, 10_000, "count");
}
