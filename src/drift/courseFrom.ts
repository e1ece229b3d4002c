/*
 * Module: drift. A bath that drifts, as it goes on after a while.
 */
import { inRange } from "../core/guards.js";
import type { TemperatureCourse } from "./course.js";
import { checkedLog, logTemperature, type TemperatureReading } from "./log.js";
import { checkedDrift, driftTemperature } from "./newtonDrift.js";

/** What is left of a course, and the moment on its clock where a log has ended before. */
export interface CourseLeft {
  readonly course: TemperatureCourse;
  readonly held?: { readonly lastS: number; readonly nowS: number };
}

/**
 * The same course, counted from so many seconds after its start. A steady bath stays. A drift goes on from
 * the temperature that it has come to. A log keeps its clock and what is left of its readings; after its end
 * the last reading is held, as everywhere.
 */
export function courseFrom(where: string, course: TemperatureCourse, laterS: number): CourseLeft {
  if (typeof course === "number" || laterS === 0) return { course };
  if (!Array.isArray(course)) {
    const drift = checkedDrift(where, course);
    const startC = inRange(where, driftTemperature(drift)(laterS), 0, 100, "temperatureC");
    return { course: { ...drift, startC } };
  }
  const log = checkedLog(where, course);
  const [first, last] = [log[0], log.at(-1)] as [TemperatureReading, TemperatureReading];
  const timeS = first.timeS + laterS;
  if (timeS >= last.timeS) return { course: last.temperatureC, held: { lastS: last.timeS, nowS: timeS } };
  const temperatureC = logTemperature(log)(timeS);
  return { course: [{ timeS, temperatureC }, ...log.filter((one) => one.timeS > timeS)] };
}
