import { inRange, isCount, notOneOf, plainObject, unreadable } from "../core/guards.js";
import { dateCell, DATES, type DateOptions } from "./dateCell.js";

/** Options of {@link parseDate}. */
export type ParseDateOptions = DateOptions;

/** Checks how dates are to be read; `at` is the place of the options. */
export function checkedDateOptions(at: string, options: unknown): DateOptions {
  const { year, dates } = plainObject(at, options) as DateOptions;
  if (year !== undefined) isCount(`${at}/year`, inRange(`${at}/year`, year, 1800, 9999, "count"));
  if (dates !== undefined && !["day-first", "month-first"].includes(dates))
    notOneOf(`${at}/dates`, ["day-first", "month-first"], dates);
  return { year, dates };
}

/**
 * Reads a date as people write it.
 *
 * @param text - an ISO date, figures, or words in English or German, perhaps with the day of the week before
 * and a time of day after: `"2024-03-05"`, `"5.3.2024"`, `"5 March 2024"`, `"Di, 5. März 24"`
 * @param options - `year`, 1800 to 9999: that of a date without one; `dates`: `"day-first"` or
 * `"month-first"`, which comes first in `"3/4/2024"`
 * @returns the ISO date, with T and its time of day where the text has one: the `date` of a run
 * @throws TypeError when `text` is not text, `options` not an object or `year` no whole number
 * @throws RangeError when it is no date or has no year; when it may be two dates (code `"ambiguous"`, with
 * both); or when an option is out of range
 *
 * @remarks Between points the day comes first. Between slashes or hyphens a figure above 12 decides, else the
 * option. Years of two figures are 1969 to 2068: IEEE Std 1003.1-2017 (POSIX), strptime.
 *
 * @example
 * ```ts
 * parseDate("5. März 2024") // => "2024-03-05"
 * parseDate("3/4/24", { dates: "day-first" }) // => "2024-04-03"
 * ```
 */
export function parseDate(text: string, options: ParseDateOptions = {}): string {
  if (typeof text !== "string") unreadable("parseDate/text", DATES, text);
  return dateCell("parseDate/text", text.trim(), checkedDateOptions("parseDate/options", options));
}
