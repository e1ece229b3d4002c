/*
 * How ln(time) departs from a law along some axis: a random walk, of which runs teach the rise over each gap
 * between the places that they name.
 */
import type { LearnableParameter, Learned, ParameterSlope, PlacedLearnable } from "./cause.js";
import { arrayOf, inRange, plainObject, refuse } from "./guards.js";
import { walkKnots, walkOver } from "./walk.js";
import { risingText } from "./text.js";

/** What was learned of a walk at one of its knots. */
export interface Departure {
  /** the place of the knot along the axis */
  readonly at: number;
  /** how far ln(time) departs from the law between the knot before and this one; 0 at the first */
  readonly log: number;
  /** its standard deviation; 0 at the first */
  readonly sd: number;
}

/** What a walk does between two places. */
export interface Departed {
  readonly log: number;
  /** standard deviation that no learned number explains */
  readonly beside: number;
  /** the learned gaps, each with its share times its standard deviation */
  readonly further?: readonly ParameterSlope[];
}

/** The places of an axis of logarithms. */
export const LOGARITHMIC: readonly [low: number, high: number] = [-20, 20];

/** The standard deviation of what a walk does, its gaps taken as independent. */
export function departedSd({ beside, further = [] }: Departed): number {
  return Math.hypot(beside, ...further.map(({ slope }) => slope));
}

/** Whether a place lies between the first and the last that runs taught. */
export function taughtBetween(departures: readonly Departure[] | undefined, at: number): boolean {
  const first = departures?.[0];
  const last = departures?.at(-1);
  return first !== undefined && last !== undefined && at >= first.at && at <= last.at;
}

/** A learned walk, ready to be asked. */
export type ReadyWalk = ((from: number, to: number) => Departed) & {
  /** the names of all its numbers */
  readonly numbers: readonly string[];
};

/** Checks stored departures: places from `low` to `high` that rise, with finite numbers. */
export function checkedDepartures(
  at: string,
  given: unknown,
  [low, high]: readonly [number, number] = LOGARITHMIC,
): readonly Departure[] {
  let before = -Infinity;
  return arrayOf(at, given, 0).map((one, i) => {
    const place = `${at}/${i}`;
    const departure = plainObject(place, one) as unknown as Departure;
    inRange(place, departure.at, low, high, undefined, "/at");
    inRange(place, departure.log, -10, 10, undefined, "/log");
    inRange(place, departure.sd, 0, WIDEST_DEPARTURE_SD, undefined, "/sd");
    if (!(departure.at > before))
      refuse(`${place}/at`, "rising", risingText, { above: before }, departure.at);
    before = departure.at;
    return departure;
  });
}

/**
 * A walk with what was learned of it: `name` begins the names of its numbers, `sd` is its spread over one
 * unit.
 */
export function readyWalk(name: string, departures: readonly Departure[], sd: number): ReadyWalk {
  const walk = walkOver(
    name,
    departures.map(({ at }) => at),
    sd,
  );
  const learned = new Map(
    walk.unknowns.map(({ parameter }, i) => [parameter, departures[i + 1] as Departure]),
  );
  const ready = (from: number, to: number): Departed => {
    const { slopes, beside } = walk.row(from, to);
    let log = 0;
    const further = slopes.map(({ parameter, slope }) => {
      const gap = learned.get(parameter) as Departure;
      log += slope * gap.log;
      return { parameter, slope: slope * gap.sd };
    });
    return { log, beside: Math.sqrt(beside), further };
  };
  return Object.assign(ready, { numbers: [...learned.keys()] });
}

/**
 * A walk as numbers to be learned, with a knot at each of the places that lie `spacing` or more apart; what
 * was learned of it before is what its numbers start from.
 */
export function placedWalk(
  name: string,
  places: readonly number[],
  sd: number,
  spacing: number,
  before: readonly Departure[] = [],
): PlacedLearnable<number> {
  const [pin] = places;
  if (pin === undefined) return { parameters: [], row: () => ({ slopes: [], beside: 0 }) };
  const known = readyWalk(name, before, sd);
  const walk = walkOver(name, walkKnots(pin, [...places, ...before.map(({ at }) => at)], spacing), sd);
  const parameters = walk.unknowns.map(({ parameter }, i): LearnableParameter => {
    const gap = walk.gaps[i] as readonly [number, number];
    const departed = known(...gap);
    return { parameter, value: departed.log, sd: departedSd(departed), range: DEPARTURE_RANGE, gap };
  });
  return { parameters, row: (from, to) => walk.row(from, to) };
}

/** A departure has no limit of its own. */
export const DEPARTURE_RANGE: readonly [low: number, high: number] = [-10, 10];

/** A departure of which nothing is known is no wider than a law may say. */
export const WIDEST_DEPARTURE_SD = 10;

/** What was learned of a walk, in the form that a law carries; nothing where there was nothing to learn. */
export function learnedDepartures(learned: ReadonlyMap<string, Learned>): {
  readonly departures?: readonly Departure[];
} {
  const gaps = [...learned.values()].filter((one) => one.gap !== undefined);
  if (gaps.length === 0) return {};
  const edges = gaps.map(({ gap, value, sd }) => ({
    at: (gap as readonly number[])[1] as number,
    log: value,
    sd: Math.min(WIDEST_DEPARTURE_SD, sd),
  }));
  const [first] = gaps as [Learned, ...Learned[]];
  return { departures: [{ at: (first.gap as readonly number[])[0] as number, log: 0, sd: 0 }, ...edges] };
}

/** A law as it is stored: without the walk and the curve that were made ready for it. */
export function storable<Law extends { readonly walk?: ReadyWalk; readonly table?: unknown }>(
  law: Law,
): Omit<Law, "walk" | "table"> {
  const { ...copy }: { walk?: ReadyWalk; table?: unknown } & Omit<Law, "walk" | "table"> = law;
  delete copy.walk;
  delete copy.table;
  return copy;
}
