import { inRange, plainObject, wrongKind } from "../core/guards.js";

/**
 * Writes a time as minutes and seconds, from one hour on with hours.
 *
 * @param timeS - time in seconds, from 0 to 1e7
 * @param options - `stepS`: the step to round to, 1 s when left out; whole seconds only
 * @returns `"8:30"`, `"0:05"`, from one hour `"1:02:00"`
 * @throws TypeError when an argument is of the wrong kind, or `stepS` not whole
 * @throws RangeError when a number is out of range
 *
 * @example
 * ```ts
 * formatTime(510) // => "8:30"
 * formatTime(3720) // => "1:02:00"
 * formatTime(517, { stepS: 15 }) // => "8:30"
 * ```
 */
export function formatTime(timeS: number, options: { readonly stepS?: number | undefined } = {}): string {
  const at = "formatTime/options";
  const { stepS = 1 } = plainObject(at, options) as typeof options;
  inRange(at, stepS, 1, 86400, "timeS", "/stepS");
  if (stepS % 1) wrongKind(`${at}/stepS`, ["whole number"], stepS);
  // Exact, since a remainder of doubles is, and half a whole step too: no decimals are needed.
  const past = inRange("formatTime/timeS", timeS, 0, 1e7, "timeS") % stepS;
  const rounded = timeS - past + (2 * past < stepS ? 0 : stepS);
  const two = (part: number): string => String(Math.floor(part % 60)).padStart(2, "0");
  // Without hours of 0, and without the nought before the minutes.
  return `${Math.floor(rounded / 3600)}:${two(rounded / 60)}:${two(rounded)}`.replace(/^0:0?/, "");
}
