import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import { inRange, positive, refuse } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { inNameOf } from "../core/inNameOf.js";
import type { TemperatureLaw } from "../temperature/law.js";
import { rateFunction } from "../temperature/rateFunction.js";
import { integrate } from "./integrate.js";
import { courseOf, type TemperatureCourse } from "./course.js";
import { loadOf, type OwnUse } from "./ownUse.js";
import { reachedText, smoothText } from "./refusedText.js";

/** What {@link developUntil} needs. */
export interface DevelopUntilOptions {
  /** the time that would be right at `referenceC`, s, above 0 to 1e7 */
  readonly equivalentS: number;
  /** °C, 0 to 100 */
  readonly referenceC: number;
  /** the temperature law of developer and material; the generic one when left out */
  readonly law?: TemperatureLaw | undefined;
  /** the bath's temperature over the clock: steady in °C (0 to 100), a log, or a drift */
  readonly temperatureAt: TemperatureCourse;
  /** clock time at which the counting starts, s; 0 when left out */
  readonly fromS?: number | undefined;
  /** how this development wears out its own bath; left out: not at all */
  readonly ownUse?: OwnUse | undefined;
}

const OPTIONS: readonly (keyof DevelopUntilOptions)[] = [
  "equivalentS",
  "referenceC",
  "law",
  "temperatureAt",
  "fromS",
  "ownUse",
];

/**
 * The clock time at which a drifting bath has done the work of a steady one.
 *
 * @param options - the time wanted at the reference temperature, the law, and the bath's temperature over the
 * clock
 * @returns the clock time in s, on the clock of `temperatureAt`, so never before `fromS`
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range, the bath leaves 0 to 100 °C, or the work is not done
 * within 1e7 s
 *
 * @remarks Solves ∫ rate(T(t)) dt = equivalentS by adaptive Gauss-Lobatto quadrature, to about 1e-10 of
 * equivalentS. A log is followed from reading to reading, and held outside its first and last.
 *
 * @example
 * ```ts
 * const temperatureAt = { startC: 22, ambientC: 14, timeConstantS: 3600 };
 * const law: TemperatureLaw = { kind: "coefficient", ratio: 2, intervalC: 10 };
 * developUntil({ equivalentS: 480, referenceC: 20, law, temperatureAt }) // => 431.35
 * ```
 */
export function developUntil(options: DevelopUntilOptions): number {
  onlyFields("developUntil/options", options, OPTIONS);
  const target = positive("developUntil/options/equivalentS", options.equivalentS, LONGEST_CLOCK_S, "timeS");
  const { fromS = 0 } = options;
  const start = inRange("developUntil/options/fromS", fromS, 0, LONGEST_CLOCK_S, "timeS");
  const { at, corners } = courseOf("developUntil/options/temperatureAt", options.temperatureAt);
  const rateAt = inNameOf("developUntil/options", () => rateFunction(options.referenceC, options.law));
  // In a bath that slows with what it has done, the target grows by a factor known beforehand, whatever the
  // temperature does.
  const slower =
    options.ownUse === undefined ? 1 : loadOf("developUntil/options/ownUse", options.ownUse).whole;
  return clockTime((timeS) => rateAt(at(timeS)), target * slower, start, corners);
}

/**
 * How often a forecast is looked at: a thousand times would do for any bath; what jumps about at every scale
 * would be followed without end.
 */
const MOST_LOOKS = 1_000_000;

/** What an error calls the course of the temperature, and the work that is to be done. */
export interface ClockPlaces {
  readonly course: string;
  readonly work: string;
}

const OWN_PLACES: ClockPlaces = {
  course: "developUntil/options/temperatureAt",
  work: "developUntil/options/equivalentS",
};

/**
 * The clock time at which the integral of a positive rate from `start` reaches `target`: Newton's steps, none
 * longer than what a sixteenth of the target needs at the moment's rate, so that one panel is short against
 * any usual drift, and none across a corner that is known beforehand. A step that went too far is taken back,
 * and where Newton's leaves what is known to hold the root, that is halved.
 */
export function clockTime(
  rateAt: (timeS: number) => number,
  target: number,
  start: number,
  corners: readonly number[] = [],
  places: ClockPlaces = OWN_PLACES,
): number {
  const most = MOST_LOOKS + 50 * corners.length;
  let steps = 0;
  const giveUp = (): never => {
    refuse(places.course, "smooth", smoothText, { steps }, undefined);
  };
  const rate = (timeS: number): number => {
    steps += 1;
    if (steps > most) giveUp();
    return rateAt(timeS);
  };
  const tolerance = target * 1e-12;
  let from = start;
  let left = target;
  let low = start;
  let high = Infinity;
  let next = 0;
  while (Math.abs(left) > tolerance) {
    while ((corners[next] ?? Infinity) <= from) next += 1;
    if (left > 0) low = from;
    else high = from;
    if (low >= LONGEST_CLOCK_S)
      refuse(places.work, "reached-by", reachedText, { max: LONGEST_CLOCK_S }, target);
    let to = Math.min(
      from + Math.min(left, target / 16) / rate(from),
      corners[next] ?? Infinity,
      LONGEST_CLOCK_S,
    );
    if (high < Infinity && !(to > low && to < high)) to = (low + high) / 2;
    if (to === from) {
      // Less than the clock can show is left, some 1e-16 of it; ten million times that, and the forecast told
      // something else at each look.
      if (Math.abs(left) > 1e-9 * from * rate(from)) giveUp();
      break;
    }
    left -= integrate(rate, from, to, tolerance);
    from = to;
  }
  return from;
}
