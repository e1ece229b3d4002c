import { digits } from "../core/digits.js";
import { formatTime } from "./formatTime.js";

/** From so long on a clock is no help, s: two days. */
const IN_HOURS_FROM_S = 172_800;

/**
 * A length of time in a sentence: "30 s", "5 min" and "2 h" where it is whole, else as a clock shows it; in
 * hours from two days on.
 */
export function lengthText(timeS: unknown): string {
  if (!((timeS as number) >= 60)) return `${digits(timeS)} s`;
  const wholeS = Math.round(timeS as number);
  if (wholeS >= IN_HOURS_FROM_S || wholeS % 3600 === 0) return `${digits((timeS as number) / 3600)} h`;
  return wholeS % 60 === 0 && wholeS < 3600 ? `${wholeS / 60} min` : formatTime(wholeS);
}
