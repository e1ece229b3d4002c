/*
 * Figures in a German sentence: a comma for the point. A figure that a store has lost is a question mark.
 */
import { ownEntry } from "../../core/ownEntry.js";
import type { TemperatureUnit } from "../../core/cautionTexts.js";
import { ageText, decimals, degrees, degreesApart, degreesBetween, digits } from "../../core/digits.js";
import { lengthText } from "../../quantities/lengthText.js";

/** A written figure with a comma for its point. */
export const comma = (text: string): string => text.replace(".", ",");

/** The same for each of several figures. */
export const commas = (text: string): string => text.replaceAll(".", ",");

/** A number to so many digits. */
export const zahl = (value: unknown, count?: number): string => comma(digits(value, count));

/** A number with so many decimals. */
export const stellen = (value: unknown, count?: number): string => comma(decimals(value, count));

/** A temperature. */
export const grad = (celsius: unknown, unit: TemperatureUnit): string => comma(degrees(celsius, unit));

/** A difference of temperatures. */
export const gradWeit = (celsius: unknown, unit: TemperatureUnit): string =>
  comma(degreesApart(celsius, unit));

/** Two ends of a range of temperatures: "18 bis 24 °C". */
export const gradBis = (low: unknown, high: unknown, unit: TemperatureUnit): string =>
  commas(degreesBetween(low, "bis", high, unit));

/** A length of time: "30 s", "5 min" and "2 h" where it is whole, else as a clock shows it. */
export const dauer = (timeS: unknown): string => comma(lengthText(timeS));

/** An age: "1 h 28 min", "10 Tage", "3 Wochen". */
export const alter = (ageH: unknown): string => comma(ageText(ageH, "Tage", "Wochen"));

/** The same after "vor", "von" and "statt": "10 Tagen". */
export const dativ = (age: string): string => age.replace(/ Tage$/, " Tagen");

const PARTS: Readonly<Record<string, string>> = { "0.33": "⅓", "0.50": "½", "0.67": "⅔" };

/** Stops, halves and thirds as such: "⅔ Blende", "1½ Blenden", "2 Blenden". */
export function blenden(stops: number): string {
  const whole = Math.trunc(stops);
  const part = ownEntry(PARTS, (stops - whole).toFixed(2));
  const said = part === undefined ? zahl(stops, 2) : `${whole === 0 ? "" : whole}${part}`;
  return `${said} ${stops === 1 || (part !== undefined && whole === 0) ? "Blende" : "Blenden"}`;
}

/** A word of a list; one that is not in it stays as it is. */
export function wort(words: Readonly<Record<string, string>>, name: unknown): string {
  const key = String(name);
  return ownEntry(words, key) ?? key;
}

/** Words at the start of a sentence. */
export const satzanfang = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Several words: "Temperatur, Verdünnung und Alter". */
export function und(words: unknown): string {
  if (!Array.isArray(words)) return "?";
  const all = (words as readonly unknown[]).map(String);
  const last = all.pop() ?? "";
  return all.length === 0 ? last : `${all.join(", ")} und ${last}`;
}
