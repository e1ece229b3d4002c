import {
  agitationInterval,
  checkedAgitationLaw,
  genericAgitationLaw,
  STAND_LOG_SD,
  staleShare,
  type Agitation,
  type AgitationLaw,
} from "./agitation.js";

/** The spread in `staleLoss` of a law that was given without one. */
const GIVEN_LOSS_SD = 0.25;

/**
 * The standard deviation of ln(agitationFactor) between two agitations.
 *
 * @param from - agitation that the time is known for
 * @param to - agitation of today's development
 * @param law - the law of agitation; the generic law when left out
 * @returns the standard deviation in ln(time), 0 when both are the same
 * @throws TypeError or RangeError as {@link agitationFactor} does
 *
 * @remarks sd(a)·|∂ln r/∂a(from) − ∂ln r/∂a(to)|, ∂ln r/∂a = −s/(1 − a s) with s the stale share of the interval; 0.4 more, in
 * quadrature, between stand and anything else.
 *
 * @example
 * ```ts
 * agitationLogSd({ everyS: 30 }, { everyS: 60 }) // => 0.0908
 * ```
 */
export function agitationLogSd(from: Agitation, to: Agitation, law: AgitationLaw = genericAgitationLaw): number {
  const { staleLoss, staleTimeS, sdStaleLoss } = checkedAgitationLaw("agitationLogSd:", law);
  const intervals = [
    agitationInterval("agitationLogSd: from", from),
    agitationInterval("agitationLogSd: to", to),
  ] as const;
  const slope = (intervalS: number | undefined): number => {
    const stale = intervalS === undefined ? 0 : staleShare(intervalS, staleTimeS);
    return stale / (1 - staleLoss * stale);
  };
  const byLaw = (sdStaleLoss ?? GIVEN_LOSS_SD) * Math.abs(slope(intervals[0]) - slope(intervals[1]));
  const oneStands = (intervals[0] === undefined) !== (intervals[1] === undefined);
  return oneStands ? Math.hypot(byLaw, STAND_LOG_SD) : byLaw;
}
