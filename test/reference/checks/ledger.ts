/*
 * The ledger: which row of which record was checked, and by how many assertions. The last
 * test of figures.test.ts reads it, so that no row can be typed in and forgotten.
 */
import { expect } from "vitest";
import type { Published } from "../published.js";

const done = new Map<string, number[]>();

/** Runs a check for every row of a record and counts the assertions that each row got. */
export function eachRow<Row>(record: Published<Row>, check: (row: Row, index: number) => void): void {
  const counts = done.get(record.id) ?? record.rows.map(() => 0);
  done.set(record.id, counts);
  record.rows.forEach((row, i) => {
    const before = expect.getState().assertionCalls;
    check(row, i);
    counts[i] = (counts[i] ?? 0) + expect.getState().assertionCalls - before;
  });
}

/** The assertions made so far for each row of a record; empty where no check ran. */
export function assertionsOf(id: string): readonly number[] {
  return done.get(id) ?? [];
}
