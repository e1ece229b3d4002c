import { unreadable } from "../core/guards.js";
import type { RunOutcome } from "../learning/types.js";
import { judgement, OUTCOMES } from "./judgement.js";

/**
 * Reads how a negative came out, as people write it.
 *
 * @param text - `"good"` and its like, `"failed"`, `"fogged"`; `"too thin"` or `"a bit dense"`, of which no
 * amount is read; steps over or under (`"over 1"`, `"under 0.5"`, `"half a step thin"`, `"two steps dense"`);
 * or the right time as a multiple of the one given (`"x1.2"`, `"needs +15%"`, `"15% more"`), or by how much
 * that one was wrong (`"10% too long"`); in German `"gut"`, `"etwas dünn"`, `"über 1"`,
 * `"eine halbe Stufe zu dünn"`, `"zu kurz entwickelt"`, `"15 % länger"`, `"10 % zu lang"`. Of fog beside a
 * judgement (`"Schleier, sonst gut"`) nothing is read
 * @returns the outcome of a run
 * @throws TypeError when `text` is not text
 * @throws RangeError when it is no outcome, or may mean two: `"+1"`, `"N+1"`, `"over 1 stop"` and `"flat"`
 * (code `"ambiguous"`, with the ways to write each)
 *
 * @remarks Half of photographers write what the negative was, half what it needs: so `"+1"` is asked about.
 *
 * @example
 * ```ts
 * parseOutcome("a bit dense") // => { kind: "dense" }
 * parseOutcome("over 0.5") // => { kind: "steps", steps: 0.5 }
 * parseOutcome("needs +15%") // => { kind: "judged", timeRatio: 1.15 }
 * ```
 */
export function parseOutcome(text: string): RunOutcome {
  if (typeof text !== "string") unreadable("parseOutcome/text", OUTCOMES, text);
  return judgement("parseOutcome/text", text.trim());
}
