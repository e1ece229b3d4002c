import { inRange, positive, unreadable } from "../core/guards.js";
import { timeFromText } from "../quantities/timeText.js";
import type { Agitation } from "./agitation.js";
import { AGITATION } from "./agitation.js";

/** A drum or a tank that rolls moves the bath all the time: common practice. */
const CONTINUOUS = new RegExp(
  "^(?:constant(?:ly)?|continuous(?:ly)?|st\u00e4ndig|dauernd|kontinuierlich|" +
    "rotary|rotating|(?:in )?rotation|rotierend)$",
);
const EVERY = "(?:every|each|per|a|once a|once per|alle|jede|je|pro|einmal pro)";
const MINUTE = new RegExp(String.raw`(${EVERY}) (?:1 )?(?:m|min|minute)\.?$`);
/** A stroke that is no fraction's. */
const SLASH = /\/(?!\d)|(?<!\d)\//g;
const NUMBER = String.raw`\d+(?:[.,]\d+)?`;
/** How many times a minute: "2/min", "4x per min". */
const RATE = new RegExp(String.raw`^(${NUMBER}) ?(?:x|\u00d7|times?|mal)? ?${EVERY} 1 min$`);
/** How long or how often it is moved each time: "5 s", "4 inversions". */
const MOVED =
  String.raw`(?:(${NUMBER}) ?(?:s|secs?|seconds?|sek(?:unden)?)|` +
  String.raw`${NUMBER} ?(?:x|\u00d7|times|inversions?|turns?|mal))\.?,? `;
const INTERVAL = new RegExp(String.raw`^(?:(?:${MOVED})?${EVERY} )?(\d.*)$`, "s");

/**
 * Reads an agitation as people write it.
 *
 * @param text - `"continuous"`, `"constant"`, `"stand"`, or the interval from one agitation to the next,
 * with its unit: `"every 30 s"`, `"1 min"`, `"0:30"`, `"once a minute"`, `"5 s every 30 s"`, `"10s/min"`; or
 * how often a minute, `"2/min"`, `"4x per min"`; `"rotary"` and `"in rotation"` are continuous. In German
 * `"ständig"`, `"dauernd"`, `"Rotation"`, `"Stand"`, `"alle 30 s"`, `"jede Minute"`
 * @returns `"continuous"`, `"stand"` or `{ everyS }`, in s
 * @throws TypeError when `text` is not text
 * @throws RangeError for any other text, when an interval has no unit (code `"ambiguous"`), it is not above 0
 * and at most 3600 s, or is shorter than the movement
 *
 * @remarks How long it is moved each time does not count further: of "5 s every 30 s" the interval is 30 s.
 *
 * @example
 * ```ts
 * parseAgitation("every 30 s") // => { everyS: 30 }
 * parseAgitation("once a minute") // => { everyS: 60 }
 * parseAgitation("Stand") // => "stand"
 * ```
 */
export function parseAgitation(text: string): Agitation {
  const at = "parseAgitation/text";
  if (typeof text !== "string") unreadable(at, AGITATION, text);
  const lower = text.trim().toLowerCase().replace(SLASH, " per ").replace(/\s+/g, " ");
  if (CONTINUOUS.test(lower)) return "continuous";
  if (lower === "stand") return lower;
  const spelt = lower.replace(MINUTE, "$1 1 min");
  const rate = RATE.exec(spelt)?.[1];
  if (rate !== undefined) {
    const perMinute = positive(at, Number(rate.replace(",", ".")), 1000);
    return { everyS: positive(at, 60 / perMinute, 3600, "timeS") };
  }
  const [, moved = "0", interval] = INTERVAL.exec(spelt) ?? [];
  if (interval === undefined) unreadable(at, AGITATION, text);
  const everyS = timeFromText(at, interval, { form: AGITATION, whole: text.trimEnd() });
  positive(at, everyS, 3600, "timeS");
  return { everyS: inRange(at, everyS, Number(moved.replace(",", ".")), 3600, "timeS") };
}
