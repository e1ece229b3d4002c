import { unreadable, type TextForm } from "../core/guards.js";
import { plainFigures } from "../quantities/numberText.js";
import { checkedStops } from "./law.js";

const STOPS: TextForm = { format: "push", examples: ["0", "+1", "-1/2"] };

/**
 * Reads a push or pull as people write it.
 *
 * @param text - stops, pushed where nothing or a plus stands before them: `"1"`, `"+1"`, `"-0,5"`,
 * `"1 1/2 stops"`, `"none"`
 * @returns the stops, −3 to 5
 * @throws TypeError when `text` is not text
 * @throws RangeError when it is no number of stops, or out of range
 *
 * @example
 * ```ts
 * parseStops("+1 1/2") // => 1.5
 * parseStops("none") // => 0
 * ```
 */
export function parseStops(text: string): number {
  const at = "parseStops/text";
  if (typeof text !== "string") unreadable(at, STOPS, text);
  const lower = text.trim().toLowerCase();
  if (/^(?:none|no|keine)$/.test(lower)) return 0;
  // The sign is read apart: before a fraction it would hide it.
  const [, sign = "", rest = ""] = /^([-+\u2212\u2013]?)\s*(.*)$/s.exec(lower) ?? [];
  const [, stops] = /^(\d+(?:\.\d+)?)(?:\s*(?:stops?|blenden?))?$/.exec(plainFigures(rest)) ?? [];
  if (stops === undefined) unreadable(at, STOPS, text);
  const pulled = sign !== "" && sign !== "+" && Number(stops) > 0;
  return checkedStops(at, pulled ? -Number(stops) : Number(stops));
}
