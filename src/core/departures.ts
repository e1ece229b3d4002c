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

/** A learned walk, ready to be asked. */
export type ReadyWalk = (from: number, to: number) => Departed;

/** Checks stored departures: places that rise, with finite numbers. */
export function checkedDepartures(at: string, given: unknown): readonly Departure[] {
  let before = -Infinity;
  return arrayOf(at, given, 0).map((one, i) => {
    const place = `${at}/${i}`;
    const departure = plainObject(place, one) as unknown as Departure;
    inRange(place, departure.at, -20, 20, undefined, "/at");
    inRange(place, departure.log, -10, 10, undefined, "/log");
    inRange(place, departure.sd, 0, 10, undefined, "/sd");
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
  return (from, to) => {
    const { slopes, beside } = walk.row(from, to);
    let log = 0;
    const further = slopes.map(({ parameter, slope }) => {
      const gap = learned.get(parameter) as Departure;
      log += slope * gap.log;
      return { parameter, slope: slope * gap.sd };
    });
    return { log, beside: Math.sqrt(beside), further };
  };
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
    const { log, beside, further = [] } = known(...gap);
    return {
      parameter,
      value: log,
      sd: Math.hypot(beside, ...further.map(({ slope }) => slope)),
      range: RANGE,
      gap,
    };
  });
  return { parameters, row: (from, to) => walk.row(from, to) };
}

/** A departure has no limit of its own. */
const RANGE = [-10, 10] as const;

/** What was learned of a walk, in the form that a law carries; nothing where there was nothing to learn. */
export function learnedDepartures(learned: ReadonlyMap<string, Learned>): {
  readonly departures?: readonly Departure[];
} {
  const gaps = [...learned.values()].filter((one) => one.gap !== undefined);
  if (gaps.length === 0) return {};
  const edges = gaps.map(({ gap, value, sd }) => ({
    at: (gap as readonly number[])[1] as number,
    log: value,
    // A gap of which nothing is known is no wider than a law may say.
    sd: Math.min(10, sd),
  }));
  const [first] = gaps as [Learned, ...Learned[]];
  return { departures: [{ at: (first.gap as readonly number[])[0] as number, log: 0, sd: 0 }, ...edges] };
}

/** A law as it is stored: without the walk that was made ready for it. */
export function storable<Law extends { readonly walk?: ReadyWalk }>(law: Law): Omit<Law, "walk"> {
  const { ...copy }: { walk?: ReadyWalk } & Omit<Law, "walk"> = law;
  delete copy.walk;
  return copy;
}
