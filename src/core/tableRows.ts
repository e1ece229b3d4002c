/*
 * Module: core. The rows of a published table, of temperatures and of dilutions alike: places along which the
 * time must not fall.
 */
import type { TimeKnot } from "./table.js";
import { arrayOf, plainObject, positive, refuse } from "./guards.js";
import { rowsSlowerText } from "./text.js";

/** How the rows of a table are placed. */
export interface Placing {
  /** the field that places a row */
  readonly by: "temperatureC" | "dilution";
  /** the place of a row, from that field */
  readonly x: (where: string, value: unknown) => number;
  /** how fast ln(time) may grow along x; not at all may it fall */
  readonly steepest: number;
}

/**
 * The rows of a table, checked, with their places, sorted along x.
 *
 * @throws TypeError when the rows or a field are of the wrong kind
 * @throws RangeError when there are fewer than two, a time is out of range, two rows have one place, or
 * the time falls or rises too fast along x
 */
export function tableRows(where: string, rows: unknown, { by, x, steepest }: Placing): readonly TimeKnot[] {
  const sorted = arrayOf(`${where}/rows`, rows, 2)
    .map((row, i) => {
      const at = `${where}/rows/${i}`;
      const { [by]: value, timeS, stepS } = plainObject(at, row);
      const knot = { value, x: x(`${at}/${by}`, value), timeS: positive(`${at}/timeS`, timeS, 1e7, "timeS") };
      return stepS === undefined ? knot : { ...knot, stepS: positive(`${at}/stepS`, stepS, 1e7, "timeS") };
    })
    .sort((a, b) => a.x - b.x);
  sorted.reduce((a, b) => {
    const step = b.x - a.x;
    const rise = Math.log(b.timeS / a.timeS);
    // Nearer than this, their places on the curve would round to one.
    const same = step < 1e-9;
    if (same || rise < 0 || rise > steepest * step) {
      const two = [a, b].map(({ value, timeS }) => ({ at: value, timeS }));
      refuse(`${where}/rows`, "rows-slower", rowsSlowerText, { by, rows: two }, undefined);
    }
    return b;
  });
  return sorted;
}
