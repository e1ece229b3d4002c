/*
 * Room: quantities. Dates as ISO 8601 writes them.
 */
import { wrongKind, wrongValue } from "../core/guards.js";

const DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Returns a date of ISO 8601, with or without a time of day after it; throws when it is none. */
export function isoDate(where: string, value: unknown): string {
  if (typeof value !== "string") wrongKind(where, "text", value);
  const [, month, day] = /^\d{4}-(\d\d)-(\d\d)(?:T.*)?$/.exec(value) ?? [];
  if (!(Number(day) >= 1 && Number(day) <= (DAYS[Number(month) - 1] ?? 0))) wrongValue(where, 'an ISO date such as "2024-05-01"', value);
  return value;
}

/** Throws when a date is after today, which the caller tells: there is no clock in here. */
export function notAfter(where: string, date: string, today: string): void {
  if (date.slice(0, 10) > today) wrongValue(where, `at most today, ${today}`, date);
}
