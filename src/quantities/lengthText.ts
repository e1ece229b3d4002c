import { digits } from "../core/digits.js";

/** A length of time in a sentence: in seconds, from a minute on as a clock shows it, then in hours. */
export function lengthText(timeS: unknown): string {
  if (!((timeS as number) >= 60)) return `${digits(timeS)} s`;
  const wholeS = Math.round(timeS as number);
  if (wholeS >= 3600) return `${digits((timeS as number) / 3600)} h`;
  return `${Math.floor(wholeS / 60)}:${String(wholeS % 60).padStart(2, "0")}`;
}
