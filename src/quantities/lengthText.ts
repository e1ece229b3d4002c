import { digits } from "../core/digits.js";
import { LONGEST_CLOCK_S } from "./clockText.js";
import { formatTime } from "./formatTime.js";

/**
 * A length of time in a sentence: "30 s", "5 min" and "2 h" where it is whole, else as a clock shows it; in
 * hours where no clock does.
 */
export function lengthText(timeS: unknown): string {
  if (!((timeS as number) >= 60)) return `${digits(timeS)} s`;
  const wholeS = Math.round(timeS as number);
  if (wholeS > LONGEST_CLOCK_S || wholeS % 3600 === 0) return `${digits((timeS as number) / 3600)} h`;
  return wholeS % 60 === 0 && wholeS < 3600 ? `${wholeS / 60} min` : formatTime(wholeS);
}
