/*
 * A published table, prepared once: its rows sorted, its curve through them, its spread between any two
 * places.
 */
import { overrun, tableSpread, timeCurve, type TimeKnot } from "./curve.js";

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

/**
 * Prepares a table; `perX` is the spread for each unit of x that lies between a place and its nearest row.
 */
export function preparedTable(rows: readonly TimeKnot[], perX: number, perRootX = 0): Table {
  return {
    rows,
    timeAt: timeCurve(rows),
    spread: tableSpread(rows, perX, perRootX),
    outside: (x) => overrun(rows, x) !== 0,
  };
}
