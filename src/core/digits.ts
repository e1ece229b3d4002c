/*
 * Figures in a sentence. A caution that came back from a store may lack its figures: then a question mark is
 * in their place.
 */
import type { TemperatureUnit } from "./cautionTexts.js";

/** Whether a value is a number that can be shown. */
export const isFigure = (value: unknown): value is number =>
  typeof value === "number" && Number.isFinite(value);

/** A number to so many digits, without trailing noughts. */
export function digits(value: unknown, count = 3): string {
  return isFigure(value) ? String(Number(value.toPrecision(count))) : "?";
}

/** A number with so many decimals. */
export function decimals(value: unknown, count = 1): string {
  return isFigure(value) ? value.toFixed(count) : "?";
}

/**
 * Whether a spread, within so many times more or less, is said in per cent: where that is less than 50 once
 * it is rounded (assumed). A wider one is said as a factor, since as much less is not as likely as more.
 */
export const isNarrow = (ratio: number): boolean => ratio < 1.495;

/** From so many hours on, ages are in days. */
const IN_DAYS_FROM_H = 48;

/**
 * An age as people say it: minutes and hours as a clock shows them, from 48 h on days, and whole weeks from
 * two on. `parseAge` reads it.
 */
export function ageText(ageH: unknown, days = "days", weeks = "weeks"): string {
  if (!isFigure(ageH)) return `${digits(ageH)} h`;
  const all = Math.round(ageH * 60);
  if (all >= IN_DAYS_FROM_H * 60) {
    const inWeeks = ageH / 168;
    return inWeeks >= 2 && Number.isInteger(inWeeks) ? `${inWeeks} ${weeks}` : `${digits(ageH / 24)} ${days}`;
  }
  const [hours, minutes] = [Math.floor(all / 60), all % 60];
  if (minutes === 0) return `${hours} h`;
  return hours === 0 ? `${minutes} min` : `${hours} h ${minutes} min`;
}

/** A temperature to a tenth of a degree, in the unit that people see. */
export function degrees(celsius: unknown, unit: TemperatureUnit): string {
  return `${tenths(celsius, unit, 32)} °${unit}`;
}

/** A difference of temperatures to a tenth of a degree. */
export function degreesApart(celsius: unknown, unit: TemperatureUnit): string {
  return `${tenths(celsius, unit, 0)} °${unit}`;
}

/** Both ends of a range of temperatures, with a word between them: "18 to 24 °C". */
export function degreesBetween(low: unknown, to: string, high: unknown, unit: TemperatureUnit): string {
  return `${tenths(low, unit, 32)} ${to} ${degrees(high, unit)}`;
}

/** A temperature in °F; a difference of temperatures where `zero` is 0. */
export function inFahrenheit(celsius: number, zero = 32): number {
  return celsius * 1.8 + zero;
}

/** In °F a difference has no `zero`. */
function tenths(celsius: unknown, unit: TemperatureUnit, zero: number): string {
  const shown = unit === "F" ? inFahrenheit(celsius as number, zero) : celsius;
  return isFigure(shown) ? String(Number(shown.toFixed(1))) : "?";
}
