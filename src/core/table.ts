/*
 * A published table, prepared once: its rows sorted, its curve through them, its spread between any two
 * places. The same for temperature and for dilution.
 */
import { endWidths, firstFrom, monotoneCurve } from "./curve.js";

/** A printed time at a place of its table. */
export interface TimeKnot {
  readonly x: number;
  readonly timeS: number;
  /** the step to which the time was rounded, s, where it is known */
  readonly stepS?: number;
}

/**
 * Time as a monotone curve of ln(time) through the rows of a table, x rising; at a row exactly the time that
 * is printed. Outside the rows it goes on as {@link monotoneCurve} does.
 */
export function timeCurve(rows: readonly TimeKnot[], reach: number): (x: number) => number {
  const curve = monotoneCurve(
    rows.map(({ x, timeS }) => ({ x, y: Math.log(timeS) })),
    reach,
  );
  return (x) => {
    const row = rows[firstFrom(rows, x)];
    return row?.x === x ? row.timeS : Math.exp(curve(x));
  };
}

/**
 * How far x lies beyond the rows of a table, x rising: below 0 before the first, above 0 after the last, 0
 * among them.
 */
export function overrun(rows: readonly TimeKnot[], x: number): number {
  return Math.min(0, x - (rows[0] as TimeKnot).x) + Math.max(0, x - (rows[rows.length - 1] as TimeKnot).x);
}

/**
 * The standard deviation in ln(time) of each row of a maker's table. Makers round to a quarter or half
 * minute: half a step on six minutes is 2 to 4 %, and two rows enter a ratio.
 */
export const TABLE_ROW_LOG_SD = 0.025;

/** What is unknown of a table beside the rounding of its rows. */
export interface TableUnread {
  /** standard deviation of ln(ratio) for each unit of x between a place and its nearest row */
  readonly perX: number;
  /** the same of a random walk, by the root of that way */
  readonly perRootX: number;
  /** how far apart, in x, the rows are along whose chord the table goes on outside them */
  readonly reach: number;
}

/**
 * The standard deviation of ln(ratio) between two places of a table, its rows with x rising: their rounding,
 * and what is unread. The rounding acts in full from row to row and in proportion over a step shorter than
 * that between the two nearest rows; over what lies between two rows it goes on at the same rate, and outside
 * them at that of the chord along which the table goes on. Prepared once a table: the rows are walked here,
 * not at each place.
 */
export function tableSpread(
  rows: readonly TimeKnot[],
  { perX, perRootX, reach }: TableUnread,
): (a: number, b: number) => number {
  const nearest = rows
    .slice(1)
    .reduce((least, { x }, i) => Math.min(least, x - (rows[i] as TimeKnot).x), Infinity);
  const [before, after] = endWidths(rows, reach);
  const [first, last] = [(rows[0] as TimeKnot).x, (rows.at(-1) as TimeKnot).x];
  const distance = (row: TimeKnot | undefined, x: number): number => (row ? Math.abs(x - row.x) : Infinity);
  const toRow = (x: number): number => {
    const i = firstFrom(rows, x);
    return Math.min(distance(rows[i - 1], x), distance(rows[i], x));
  };
  /** the way before the rows and behind them, each against the width of its chord */
  const outside = (low: number, high: number): readonly [way: number, chords: number] => {
    const early = Math.max(0, Math.min(high, first) - low);
    const late = Math.max(0, high - Math.max(low, last));
    return [early + late, early / before + late / after];
  };
  return (a, b) => {
    const step = Math.abs(a - b);
    const way = toRow(a) + toRow(b);
    const [out, chords] = outside(Math.min(a, b), Math.max(a, b));
    const among = Math.min(step - out, nearest + (way - out)) / nearest;
    return Math.hypot(
      TABLE_ROW_LOG_SD * Math.SQRT2 * (among + chords),
      perX * Math.min(step, way),
      perRootX * Math.sqrt(Math.min(step, way)),
    );
  };
}

/** A table that was checked, sorted along x and curved. */
export interface Table {
  readonly rows: readonly TimeKnot[];
  /** the time at a place, exactly the printed one at a row */
  readonly timeAt: (x: number) => number;
  /** the standard deviation of ln(ratio) between two places */
  readonly spread: (a: number, b: number) => number;
  /** whether a place lies outside the rows */
  readonly outside: (x: number) => boolean;
}

/** Prepares a table. */
export function preparedTable(rows: readonly TimeKnot[], unread: TableUnread): Table {
  return {
    rows,
    timeAt: timeCurve(rows, unread.reach),
    spread: tableSpread(rows, unread),
    outside: (x) => overrun(rows, x) !== 0,
  };
}
