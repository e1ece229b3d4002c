import type { Row, Unknown } from "../core/row.js";

/**
 * A row by position, in numbers scaled by their first standard deviations; only what is not 0, the positions
 * rising.
 */
export interface SparseRow {
  readonly at: readonly number[];
  readonly slopes: readonly number[];
}

/** Makes the function from rows by name to rows by position. A name that is no unknown's is a bug. */
export function sparseRows(unknowns: readonly Unknown[]): (row: Row) => SparseRow {
  const places = new Map(unknowns.map(({ parameter }, i) => [parameter, i]));
  return (row) => {
    const at: number[] = [];
    const slopes: number[] = [];
    for (const { parameter, slope } of row.slopes) {
      const place = places.get(parameter);
      if (place === undefined) throw new Error(`no unknown is called ${parameter}`);
      const scaled = slope * (unknowns[place] as Unknown).sd;
      if (scaled === 0) continue;
      // Rows mostly come in order; the few that do not are put in their place.
      let i = at.length;
      for (; i > 0 && (at[i - 1] as number) > place; i -= 1) {
        at[i] = at[i - 1] as number;
        slopes[i] = slopes[i - 1] as number;
      }
      at[i] = place;
      slopes[i] = scaled;
    }
    return { at, slopes };
  };
}
