import { inRange, wrongKind } from "../core/guards.js";
import { bathTemperature } from "../temperature/law.js";
import { checkedLog, logTemperature, type TemperatureLog } from "./log.js";
import { checkedDrift, driftTemperature, type NewtonDrift } from "./newtonDrift.js";

/**
 * The temperature of a bath over time, as data: steady in °C (0 to 100), a log of readings whose first and
 * last are held outside it, or a drift toward the surroundings.
 */
export type TemperatureCourse = number | TemperatureLog | NewtonDrift;

/** A course that is ready to be followed. */
export interface Course {
  /** °C at a clock time in s */
  readonly at: (timeS: number) => number;
  /** clock times at which it turns a corner, s, rising */
  readonly corners: readonly number[];
}

/**
 * Checks a course and makes it ready. A drift that leaves 0 to 100 °C is refused where it does.
 *
 * @throws TypeError when it is none of the three; RangeError when a value is out of range
 */
export function courseOf(where: string, given: unknown): Course {
  if (typeof given === "number") {
    const steadyC = bathTemperature(where, given);
    return { at: () => steadyC, corners: [] };
  }
  if (Array.isArray(given)) {
    const log = checkedLog(where, given);
    return { at: logTemperature(log), corners: log.map(({ timeS }) => timeS) };
  }
  if (typeof given !== "object" || given === null) wrongKind(where, ["number", "log", "drift"], given);
  const driftC = driftTemperature(checkedDrift(where, given));
  return { at: (timeS) => inRange(where, driftC(timeS), 0, 100, "temperatureC"), corners: [] };
}
