/*
 * Weighted figures over hits: each table counts alike.
 */
import type { Hit } from "./measure.js";

/** The 95 % point of the standard normal distribution. */
const Z90 = 1.6448536269514722;

/** One line of the page. Errors and scores in per cent of time, shares in per cent. */
export interface Summary {
  readonly n: number;
  readonly tables: number;
  readonly median: number;
  readonly p90: number;
  readonly inInterval: number | undefined;
  readonly score: number | undefined;
  readonly crps: number | undefined;
  readonly inRounding: number;
}

/** The weighted quantile of values. */
export function quantileOf(
  values: readonly (readonly [value: number, weight: number])[],
  share: number,
): number {
  const sorted = [...values].sort((a, b) => a[0] - b[0]);
  const wanted = share * sorted.reduce((sum, [, weight]) => sum + weight, 0);
  let sum = 0;
  for (const [value, weight] of sorted) {
    sum += weight;
    if (sum >= wanted * (1 - 1e-9)) return value;
  }
  return NaN;
}

const errorOf = ({ miss }: Hit): number => 100 * Math.abs(Math.expm1(miss));

/** Whether the 90 % interval holds the print. */
export const holds = ({ miss, sd = NaN }: Hit): boolean => Math.abs(miss) <= Z90 * sd;

/**
 * The interval score of a central 90 % interval: its width, and twenty times what lies outside (T. Gneiting and
 * A. E. Raftery, J. Am. Stat. Assoc. 102, 2007, p. 359, eq. 43, from memory).
 */
const scoreOf = ({ miss, sd = NaN }: Hit): number =>
  100 * (2 * Z90 * sd + 20 * Math.max(0, Math.abs(miss) - Z90 * sd));

/** The continuous ranked probability score of a normal distribution (same paper, eq. 20, from memory). */
function crpsOf({ miss, sd = NaN }: Hit): number {
  const z = miss / sd;
  const density = Math.exp(-(z ** 2) / 2) / Math.sqrt(2 * Math.PI);
  return 100 * sd * (z * (2 * cumulative(z) - 1) + 2 * density - 1 / Math.sqrt(Math.PI));
}

/** The standard normal distribution, by its series: exact to 1e-12 within eight standard deviations. */
function cumulative(z: number): number {
  if (Math.abs(z) > 8) return z > 0 ? 1 : 0;
  let term = z;
  let sum = z;
  for (let k = 1; k < 200; k += 1) {
    term *= z ** 2 / (2 * k + 1);
    sum += term;
  }
  return 0.5 + (sum * Math.exp(-(z ** 2) / 2)) / Math.sqrt(2 * Math.PI);
}

/** Sums hits up. */
export function summarise(hits: readonly Hit[]): Summary {
  const total = hits.reduce((sum, { weight }) => sum + weight, 0);
  const mean = (of: (hit: Hit) => number): number =>
    hits.reduce((sum, hit) => sum + hit.weight * of(hit), 0) / total;
  const errors = hits.map((hit) => [errorOf(hit), hit.weight] as const);
  const bare = hits.some(({ sd }) => sd === undefined);
  return {
    n: hits.length,
    tables: new Set(hits.map(({ table }) => table)).size,
    median: quantileOf(errors, 0.5),
    p90: quantileOf(errors, 0.9),
    inInterval: bare ? undefined : mean((hit) => 100 * Number(holds(hit))),
    score: bare ? undefined : mean(scoreOf),
    crps: bare ? undefined : mean(crpsOf),
    inRounding: mean(({ inRounding }) => 100 * Number(inRounding)),
  };
}

/**
 * The median error, in per cent, that rounding alone would leave under a law that is exactly right: known and
 * predicted time each anywhere within half a step of what is printed.
 */
export function roundingFloor(hits: readonly Hit[]): number {
  const steps = Array.from({ length: 20 }, (_, i) => (i + 0.5) / 10 - 1);
  return (
    100 *
    quantileOf(
      hits.flatMap(({ rounding: [known, predicted], weight }) =>
        steps.flatMap((a) => steps.map((b) => [Math.abs(a * known - b * predicted), weight] as const)),
      ),
      0.5,
    )
  );
}
