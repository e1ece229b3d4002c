import { timeFromText } from "./timeText.js";

/**
 * Reads a time as people and timers write it.
 *
 * @param text - `"8:30"` and `"1:02:00"` (always minutes first, or hours with three parts), `"8m30s"`,
 * `"510 s"`, `"8.5 min"`, `"8′30″"`, or an ISO 8601 duration in hours, minutes and seconds (`"PT8M30S"`); a
 * decimal comma is read too, and "half a minute", "eine halbe Minute"; "about" or "ca." may stand before it
 * @returns the time in seconds, 0 or more
 * @throws TypeError when `text` is not text
 * @throws RangeError when it is not a time, has no unit (`"510"` could be either: code `"ambiguous"`), may be
 * a clock or a decimal (`"8.30 min"`: the same code), or is a clock whose seconds, or minutes after hours,
 * reach 60
 *
 * @remarks Decimal fractions are exact to the double: `"8.64 min"` is 518.4. ISO 8601-1:2019, section 5.5.2.
 *
 * @example
 * ```ts
 * parseTime("8:30") // => 510
 * parseTime("PT8M30S") // => 510
 * parseTime("8,5 min") // => 510
 * ```
 */
export function parseTime(text: string): number {
  return timeFromText("parseTime/text", text);
}
