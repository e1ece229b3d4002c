/*
 * Module: process. The temperature of a bath from plate to plate.
 */
import { compensateSentences } from "../compensate/text.js";
import type { Compensation, Conditions } from "../compensate/types.js";
import { isPast, type Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import { courseFrom, type CourseLeft } from "../drift/courseFrom.js";
import { MOVED_C } from "../drift/moved.js";
import type { NewtonDrift } from "../drift/newtonDrift.js";
import { pourInC } from "./asAnswered.js";
import { eveningSentences } from "./eveningText.js";

/** The temperature of the bath: what was given, where, and the moment that it counts from. */
export interface Course {
  readonly path: string;
  readonly given: Conditions["temperatureC"];
  /** s from the start of the evening */
  readonly fromS: number;
}

export const drifts = (given: unknown): boolean => typeof given === "object" && given !== null;

/** A plate's own temperature counts from its pour-in; without one the evening's goes on. */
export function courseOfPlate(
  evening: Course,
  given: Conditions["temperatureC"],
  plate: number,
  fromS: number,
): Course {
  return given === undefined ? evening : { path: `/plates/${plate}/conditions/temperatureC`, given, fromS };
}

/** The course that the later plates go on from: the last one that drifts. */
export function courseAfter(evening: Course, today: Course, pourOutS: number): Course {
  if (today === evening || drifts(today.given)) return today;
  const { given } = evening;
  // A log was read; a forecast goes on from what the bath was brought to.
  if (!drifts(given) || Array.isArray(given)) return evening;
  const drift = given as NewtonDrift;
  return { path: today.path, given: { ...drift, startC: today.given as number }, fromS: pourOutS };
}

/** What is left of a course at a pour-in; what is no temperature is told by `compensate`. */
export function leftOf(where: string, { path, given, fromS }: Course, pourInS: number): Partial<CourseLeft> {
  return given === undefined ? {} : courseFrom(where + path, given, pourInS - fromS);
}

/** Where the bath has left the temperature that its course began at, and where its log has ended. */
export function drifted(
  { path, given }: Course,
  { course, held }: Partial<CourseLeft>,
  { timeS }: Compensation,
): readonly Caution[] {
  if (!drifts(given)) return [];
  const [fromC, toC] = [pourInC(given), pourInC(course)];
  const actual = Math.abs(toC - fromC);
  const cautions: Caution[] = [];
  if (isPast(actual, MOVED_C)) {
    const figures = { path, quantity: "temperatureDifferenceC", limit: MOVED_C, actual } as const;
    cautions.push(
      makeCaution(eveningSentences, "bath-drifted", "warn", { ...figures, data: { fromC, toC } }),
    );
  }
  if (held !== undefined) {
    const figures = { path, quantity: "timeS", limit: held.lastS, actual: held.nowS + timeS } as const;
    cautions.push(makeCaution(compensateSentences, "log-held", "warn", figures));
  }
  return cautions;
}
