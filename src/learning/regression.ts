import type { Row, Unknown } from "../core/row.js";
import { covarianceOf, meanAlong, posteriorOf, varianceAlong, type Normal } from "./normalEquations.js";
import type { Reading } from "./reading.js";
import {
  HOLD_FROM,
  matchWindow,
  setValueVariance,
  siteOf,
  soundness,
  weighAlone,
  weighValue,
  withoutIt,
  type Site,
} from "./site.js";
import { sparseRows, type SparseRow } from "./sparseRow.js";

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
  /** means and covariances of the unknowns in their order, each by its first standard deviation */
  readonly scaled: Scaled;
  /** how many readings bear on each unknown */
  readonly counts: readonly number[];
  /** what the row of each reading comes to */
  readonly means: readonly number[];
  /** a weight for each reading: 1, or less for a value that disagrees with the others */
  readonly weights: readonly number[];
  /** the variance that each reading counts with */
  readonly variances: readonly number[];
  /** by how much the readings scatter more than they say */
  readonly scatter: number;
}

/** Numbers by their first standard deviations: before the first reading each is 0 ± 1. */
export interface Scaled {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

/** Most notebooks settle in seven to twenty rounds; a few wild runs take forty, two that contradict more. */
const MOST_ROUNDS = 100;
/** A fit has settled when neither the scatter nor a number, by its first spread, moves by more than this. */
const SETTLED = 1e-4;
/**
 * From the fourth round on windows go only part of their way, so that they do not swing, unless the numbers
 * moved by less than half of what they moved in the round before.
 */
const FREE_ROUNDS = 3;
const DAMPED = 0.7;
/** Each round that moves them farther than the one before shortens all ways by this, down to the least. */
const CALMER = 0.8;
const LEAST_CALM = 0.1;

/**
 * How many readings the stated noise is worth: four, an assumption of this package. So well do people know
 * their own scatter. Eight would hold 84 % where four holds 89 %, in a notebook with botched runs.
 */
const SCATTER_READINGS = 4;

/**
 * Where the readings lie so many standard deviations from what was known of an `"open"` number, that of both
 * counted, it was known less well than was said, so badly that they do not lie farther (an assumption of this
 * package): a first run that is far off is as likely right as the guess that it contradicts.
 */
const OPEN_FROM = 1.5;
/** It was known at most so many times less well: farther off, a run is a slip of the pen. */
const MOST_OPEN = 3;
/**
 * The same of a `"free"` number, the slope of a whole table: less than one standard deviation, since a single
 * number tells little of its own variance. Both are chosen (assumed):
 * ten runs then move a table that does not fit.
 */
const FREE_FROM = 0.7;
/** It is known at most so many times less well: then as badly as where no table is given. */
const MOST_FREE = 4;
/** No base time has a wider spread, in ln(time): `baseLogSd` and `logSd` end there. */
export const WIDEST_BASE_LOG_SD = 3;

/**
 * Readings of unknown noise follow Student's t. Of n degrees of freedom it has n/(n − 2) times the variance
 * of the noise that is most likely: so the interval holds the doubt about the scatter too.
 */
const DOUBT = 2;

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
 * Σe²)/(2 + n), e² being what each reading shows of it: its mean under a scaled inverse chi-square prior of
 * four degrees of freedom. It needs a reading: before the first, scatter is 1. The variance
 * of an unknown with tail `"student"` is (sd² + the mean of its square)/2: an inverse-gamma prior with one
 * degree of freedom. Where noise is estimated, that of one with tail `"open"` is (m/1.5)² − v where this is
 * more than sd², up to 9 sd²: m and v are the mean and variance that the readings alone give it. That of one
 * with tail `"free"` is (m/0.7)² − v, up to 16 sd², whatever the noise, but not for a lone reading.
 */
export function fitRegression(
  unknowns: readonly Unknown[],
  readings: readonly Reading[],
  noise: "estimated" | "stated" = "estimated",
): Regression {
  const stated = noise === "stated";
  const lone = readings.length === 1;
  const toSparse = sparseRows(unknowns);
  const sites = readings.map((reading) => siteOf(reading, toSparse(reading.row)));
  let precisions = unknowns.map(() => 1);
  let scatter = 1;
  let before: Normal | undefined;
  const stride = strideTo(sites.length);
  let moved = Infinity;
  let wayBefore = 0;
  let calm = 1;
  for (let round = 1; ; round += 1) {
    for (const site of sites)
      if (site.said.kind === "value") setValueVariance(site, site.said, scatter, stated);
    const normal = posteriorOf(precisions, sites);
    const way = before === undefined ? Infinity : furthest(before, normal);
    const settled = moved < SETTLED && way < SETTLED;
    if (settled || round === MOST_ROUNDS || sites.length === 0)
      return regression(unknowns, toSparse, normal, sites, scatter);
    before = normal;
    precisions = unknowns.map((unknown, i) =>
      precisionBy(unknown, precisions[i] as number, normal, i, unknown.tail === "free" ? lone : stated),
    );
    if (round > FREE_ROUNDS && way > wayBefore) calm = Math.max(LEAST_CALM, calm * CALMER);
    const share = round <= FREE_ROUNDS || way < wayBefore / 2 ? calm : DAMPED * calm;
    wayBefore = way;
    const alone = lone && !stated;
    for (const site of sites) judge(site, normal, scatter, share, stated, alone);
    const shown = Math.sqrt(squaresOf(sites) / (SCATTER_READINGS - DOUBT + sites.length));
    const step = stated ? 0 : calm * stride(Math.log(shown / scatter));
    moved = Math.abs(step);
    scatter *= Math.exp(step);
  }
}

/** A step is lengthened at most so many times, or by a share of the readings, each of which shortens it. */
const LONGEST_STRIDE = 8;
const STRIDE_OF_READINGS = 1 / 20;
/** One so long, in ln, is still on its way: nothing says where it ends. */
const STILL_FAR = 0.2;

/**
 * Lengthens the steps of a number that nears its end by an even share each round, as if it took all the rest
 * at once: Aitken's rule, on the last step that was taken and what it left.
 */
function strideTo(readings: number): (step: number) => number {
  const longest = Math.max(LONGEST_STRIDE, STRIDE_OF_READINGS * readings);
  let taken = 0;
  let last = 0;
  return (step) => {
    // The share of a step that each unit of way took off the next.
    const share = (last - step) / taken;
    // In few digits, so that what engines round differently is not lengthened with it.
    taken =
      step *
      (share > 0 && Math.abs(step) < STILL_FAR ? Math.fround(Math.min(longest, Math.max(1, 1 / share))) : 1);
    last = step;
    return taken;
  };
}

/**
 * What the readings show of scatter², with the stated noise. One that is far off shows no more than three
 * standard deviations of what the others do, and two of less than four readings: what was known may be wrong
 * as well.
 */
function squaresOf(sites: readonly Site[]): number {
  const all = sites.reduce((sum, { square }) => sum + square, SCATTER_READINGS);
  const others = SCATTER_READINGS + sites.length - 1;
  const most = (sites.length < SCATTER_READINGS ? HOLD_FROM : MOST_SHOWN) ** 2;
  return sites.reduce(
    (sum, { square }) => sum + Math.min(square, (most * (all - square)) / others),
    SCATTER_READINGS,
  );
}

/** One reading shows no more than so many standard deviations of what the others do (assumed). */
const MOST_SHOWN = 3;

/** Lets a reading know what the fit of a round says of it. */
function judge(
  site: Site,
  normal: Normal,
  scatter: number,
  share: number,
  stated: boolean,
  alone: boolean,
): void {
  const { said, row } = site;
  const mean = meanAlong(normal.mean, row);
  const variance = varianceAlong(normal, row);
  const without = withoutIt(site, mean, variance);
  // Nothing says whether a lone reading or the known time is the slip.
  const sound = stated || alone ? 1 : soundness(site, scatter, without);
  if (said.kind === "window") matchWindow(site, said, scatter, share, without, sound, stated);
  else if (!stated) weighValue(site, said, scatter, mean, variance, sound);
  if (alone) weighAlone(site, scatter, without);
}

/**
 * How well a number is known before the first reading: as stated, but for two kinds. Where what the readings
 * say of an `"open"` or `"free"` one is too far from what was known, this is taken to be known so badly that
 * it is not, unless it is `kept`.
 */
function precisionBy(
  { tail, sd }: Unknown,
  before: number,
  normal: Normal,
  i: number,
  kept: boolean,
): number {
  if (tail === "student") return 2 / (1 + square(normal, i));
  if (tail === undefined || kept) return 1;
  const whole = 1 / (normal.covariance[i * normal.mean.length + i] as number);
  const read = whole - before;
  if (!(read > 0)) return 1;
  const mean = ((normal.mean[i] as number) * whole) / read;
  const [from, most] =
    tail === "free" ? [FREE_FROM, MOST_FREE] : [OPEN_FROM, Math.min(MOST_OPEN, WIDEST_BASE_LOG_SD / sd)];
  return 1 / Math.max(1, Math.min(most * most, (mean / from) ** 2 - 1 / read));
}

/** By how much the mean of any number has moved. */
function furthest(before: Normal, { mean }: Normal): number {
  let most = 0;
  for (let i = 0; i < mean.length; i += 1)
    most = Math.max(most, Math.abs((mean[i] as number) - (before.mean[i] as number)));
  return most;
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
    mean: (parameter) => meanAlong(normal.mean, own(parameter)),
    sd: (parameter) => Math.sqrt(varianceAlong(normal, own(parameter))),
    along(row) {
      const sparse = toSparse(row);
      return { mean: meanAlong(normal.mean, sparse), variance: varianceAlong(normal, sparse) };
    },
    covariance: (a, b) => covarianceOf(normal.covariance, unknowns.length, toSparse(a), toSparse(b)),
    scaled: scaledOf(normal),
    counts: countsOf(unknowns.length, sites),
    means: sites.map(({ row }) => meanAlong(normal.mean, row)),
    weights: sites.map(({ weight }) => weight),
    variances: sites.map(({ variance }) => variance),
    scatter,
  };
}

function countsOf(size: number, sites: readonly Site[]): readonly number[] {
  const counts = new Array<number>(size).fill(0);
  for (const { row } of sites) for (const place of row.at) counts[place] = (counts[place] as number) + 1;
  return counts;
}

function scaledOf({ mean, covariance }: Normal): Scaled {
  const size = mean.length;
  return {
    mean: [...mean],
    covariance: Array.from({ length: size }, (_, i) => [...covariance.subarray(i * size, (i + 1) * size)]),
  };
}
