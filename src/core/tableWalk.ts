/*
 * How ln(time) departs from a published table: each row has a departure of its own, and so has each place
 * between the rows or beyond them that runs name. Without departures the table is as it was printed.
 */
import type { Learned, PlacedLearnable } from "./cause.js";
import { endWidths } from "./curve.js";
import {
  departedSd,
  DEPARTURE_RANGE,
  WIDEST_DEPARTURE_SD,
  type Departure,
  type ReadyWalk,
} from "./departures.js";
import type { Slope } from "./row.js";
import { TABLE_ROW_LOG_SD, type TableUnread } from "./table.js";
import { walkKnots, walkOver } from "./walk.js";

/** A table as its departures see it. */
export interface TableAxis extends TableUnread {
  /** begins the name of each number */
  readonly name: string;
  /** the places of the rows, rising */
  readonly rows: readonly number[];
  /** where a place lies on the scale on which the law is nearly straight */
  readonly x: (at: number) => number;
  /** places of runs nearer than this share one departure; rows from half of it on have their own */
  readonly spacing: number;
}

/** A place with a departure of its own. */
interface Knot {
  readonly at: number;
  /** its standard deviation before the first run */
  readonly sd: number;
  /** beyond the rows, the knot or row that it departs from */
  readonly inner?: number;
  /** what of its departure a place has: 1 at the knot */
  readonly share: (place: number) => number;
}

/** A table with its knots. */
interface Knots {
  readonly knots: readonly Knot[];
  /** the variance between two places that no knot explains */
  readonly beside: (from: number, to: number) => number;
}

/** The share of the way from `a`, where it is 0, to `b` that a place has covered. */
const covered = (a: number, b: number, place: number): number =>
  a === b ? 1 : Math.min(1, Math.max(0, (place - a) / (b - a)));

/**
 * The knots of a table, at its rows and at some of the places.
 *
 * @remarks At a row the departure is that from the print, known to the rounding of a row, and straight from
 * row to row. Between two rows a knot departs from that line, beyond them from its neighbour toward the rows,
 * along the chord on which the table goes on. All are independent, with the variances that a table has there:
 * the chord rests on the rounding of two rows.
 */
function knotsOf({ rows, x, perX, perRootX, reach, spacing }: TableAxis, places: readonly number[]): Knots {
  const own = walkKnots(rows[0] as number, rows, spacing / 2);
  const first = own[0] as number;
  const last = own.at(-1) as number;
  const way = (a: number, b: number): number => Math.abs(x(a) - x(b));
  const nearest = rows
    .slice(1)
    .reduce((least, row, i) => Math.min(least, way(row, rows[i] as number)), Infinity);
  const unread = (far: number, width = nearest): number =>
    (perX ** 2 + 2 * (TABLE_ROW_LOG_SD / width) ** 2) * far ** 2 + perRootX ** 2 * far;
  const widths = endWidths(
    rows.map((row) => ({ x: way(row, rows[0] as number) })),
    reach,
  );
  /** how far beyond the rows a place lies, as the variance that it has there; below 0 before the first */
  const out = (place: number): number => {
    const end = place < first ? first : last;
    if (place >= first && place <= last) return 0;
    const far = way(place, end);
    return Math.sign(place - end) * unread(far, widths[place < first ? 0 : 1]);
  };
  // Two places beyond the rows that no variance tells apart are one.
  const sorted = [...new Set([...own, ...places])].sort((a, b) => a - b);
  const all = sorted.filter((at, i) => out(at) === 0 || out(at) !== out(sorted[i - 1] ?? -Infinity));
  const outs = [...new Set(all.map(out))];
  const stops = [...new Set([...rows, ...all])];
  const toStop = (place: number): number =>
    out(place) === 0 ? stops.reduce((least, stop) => Math.min(least, way(stop, place)), Infinity) : 0;
  const beyond = walkOver("", outs, 1);
  const knots = all.map((at, i): Knot => {
    const edge = out(at);
    if (edge !== 0) {
      const inner = all[i - Math.sign(edge)] as number;
      const start = out(inner);
      const sd = Math.sqrt(Math.abs(edge - start));
      return { at, sd, inner, share: (place) => covered(start, edge, out(place)) };
    }
    const row = own.includes(at);
    const low = own.filter((one) => one < at).at(-1) ?? -Infinity;
    const high = own.find((one) => one > at) ?? Infinity;
    return {
      at,
      sd: row ? TABLE_ROW_LOG_SD : Math.sqrt(unread(Math.min(way(at, low), way(at, high)))),
      share: (place) => {
        if (place === at) return 1;
        if (place < at) return low === -Infinity ? 1 : covered(low, at, place);
        return high === Infinity ? 1 : covered(high, at, place);
      },
    };
  });
  return {
    knots,
    beside: (from, to) =>
      unread(Math.min(way(from, to), toStop(from) + toStop(to))) + beyond.row(out(from), out(to)).beside,
  };
}

const named = (name: string, at: number): string => `${name} at ${at}`;

function slopesOf(name: string, knots: readonly Knot[], from: number, to: number): readonly Slope[] {
  return knots.flatMap(({ at, share }) => {
    const slope = share(to) - share(from);
    return slope === 0 ? [] : [{ parameter: named(name, at), slope }];
  });
}

/** A table with what was learned of its departures. */
export function readyTableWalk(axis: TableAxis, departures: readonly Departure[]): ReadyWalk {
  const known = new Map(departures.map((one) => [one.at, one]));
  const { knots, beside } = knotsOf(
    axis,
    departures.map(({ at }) => at),
  );
  const learned = new Map(knots.map(({ at, sd }) => [named(axis.name, at), known.get(at) ?? { log: 0, sd }]));
  const walk = (from: number, to: number): ReturnType<ReadyWalk> => {
    let log = 0;
    const further = slopesOf(axis.name, knots, from, to).map(({ parameter, slope }) => {
      const one = learned.get(parameter) as Pick<Departure, "log" | "sd">;
      log += slope * one.log;
      return { parameter, slope: slope * one.sd };
    });
    return { log, beside: Math.sqrt(beside(from, to)), further };
  };
  return Object.assign(walk, { numbers: [...learned.keys()] });
}

/**
 * A table's departures as numbers to be learned: at its rows, at what was learned before, and at places that
 * lie the spacing or more from all of these. The outermost places beyond the rows always have one.
 */
export function placedTable(
  axis: TableAxis,
  places: readonly number[],
  before: readonly Departure[] = [],
): PlacedLearnable<number> {
  const { name, rows, spacing } = axis;
  const kept = [...rows, ...before.map(({ at }) => at)];
  const first = kept.reduce((a, b) => Math.min(a, b));
  const last = kept.reduce((a, b) => Math.max(a, b));
  const sorted = [...places].sort((a, b) => a - b);
  const outermost = [sorted[0] ?? first, sorted.at(-1) ?? last];
  for (const at of sorted) if (kept.every((one) => Math.abs(one - at) >= spacing)) kept.push(at);
  for (const at of outermost) if (at < first || at > last) kept.push(at);
  const known = new Map(before.map((one) => [one.at, one]));
  const chosen = kept.filter((at) => known.has(at) || !rows.includes(at));
  const { knots, beside } = knotsOf(axis, chosen);
  const walk = readyTableWalk(axis, before);
  return {
    parameters: knots.map(({ at, sd, inner }) => {
      // Beyond the rows, what was learned of a longer way is shared out.
      const way = inner === undefined ? undefined : walk(inner, at);
      const whole = way && { log: way.log, sd: departedSd(way) };
      const { log: value, sd: left } = whole ?? known.get(at) ?? { log: 0, sd };
      return { parameter: named(name, at), value, sd: left, range: DEPARTURE_RANGE, gap: [at, at] };
    }),
    row: (from, to) => ({ slopes: slopesOf(name, knots, from, to), beside: beside(from, to) }),
  };
}

/** What was learned of a table's departures, in the form that a law carries. */
export function learnedOfTable(learned: ReadonlyMap<string, Learned>): readonly Departure[] {
  return [...learned.values()].flatMap(({ gap, value, sd }) =>
    gap === undefined ? [] : { at: gap[1], log: value, sd: Math.min(WIDEST_DEPARTURE_SD, sd) },
  );
}
