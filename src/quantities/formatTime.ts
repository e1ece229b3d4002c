import { inRange, plainObject, refuse } from "../core/guards.js";
import { toStep } from "./toStep.js";

/**
 * Writes a time as minutes and seconds, from one hour on with hours.
 *
 * @param timeS - time in seconds, from 0 to 1e7
 * @param options - `stepS`: the step to round to, 1 s when left out; whole seconds only
 * @returns `"8:30"`, `"0:05"`, from one hour `"1:02:00"`
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a number is out of range or `stepS` is not whole
 *
 * @example
 * ```ts
 * formatTime(510) // => "8:30"
 * formatTime(3720) // => "1:02:00"
 * formatTime(517, { stepS: 15 }) // => "8:30"
 * ```
 */
export function formatTime(timeS: number, options: { readonly stepS?: number | undefined } = {}): string {
  const { stepS = 1 } = plainObject("formatTime/options", options) as typeof options;
  inRange("formatTime/options/stepS", stepS, 1, 86400, "timeS");
  if (!Number.isInteger(stepS))
    refuse("formatTime/options/stepS", `must be whole seconds, got ${stepS}`, stepS);
  const rounded = toStep(inRange("formatTime/timeS", timeS, 0, 1e7, "timeS"), stepS);
  const hours = Math.floor(rounded / 3600);
  const minutes = Math.floor((rounded % 3600) / 60);
  const seconds = String(rounded % 60).padStart(2, "0");
  return hours > 0 ? `${hours}:${String(minutes).padStart(2, "0")}:${seconds}` : `${minutes}:${seconds}`;
}
