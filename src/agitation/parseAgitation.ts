import { positive, wrongKind, unreadable } from "../core/guards.js";
import { timeFromText } from "../quantities/timeText.js";
import type { Agitation } from "./agitation.js";

const FORMS = '"continuous", "stand" or an interval such as "every 30 s"';

/**
 * Reads an agitation as people write it.
 *
 * @param text - `"continuous"`, `"stand"`, or the interval from one agitation to the next, with its unit:
 * `"every 30 s"`, `"1 min"`, `"0:30"`
 * @returns `"continuous"`, `"stand"` or `{ everyS }`, in s
 * @throws TypeError when `text` is not text
 * @throws RangeError for any other text, when an interval has no unit, or it is not above 0 and at most
 * 3600 s
 *
 * @example
 * ```ts
 * parseAgitation("every 30 s") // => { everyS: 30 }
 * parseAgitation("Stand") // => "stand"
 * ```
 */
export function parseAgitation(text: string): Agitation {
  if (typeof text !== "string") wrongKind("parseAgitation/text", FORMS, text, { types: ["text"] });
  const lower = text.trim().toLowerCase();
  if (lower === "continuous" || lower === "stand") return lower;
  const interval = /^(?:every\s+)?(\d.*)$/s.exec(lower)?.[1];
  if (interval === undefined)
    unreadable("parseAgitation/text", "agitation", ["every 30 s", "continuous", "stand"], FORMS, text);
  return {
    everyS: positive("parseAgitation/text", timeFromText("parseAgitation/text", interval), 3600, "timeS"),
  };
}
