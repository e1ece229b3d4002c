/*
 * A published table, prepared once: its rows sorted, its curve through them, its spread between any two
 * places.
 */
import { overrun, tableSpread, timeCurve, type TableUnread, type TimeKnot } from "./curve.js";

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
