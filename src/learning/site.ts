/*
 * A reading as the rounds of a fit see it: what it is taken for, which each round betters. Changed in place,
 * since a notebook has a thousand of them and a fit has a dozen rounds.
 */
import { REPEAT_LOG_SD } from "../core/estimate.js";
import type { Reading, Said, ValueSaid, WindowSaid } from "./reading.js";
import type { SparseRow } from "./sparseRow.js";
import { windowLikelihood } from "./windowLikelihood.js";

/** A reading, its row by position, and what it is taken for. */
export interface Site {
  readonly said: Said;
  /** variance that no parameter of the row explains */
  readonly beside: number;
  readonly row: SparseRow;
  /** ln(time) that the row should come to, and the variance of that */
  value: number;
  variance: number;
  /** 1, or less for a reading that disagrees with the others */
  weight: number;
  /** its share in the estimate of scatter²: on average scatter² itself */
  square: number;
}

/** From so many standard deviations on a value is held back: 5 % of sound runs lie beyond. */
export const HOLD_FROM = 2;

/**
 * The odds of a slip of the pen for a reading two standard deviations off, for each unit of their spread in
 * ln(time): one reading in fifty is one, and lies anywhere within a factor of three (assumed).
 */
const SLIP_ODDS = 0.17;
/** None counts less: what weighs nothing has no end of variance. */
const LEAST_COUNTED = 1e-3;

/** The first guess of a window's own variance, beside its eye's noise. */
const FIRST_WINDOW_SD = 0.1;

/** Keeps a quotient finite where a row, or what is known without a window, has no spread or no end to it. */
const LEAST_VARIANCE = 1e-9;

/** A site before the first round. */
export function siteOf({ said, row: { beside } }: Reading, row: SparseRow): Site {
  const variance = said.sd ** 2 + FIRST_WINDOW_SD ** 2;
  return { said, beside, row, value: said.log, variance, weight: 1, square: 1 };
}

/**
 * Sets the variance that a value counts with in a round: its noise under the present scatter, by its weight.
 * Unless noise is stated, no run tells more than a development repeats.
 */
export function setValueVariance(site: Site, said: ValueSaid, scatter: number, stated: boolean): void {
  const sd = stated ? said.sd : Math.max(REPEAT_LOG_SD, said.sd);
  const variance = (sd * scatter) ** 2 + site.beside;
  site.variance = (stated ? variance : Math.max(REPEAT_LOG_SD ** 2, variance)) / site.weight;
}

/**
 * Weighs a value against the fit: z standard deviations away, z above 2, it weighs 2/z. That is noise which
 * is normal in the middle and has exponential tails; its square counts with the same weight.
 *
 * @param mean - what the fit says of the row, and `variance` of that; the value's own share is in it
 * @param sound - see {@link soundness}; what is no value makes no scatter
 *
 * @remarks P. J. Huber, Ann. Math. Statist. 35, 1964, p. 73.
 */
export function weighValue(
  site: Site,
  said: ValueSaid,
  scatter: number,
  mean: number,
  variance: number,
  sound: number,
): void {
  const square = scatter * scatter;
  // A run that claims more than a development repeats does not scatter more for it.
  const stated = Math.max(REPEAT_LOG_SD, said.sd);
  const miss = (said.log - mean) ** 2 / (stated ** 2 + site.beside / square);
  const weight = Math.min(1, (HOLD_FROM * scatter) / Math.sqrt(miss));
  const shown = weight * miss + (variance * square) / (site.variance * site.weight);
  site.square = sound * shown + (1 - sound) * square;
  site.weight = counted(sound) * weight;
}

/** What is known of a row without one reading. */
interface Without {
  readonly mean: number;
  readonly variance: number;
}

/**
 * What is known of a row without one reading: the reading's last share is taken out of the fit.
 *
 * @param mean - what the fit says of the row, and `variance` of that
 */
export function withoutIt(site: Site, mean: number, variance: number): Without {
  const fitted = Math.max(LEAST_VARIANCE, variance);
  const others = 1 / Math.max(LEAST_VARIANCE, 1 / fitted - 1 / site.variance);
  return { mean: others * (mean / fitted - site.value / site.variance), variance: others };
}

/**
 * The chance that a reading is no slip of the pen, by what the others say of it, the spread of that counted
 * too. A run far out in its conditions draws the fit to itself: it lies near a fit that holds its own share,
 * however wrong it is.
 *
 * @remarks Within two standard deviations 1. Beyond, the noise has exponential tails, and a slip has the same
 * density anywhere.
 */
export function soundness({ said, beside }: Site, scatter: number, without: Without): number {
  const { low, high } = said.kind === "window" ? said : { low: said.log, high: said.log };
  const off = Math.max(0, low - without.mean, without.mean - high);
  const sd = Math.sqrt((Math.max(REPEAT_LOG_SD, said.sd) * scatter) ** 2 + beside + without.variance);
  const beyond = HOLD_FROM * (off / sd - HOLD_FROM);
  return beyond > 0 ? 1 / (1 + SLIP_ODDS * sd * Math.expm1(beyond)) : 1;
}

/**
 * How much a reading counts that is sound with a chance of p: p·(1 − 4(1 − p)), which is what the mean and
 * the variance of both cases together leave of its information where the noise has its exponential tail.
 */
function counted(sound: number): number {
  return Math.max(LEAST_COUNTED, sound * (1 - HOLD_FROM ** 2 * (1 - sound)));
}

/**
 * Holds back a lone reading that lies more than 2 standard deviations from what was known, that of both
 * counted, so far that it lies no farther: nothing else says which of the two is wrong.
 */
export function weighAlone(site: Site, scatter: number, without: Without): void {
  const { said, beside } = site;
  const { low, high } = said.kind === "window" ? said : { low: said.log, high: said.log };
  const off = Math.max(0, low - without.mean, without.mean - high);
  const noise = (Math.max(REPEAT_LOG_SD, said.sd) * scatter) ** 2 + beside;
  const least = (off / HOLD_FROM) ** 2 - without.variance;
  if (least > noise) site.weight = Math.min(site.weight, noise / least);
}

/**
 * Takes a window for the value that has the same effect: the mean and variance of the truncated normal, the
 * window's own last share taken out of the fit first. `share` below 1 goes only part of the way.
 *
 * A window whose eye seems z standard deviations off, z above 2, has 1/weight of the variance, as a value
 * has.
 *
 * @param sound - see {@link soundness}
 *
 * @remarks One site of expectation propagation: T. P. Minka, Expectation propagation for approximate Bayesian
 * inference, Uncertainty in Artificial Intelligence 17, 2001, p. 362 (from memory). A window never has a
 * negative precision, and never tells more than a value with its eye's noise.
 */
export function matchWindow(
  site: Site,
  said: WindowSaid,
  scatter: number,
  share: number,
  { mean: without, variance: others }: Without,
  sound: number,
  stated: boolean,
): void {
  const noise = ((said.sd * scatter) ** 2 + site.beside) / site.weight;
  const total = others + noise;
  const { slope, curvature } = windowLikelihood(said.low, said.high, without, total);
  const now = share / Math.max(noise, 1 / curvature - others);
  const before = (1 - share) / site.variance;
  site.value = (before * site.value + now * (without + slope / curvature)) / (before + now);
  site.variance = 1 / (before + now);
  // The mean square of the eye's noise within the window, in units of what was stated.
  const own = (noise / total) * (1 - total * curvature + total * slope * slope) + others / total;
  site.square = scatter * scatter * (sound * own + 1 - sound);
  site.weight = stated ? 1 : counted(sound) * Math.min(1, HOLD_FROM / Math.sqrt(own / site.weight));
}
