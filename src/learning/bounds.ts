import type { Scaled } from "./regression.js";

/** The least and greatest value of each number, in first standard deviations from where it began. */
export type Bounds = readonly (readonly [low: number, high: number])[];

/** The numbers within their bounds. */
export interface Held {
  readonly values: readonly number[];
  /** the places of those that are held at a bound */
  readonly atBound: readonly number[];
}

/**
 * The most probable numbers within their bounds: a number outside is held at its bound, as if it had been
 * read there beyond doubt, and the others move with it; one that would come back inside is let go. Always the
 * first in order that is not where it belongs is turned: so no state comes twice, and the search ends. The
 * spreads stay as they were, which errs on the wide side.
 *
 * Source: K. G. Murty, Note on a Bard-type scheme for solving the complementarity problem, Opsearch 11, 1974,
 * p. 123 (from memory).
 */
export function withinBounds({ mean, covariance }: Scaled, bounds: Bounds): Held {
  const at = (values: readonly number[], j: number): number => {
    const [low, high] = bounds[j] as readonly [number, number];
    return Math.min(high, Math.max(low, values[j] as number));
  };
  if (mean.every((value, j) => at(mean, j) === value)) return { values: mean, atBound: [] };
  const held = new Map<number, number>();
  const solved = (without?: number): readonly number[] => {
    const values = [...mean];
    const spread = covariance.map((row) => [...row]);
    for (const [out, bound] of held) if (out !== without) condition(values, spread, out, bound);
    return values.map((value, j) => (j === without ? undefined : held.get(j)) ?? value);
  };
  // The count is for numbers that rounding turns to and fro.
  for (let round = 0; ; round += 1) {
    const turned = bounds.findIndex((_, j) => {
      const free = solved(j);
      return at(free, j) !== (held.get(j) ?? free[j]);
    });
    const values = solved();
    if (turned < 0 || round === 200)
      return { values: values.map((_, j) => at(values, j)), atBound: [...held.keys()] };
    if (!held.delete(turned)) held.set(turned, at(values, turned));
  }
}

/** Brings means and covariances to what they are once one number is known beyond doubt. */
function condition(mean: number[], covariance: number[][], known: number, value: number): void {
  const column = covariance.map((row) => row[known] as number);
  const own = column[known] as number;
  if (!(own > 0)) return;
  const miss = value - (mean[known] as number);
  covariance.forEach((row, i) => {
    const gain = (column[i] as number) / own;
    mean[i] = (mean[i] as number) + gain * miss;
    for (let j = 0; j < row.length; j += 1) row[j] = (row[j] as number) - gain * (column[j] as number);
  });
}
