/* Figures with their units, as the language writes them. */
import { formatTime } from "darkroom-kinetics";
import type { Language } from "./sheet.js";

const figure = (value: number, digits: number, language: Language): string =>
  new Intl.NumberFormat(language, { maximumSignificantDigits: digits, useGrouping: false }).format(value);

export const grams = (massG: number, language: Language): string => `${figure(massG, 2, language)} g`;
export const millilitres = (volumeMl: number, language: Language): string =>
  `${figure(volumeMl, 3, language)} ml`;
export const hours = (timeH: number, language: Language): string => `${figure(timeH, 2, language)} h`;

/** The unit of a time that is written with colons: without it, 19:15 reads as a time of day. */
export const clockUnit = (text: string): string => (text.split(":").length > 2 ? "h" : "min");

/** A time with its unit. */
export function lasting(timeS: number): string {
  const text = formatTime(timeS);
  return `${text} ${clockUnit(text)}`;
}

const QUARTERS = ["", "¼", "½", "¾"];

/** A number of spoons or tablets in quarters. */
export function spoonCount(count: number): string {
  const quarters = Math.round(4 * count);
  const part = QUARTERS[quarters % 4] ?? "";
  const whole = Math.floor(quarters / 4);
  return whole === 0 && part !== "" ? part : `${whole}${part}`;
}
