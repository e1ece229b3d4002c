import {
  agitationSide,
  checkedAgitationLaw,
  genericAgitationLaw,
  STAND_LOG_SD,
  type Agitation,
  type AgitationLaw,
  type AgitationSide,
} from "./agitation.js";

/**
 * The spread in `staleLoss` of a law that was given without one: about half of the generic law's, 5 % from 30
 * to 60 s; an assumption of this package.
 */
export const GIVEN_LOSS_SD: number = 0.3;

/**
 * The standard deviation of ln(agitationFactor) between two agitations.
 *
 * @param from - agitation that the time is known for
 * @param to - agitation of today's development
 * @param law - the law of agitation; the generic law when left out
 * @returns the standard deviation in ln(time), 0 when both are the same
 * @throws TypeError or RangeError as {@link agitationFactor} does
 *
 * @remarks sd(a)/a·|ln r(from) − ln r(to)|: ln(rate) is known to the share of itself to which the loss is;
 * and sd(a)·|s(from) − s(to)|, s the stale shares of the intervals, for a loss and shape of 0. Between stand
 * and anything else 0.4 more, in quadrature.
 *
 * @example
 * ```ts
 * agitationLogSd({ everyS: 30 }, { everyS: 60 }) // => 0.0910
 * ```
 */
export function agitationLogSd(
  from: Agitation,
  to: Agitation,
  law: AgitationLaw = genericAgitationLaw,
): number {
  checkedAgitationLaw("agitationLogSd", law);
  return spreadOfSides(
    law,
    agitationSide("agitationLogSd/from", from, law),
    agitationSide("agitationLogSd/to", to, law),
  );
}

/** The same for a checked law and its sides. */
export function spreadOfSides(law: AgitationLaw, before: AgitationSide, after: AgitationSide): number {
  return Math.hypot(
    (law.sdStaleLoss ?? GIVEN_LOSS_SD) * (before.slope - after.slope),
    STAND_LOG_SD * (before.stand - after.stand),
  );
}
