import type { Row, Unknown } from "../core/row.js";
import { alongRow, covarianceOf, posteriorOf, type Normal } from "./normalEquations.js";
import type { Reading } from "./reading.js";
import { sparseRows, type SparseRow } from "./sparseRow.js";
import { matchWindow, valueVariance, weighValue, type Taken } from "./weighReading.js";

/** What a fit gives. Everything is asked for by name or by row. */
export interface Regression {
  /** the mean of an unknown */
  mean(parameter: string): number;
  /** the standard deviation of an unknown */
  sd(parameter: string): number;
  /** what a row comes to, and its variance; what lies beside the row is the caller's */
  along(row: Row): { readonly mean: number; readonly variance: number };
  /** the covariance of what two rows come to */
  covariance(a: Row, b: Row): number;
  /** a weight for each reading: 1, or less for a value that disagrees with the others */
  readonly weights: readonly number[];
  /** the variance that each reading counts with */
  readonly variances: readonly number[];
  /** by how much the readings scatter more than they say */
  readonly scatter: number;
}

/** More rounds move nothing that matters; damped from the fourth on. */
const ROUNDS = 8;
const FREE_ROUNDS = 3;
const DAMPED = 0.7;

/**
 * How many readings the stated noise is worth: four, which leaves about 30 % in a standard deviation. So well
 * do people know their own scatter; an assumption of this package. Eight would leave a notebook with botched
 * runs at 84 % where four holds 86 %, and makes no interval narrower.
 */
const SCATTER_READINGS = 4;

/** The first guess of a window's own variance, beside its eye's noise. */
const FIRST_WINDOW_SD = 0.1;

/** A reading by position, and what it is taken for. */
interface Site {
  readonly reading: Reading;
  readonly row: SparseRow;
  taken: Taken;
}

/**
 * Fits unknowns to readings that are values or windows. Weights of outliers, the scatter of the readings and
 * the windows are found in the same rounds.
 *
 * @param unknowns - normal about 0 before the first reading
 * @param readings - what rows of them should come to
 * @param noise - `"estimated"`: the readings' scatter is estimated and outliers count for less; `"stated"`:
 * each reading's own noise is taken at its word
 *
 * @remarks Bayesian linear regression in each round, exact for values of stated noise. scatter² = (4 +
 * Σe²)/(4 + n), e² being what each reading shows of it: the mean of an inverse-gamma posterior. The variance of an unknown with tail `"student"` is
 * (sd² + the mean of its square)/2: an inverse-gamma prior with one degree of freedom.
 */
export function fitRegression(
  unknowns: readonly Unknown[],
  readings: readonly Reading[],
  noise: "estimated" | "stated" = "estimated",
): Regression {
  const stated = noise === "stated";
  const toSparse = sparseRows(unknowns);
  const sites = readings.map((reading): Site => {
    const { said } = reading;
    const variance = Math.hypot(said.sd, FIRST_WINDOW_SD) ** 2;
    return {
      reading,
      row: toSparse(reading.row),
      taken: { value: said.log, variance, weight: 1, square: 1 },
    };
  });
  const tails = unknowns.map(({ tail }) => (tail === "student" ? 1 : 0));
  let spreads = unknowns.map(() => 1);
  let scatter = 1;
  for (let round = 1; ; round += 1) {
    for (const site of sites) takeValue(site, scatter, stated);
    const normal = posteriorOf(
      spreads.map((variance) => 1 / variance),
      sites.map(({ row, taken }) => ({ row, value: taken.value, precision: 1 / taken.variance })),
    );
    if (round === ROUNDS || sites.length === 0) return regression(unknowns, toSparse, normal, sites, scatter);
    spreads = spreads.map((_, i) => (tails[i] === 1 ? (1 + square(normal, i)) / 2 : 1));
    const share = round <= FREE_ROUNDS ? 1 : DAMPED;
    let squares = SCATTER_READINGS;
    for (const site of sites) {
      judge(site, normal, scatter, share, stated);
      squares += site.taken.square;
    }
    if (!stated) scatter = Math.sqrt(squares / (SCATTER_READINGS + sites.length));
  }
}

/** A value counts with its noise under the present scatter and weight; a window is matched after each round. */
function takeValue(site: Site, scatter: number, stated: boolean): void {
  const { said, row } = site.reading;
  if (said.kind === "window") return;
  const { taken } = site;
  site.taken = { ...taken, variance: valueVariance(said, row.beside, scatter, stated) / taken.weight };
}

/** What the fit of a round says of a reading. */
function judge(site: Site, normal: Normal, scatter: number, share: number, stated: boolean): void {
  const { reading, taken } = site;
  const { said, row } = reading;
  const fitted = alongRow(normal, site.row);
  if (said.kind === "window") site.taken = matchWindow(said, row.beside, scatter, fitted, taken, share);
  else if (!stated) site.taken = { ...taken, ...weighValue(said, row.beside, scatter, fitted, taken) };
}

/** The mean of a scaled number's square. */
function square({ mean, covariance }: Normal, i: number): number {
  return (mean[i] as number) ** 2 + (covariance[i * mean.length + i] as number);
}

function regression(
  unknowns: readonly Unknown[],
  toSparse: (row: Row) => SparseRow,
  normal: Normal,
  sites: readonly Site[],
  scatter: number,
): Regression {
  const own = (parameter: string): SparseRow => toSparse({ slopes: [{ parameter, slope: 1 }], beside: 0 });
  return {
    mean: (parameter) => alongRow(normal, own(parameter)).mean,
    sd: (parameter) => Math.sqrt(alongRow(normal, own(parameter)).variance),
    along: (row) => alongRow(normal, toSparse(row)),
    covariance: (a, b) => covarianceOf(normal.covariance, unknowns.length, toSparse(a), toSparse(b)),
    weights: sites.map(({ taken }) => taken.weight),
    variances: sites.map(({ taken }) => taken.variance),
    scatter,
  };
}
