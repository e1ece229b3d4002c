import { aboveZero, plainObject, refuse } from "./guards.js";
import { inOrderText, spreadText } from "./text.js";

/*
 * Module: core. From a median and a standard deviation in ln(time) to the 90 % interval.
 */

/**
 * The 95 % point of the standard normal distribution: a central 90 % interval is ± this many standard
 * deviations.
 */
export const Z90: number = 1.6448536269514722;

/** How well a development repeats: 4 % in ln(time), from pouring, clock and thermometer (common practice). */
export const REPEAT_LOG_SD: number = 0.04;

/** More time than this many times the right one shows in a negative (assumed). */
export const SHOWS: number = 1.05;

/** The longest time that an answer may have, s: beyond it, it has no numbers. */
export const LONGEST_ANSWER_S: number = 1e100;

/** The widest spread of ln(time) that an answer may have: beyond it the interval has no numbers. */
export const WIDEST_LOG_SD: number = 100;

/**
 * A development time with its uncertainty: the median and the central 90 % interval, in seconds, unrounded.
 */
export interface TimeEstimate {
  /** the median, s */
  readonly timeS: number;
  /** lower end of the 90 % interval, s */
  readonly lowS: number;
  /** upper end of the 90 % interval, s */
  readonly highS: number;
}

/** Median and central 90 % interval of a lognormal time; `logSd` is the standard deviation of ln(time). */
export function timeEstimate(timeS: number, logSd: number): TimeEstimate {
  const spread = Math.exp(Z90 * logSd);
  return { timeS, lowS: timeS / spread, highS: timeS * spread };
}

/** Returns a spread of ln(time) that leaves an interval with numbers; throws otherwise. */
export function checkedSpread(at: string, logSd: number, field = ""): number {
  if (!(logSd >= 0 && logSd <= WIDEST_LOG_SD))
    refuse(at + field, "spread-at-most", spreadText, { max: WIDEST_LOG_SD }, logSd);
  return logSd;
}

/** Checks a time with its interval: each above 0 to `most` s, in order. */
export function checkedEstimate(at: string, given: unknown, most: number): TimeEstimate {
  const estimate = plainObject(at, given) as unknown as TimeEstimate;
  const timeS = aboveZero(at, estimate.timeS, most, "timeS", "/timeS");
  const lowS = aboveZero(at, estimate.lowS, most, "timeS", "/lowS");
  const highS = aboveZero(at, estimate.highS, most, "timeS", "/highS");
  if (!(lowS <= timeS && timeS <= highS))
    refuse(at, "in-order", inOrderText, { lowS, timeS, highS }, undefined);
  return { timeS, lowS, highS };
}
