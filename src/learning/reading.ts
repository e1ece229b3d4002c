import type { Row, Slope } from "../core/row.js";

/** What an outcome says of ln(right time): a value, with the noise of whoever read it. */
export interface ValueSaid {
  readonly kind: "value";
  readonly log: number;
  /** standard deviation of the noise */
  readonly sd: number;
  /** what is wrong alike in all readings of its kind: a number of 0 ± 1, and how ln(time) moves with it */
  readonly shared?: Slope;
}

/** The standard deviation of the noise of a reading in all: its own, and what it shares. */
export function wholeSd({ sd, shared }: Said): number {
  return shared === undefined ? sd : Math.hypot(sd, shared.slope);
}

/**
 * What an outcome says of ln(right time): that, seen with the noise of an eye, it lies in a window. `log` is
 * where the fit begins to look.
 */
export interface WindowSaid {
  readonly kind: "window";
  readonly low: number;
  readonly high: number;
  readonly log: number;
  /** standard deviation of the eye's noise */
  readonly sd: number;
  /** what is wrong alike in all windows of one eye, as of a value */
  readonly shared?: Slope;
}

/** A value or a window. */
export type Said = ValueSaid | WindowSaid;

/** One reading for the regression: what the row should come to, the prior's own ln(time) taken off. */
export interface Reading {
  readonly row: Row;
  readonly said: Said;
}

/** The same with ln(time) counted from elsewhere. */
export function saidFrom(said: Said, log: number): Said {
  return said.kind === "value"
    ? { ...said, log: said.log - log }
    : { ...said, log: said.log - log, low: said.low - log, high: said.high - log };
}
