import { ambiguous, unreadable, type TextForm } from "../core/guards.js";
import { amountsAsFigures } from "../quantities/amountWords.js";
import { plainFigures, withThirds } from "../quantities/numberText.js";
import { checkedStops } from "./law.js";

/** How a push is written. */
export const PUSHES: TextForm = { format: "push", examples: ["0", "+1", "-1/2"] };

/** What may stand around the stops. */
const AROUND = "(?:push(?:ed|en)?|gepusht|pull(?:ed|en)?|gepullt|film|by|um|was|wurde|stops?|blenden?)";
const NORMAL = "none|not?|nein|kein(?:en?)?|nicht|ohne|n|normal|nominal|box(?: ?speed)?";
const NONE = new RegExp(`^(?:${AROUND} )*(?:${NORMAL})(?: ${AROUND})*$`);
const SOME = new RegExp(
  String.raw`^(?:${AROUND} ?)*(?:n ?(?=[-+]))?([-+]?) ?(\d+(?:\.\d+)?)(?:[ -]?${AROUND})*$`,
);

/**
 * Reads a push or pull as people write it.
 *
 * @param text - stops, pushed where nothing or a plus stands before them: `"1"`, `"+1"`, `"-0,5"`,
 * `"1 1/2 stops"`, `"+2/3"`, `"N+1"`; with a word for it, `"push 2"`, `"pull 1"`, `"pushed one stop"`,
 * `"1 Blende gepusht"`; or `"none"`, `"N"`, `"not pushed"`
 * @returns the stops, −3 to 5
 * @throws TypeError when `text` is not text
 * @throws RangeError when it is no number of stops, or out of range; or its word and its sign say two things,
 * as in `"push -1"` (code `"ambiguous"`)
 *
 * @example
 * ```ts
 * parseStops("+1 1/2") // => 1.5
 * parseStops("pull 1") // => -1
 * parseStops("none") // => 0
 * ```
 */
export function parseStops(text: string): number {
  return stopsFromText("parseStops/text", text);
}

/** The stops that a text says; `below` is what the heading above it says besides. */
export function stopsFromText(at: string, text: unknown, below = ""): number {
  if (typeof text !== "string") unreadable(at, PUSHES, text);
  const figures = withThirds(plainFigures(text.toLowerCase()));
  const words = amountsAsFigures(figures.replace(/[\u2212\u2013]/g, "-").replace(/\s+/g, " "));
  if (NONE.test(words)) return 0;
  const [, sign, stops] = SOME.exec(words) ?? [];
  if (stops === undefined) unreadable(at, PUSHES, text);
  const amount = Number(stops);
  const ways = `${below} ${words}`;
  const pulled = amount > 0 && (sign === "-" || /pull/.test(ways));
  const brief = Number(amount.toFixed(2));
  if (pulled && /push/.test(ways)) ambiguous(at, PUSHES, [`+${brief}`, `-${brief}`], text);
  return checkedStops(at, pulled ? -amount : amount);
}
