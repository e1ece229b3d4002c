import { formatTime } from "./formatTime.js";

/** The longest clock time that any function takes or gives, s: about four months. */
export const LONGEST_CLOCK_S = 1e7;

/** A time as a clock shows it, or the words for one that is longer than any clock shows. */
export function clockText(timeS: number, beyond: string): string {
  return timeS <= LONGEST_CLOCK_S ? formatTime(timeS) : beyond;
}
