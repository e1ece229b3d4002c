/*
 * Module: quantities. Dates as ISO 8601 writes them.
 */
import { isText, refuse, unreadable } from "../core/guards.js";
import { notAfterText } from "./text.js";

/**
 * A calendar date, and after it perhaps a time of day and an offset; a blank may stand for the T (RFC 3339,
 * section 5.6).
 */
const DATE = new RegExp(
  String.raw`^(\d{4})-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])` +
    String.raw`(?:[T ](?:[01]\d|2[0-3])(?::?[0-5]\d){0,2}(?:[.,]\d+)?` +
    String.raw`(?:Z|[-+](?:[01]\d|2[0-3])(?::?[0-5]\d)?)?)?$`,
);

/**
 * The days of a month of the Gregorian calendar: 31 in each odd month up to July and each even one after it.
 * A full century is leap when 16 divides it.
 */
function daysOf(year: number, month: number): number {
  if (month === 2) return year % (year % 25 === 0 ? 16 : 4) === 0 ? 29 : 28;
  return 30 + ((month + (month >> 3)) & 1);
}

/** Whether the calendar has this day. */
export function isDay(year: number, month: number, day: number): boolean {
  return month >= 1 && month <= 12 && day >= 1 && day <= daysOf(year, month);
}

/**
 * Returns a date of ISO 8601-1:2019, with or without a time of day after it; throws for other text and for a
 * day that no calendar has.
 */
export function isoDate(where: string, value: unknown): string {
  isText(where, value);
  const [, year, month, day] = DATE.exec(value) ?? [];
  if (!isDay(Number(year), Number(month), Number(day)))
    unreadable(where, { format: "date", examples: ["2024-05-01"] }, value);
  return value;
}

/** Throws when a date is after today, which the caller tells: there is no clock in here. */
export function notAfter(where: string, date: string, today: string): void {
  if (date.slice(0, 10) > today) refuse(where, "not-after", notAfterText, { today }, date);
}
