import { wrongKind, wrongValue, unreadable } from "../core/guards.js";

const FORMS = 'a time such as "8:30", "1:02:00", "8m30s", "510 s", "8.5 min", "1 h" or "PT8M30S"';
const NUMBER = String.raw`(\d+(?:\.\d+)?)`;
const UNITS = {
  h: String.raw`(?:${NUMBER}\s*(?:h|hrs?|hours?))?`,
  m: String.raw`(?:${NUMBER}\s*(?:m|mins?|minutes?|['\u2032\u2019]))?`,
  s: String.raw`(?:${NUMBER}\s*(?:s|secs?|seconds?|["\u2033\u201d]|''))?`,
};
const CLOCK = /^(?:(\d+):)?(\d+):(\d{2}(?:\.\d+)?)$/;
const WORDS = new RegExp(String.raw`^${UNITS.h}\s*${UNITS.m}\s*${UNITS.s}$`, "i");
const ISO = new RegExp(`^PT(?:${NUMBER}H)?(?:${NUMBER}M)?(?:${NUMBER}S)?$`);

/**
 * Reads a time as people and timers write it.
 *
 * @param text - `"8:30"` and `"1:02:00"` (always minutes first, or hours with three parts), `"8m30s"`, `"510
 * s"`, `"8.5 min"`, `"8′30″"`, or an ISO 8601 duration in hours, minutes and seconds (`"PT8M30S"`)
 * @returns the time in seconds, 0 or more
 * @throws TypeError when `text` is not text
 * @throws RangeError when it is not a time, has no unit (`"510"` could be either), or is a clock whose
 * seconds, or minutes after hours, reach 60
 *
 * @remarks Decimal fractions are exact to the double: `"8.55 min"` is 513. ISO 8601-1:2019, section 5.5.2.
 *
 * @example
 * ```ts
 * parseTime("8:30") // => 510
 * parseTime("PT8M30S") // => 510
 * ```
 */
export function parseTime(text: string): number {
  if (typeof text !== "string") wrongKind("parseTime/text", FORMS, text, { types: ["text"] });
  const trimmed = text.trim();
  const clock = CLOCK.exec(trimmed);
  if (clock) {
    const [, hours, minutes, seconds] = clock;
    if (Number(seconds) >= 60 || (hours !== undefined && Number(minutes) >= 60))
      wrongValue("parseTime/text", "a time with minutes and seconds below 60", text);
    return total(text, hours, minutes, seconds);
  }
  // Longer, nothing is a time, and a long run of blanks would be searched in every way.
  const parts = trimmed.length > 1000 ? null : (ISO.exec(trimmed) ?? WORDS.exec(trimmed));
  const [, hours, minutes, seconds] = parts ?? [];
  if (hours === undefined && minutes === undefined && seconds === undefined)
    unreadable("parseTime/text", "time", ["8:30", "8.5 min", "510 s"], FORMS, text);
  return total(text, hours, minutes, seconds);
}

function total(text: string, hours = "0", minutes = "0", seconds = "0"): number {
  // Fifteen digits: 8.55 × 60 is 513.0000000000001 in doubles, and 513 on paper.
  const timeS = Number((Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)).toPrecision(15));
  if (!(timeS <= 1e7)) wrongValue("parseTime/text", "at most 10000000 s", text);
  return timeS;
}
