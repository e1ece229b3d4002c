import { isPast, type CautionSeverity } from "../core/caution.js";
import { Z90 } from "../core/estimate.js";

/** An estimated capacity, or a least stock, is good to a factor of 2: one standard deviation (assumed). */
const FACTOR = 2;

/** Up to a few per cent a figure of one or two digits is not passed (assumed). */
const ROUNDING = 1.05;

/** The upper end of the 90 % range of an estimate, as a multiple of it. */
const UPPER: number = FACTOR ** Z90;

/** Several times a figure: beyond all that it can mean. */
export const isFarPast = (ratio: number): boolean => isPast(ratio, UPPER);

/**
 * How grave it is to pass an estimated limit so many times: nothing inside its rounding, a stop beyond the
 * upper end of its 90 % range.
 */
export function pastEstimate(ratio: number): CautionSeverity | undefined {
  if (!isPast(ratio, ROUNDING)) return undefined;
  return isFarPast(ratio) ? "stop" : "warn";
}
