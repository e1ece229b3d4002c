import { REPEAT_LOG_SD } from "../core/estimate.js";
import type { ValueSaid, WindowSaid } from "./reading.js";
import { windowLikelihood } from "./windowLikelihood.js";

/** What the fit takes a reading for in a round, and what the round says of it. */
export interface Taken {
  /** ln(time) that the row should come to */
  readonly value: number;
  readonly variance: number;
  /** 1, or less for a value that disagrees with the others */
  readonly weight: number;
  /** its share in the estimate of scatter²: on average scatter² itself */
  readonly square: number;
}

/** What the other numbers say of the row: mean and variance, the reading's own share in. */
interface Fitted {
  readonly mean: number;
  readonly variance: number;
}

/** From so many standard deviations on a value is held back: 5 % of sound runs lie beyond. */
const HOLD_FROM = 2;

/** Keeps a quotient finite where a row, or what is known without a window, has no spread or no end to it. */
const LEAST_VARIANCE = 1e-9;

/** The variance that a value counts with, before its weight: no run tells more than a development repeats. */
export function valueVariance(said: ValueSaid, beside: number, scatter: number, stated: boolean): number {
  const variance = (said.sd * scatter) ** 2 + beside;
  return stated ? variance : Math.max(REPEAT_LOG_SD ** 2, variance);
}

/**
 * Weighs a value against the fit: z standard deviations away, z above 2, it weighs 2/z. That is noise which is
 * normal in the middle and has exponential tails; its square counts with the same weight.
 *
 * @remarks P. J. Huber, Ann. Math. Statist. 35, 1964, p. 73.
 */
export function weighValue(
  said: ValueSaid,
  beside: number,
  scatter: number,
  fitted: Fitted,
  taken: Taken,
): Pick<Taken, "weight" | "square"> {
  const square = scatter * scatter;
  const miss = (said.log - fitted.mean) ** 2 / (said.sd ** 2 + beside / square);
  const weight = Math.min(1, (HOLD_FROM * scatter) / Math.sqrt(miss));
  const own = (fitted.variance * square) / (taken.variance * taken.weight);
  return { weight, square: weight * miss + own };
}

/**
 * Takes a window for the value that has the same effect: the mean and variance of the truncated normal, the
 * window's own last share taken out of the fit first. `share` below 1 goes only part of the way.
 *
 * @remarks One site of expectation propagation: T. P. Minka, Expectation propagation for approximate Bayesian
 * inference, Uncertainty in Artificial Intelligence 17, 2001, p. 362 (from memory). A window never has a
 * negative precision, and never tells more than a value with its eye's noise.
 */
export function matchWindow(
  said: WindowSaid,
  beside: number,
  scatter: number,
  fitted: Fitted,
  taken: Taken,
  share: number,
): Taken {
  const variance = Math.max(LEAST_VARIANCE, fitted.variance);
  const others = 1 / Math.max(LEAST_VARIANCE, 1 / variance - 1 / taken.variance);
  const mean = others * (fitted.mean / variance - taken.value / taken.variance);
  const noise = (said.sd * scatter) ** 2 + beside;
  const total = others + noise;
  const { slope, curvature } = windowLikelihood(said.low, said.high, mean, total);
  const now = share / Math.max(noise, 1 / curvature - others);
  const before = (1 - share) / taken.variance;
  return {
    value: (before * taken.value + now * (mean + slope / curvature)) / (before + now),
    variance: 1 / (before + now),
    weight: 1,
    // The mean square of the eye's noise within the window, in units of what was stated.
    square:
      scatter * scatter * ((noise / total) * (1 - total * curvature + total * slope ** 2) + others / total),
  };
}
