import type { Row, Slope } from "../core/row.js";

/**
 * No outcome is read better than this, a tenth of a per cent of time. An assumption of this package, far
 * below what a careful clock and thermometer leave.
 */
export const LEAST_LOG_SD = 1e-3;

/** What an outcome says of ln(right time): a value, with the noise of whoever read it. */
export interface ValueSaid {
  readonly kind: "value";
  readonly log: number;
  /** standard deviation of the noise */
  readonly sd: number;
  /** what is wrong alike in all readings of its kind: a number of 0 ± 1, and how ln(time) moves with it */
  readonly shared?: Slope;
  /** where the slope of that is a share of the correction */
  readonly grows?: Growing;
}

/** A share of the correction ln(right time/time given); `given` is ln of the time given. */
export interface Growing {
  readonly share: number;
  readonly given: number;
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
  if (said.kind === "value") {
    const { grows } = said;
    return {
      ...said,
      log: said.log - log,
      ...(grows && { grows: { ...grows, given: grows.given - log } }),
    };
  }
  return { ...said, log: said.log - log, low: said.low - log, high: said.high - log };
}

/** A reading whose shared part grows with the correction, for a first fit: all is its own noise. */
export function unshared<R extends Reading>(reading: R): R {
  return sharingOf(reading, () => 0);
}

/**
 * The same with the part that belongs to the correction that a fit has found, `mean`: the measured one has
 * the reading's noise in it, which the shared number would take for its own.
 */
export function sharedBy<R extends Reading>(reading: R, mean: number): R {
  return sharingOf(reading, ({ share, given }) => share * (mean - given));
}

/** Of a part that grows, the slope that is asked for; the reading is as well known in all. */
function sharingOf<R extends Reading>(reading: R, slopeOf: (grows: Growing) => number): R {
  const { said, row } = reading;
  if (said.kind === "window" || said.grows === undefined) return reading;
  const whole = wholeSd(said);
  const slope = Math.max(-whole, Math.min(whole, slopeOf(said.grows)));
  const sd = Math.max(LEAST_LOG_SD, Math.sqrt(whole * whole - slope * slope));
  return { ...reading, said: { ...said, sd }, row: withShared(row, said, slope) };
}

/** A correction moves by at least this share of what is read: less is no growth (assumed). */
const LEAST_GROWN = 0.3;

/**
 * The same where many readings tell the shared number: `grown` is what the last fit makes of it, `mean` what
 * it makes of the row without it.
 *
 * @remarks What is read is (1 + share·number)·(mean − given), a product of two that are learned. It is made
 * straight where the last fit has them, as Gauss and Newton do; the noise is the reading's own.
 */
export function grownBy<R extends Reading>(reading: R, mean: number, grown: number): R {
  const { said, row } = reading;
  if (said.kind === "window" || said.grows === undefined) return reading;
  const { share, given } = said.grows;
  const shift = mean - given;
  const growth = Math.max(LEAST_GROWN, 1 + share * grown);
  const log = given + (said.log - given + (growth - 1) * shift) / growth;
  const sd = Math.max(LEAST_LOG_SD, said.sd / growth);
  return { ...reading, said: { ...said, log, sd }, row: withShared(row, said, (share * shift) / growth) };
}

/** A row with another slope of what its reading shares. */
function withShared(row: Row, { shared }: ValueSaid, slope: number): Row {
  return {
    ...row,
    slopes: row.slopes.map((one) => (one.parameter === shared?.parameter ? { ...one, slope } : one)),
  };
}
