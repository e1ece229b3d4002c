import { factorOf } from "../core/cause.js";
import { checkedAgitationLaw, genericAgitationLaw, type Agitation, type AgitationLaw } from "./agitation.js";
import { agitationEffect, readInterval } from "./cause.js";

/**
 * The factor by which development time changes with agitation: time under `to` divided by time under `from`.
 *
 * @param from - agitation that the time is known for: `"continuous"`, `"stand"` or `{ everyS }`, above 0 to
 * 3600 s
 * @param to - agitation of today's development
 * @param law - the law of agitation; the generic law when left out
 * @returns the time factor, dimensionless, above 0: above 1 when `to` moves the bath less, among intervals
 * and continuous agitation always, and to stand as long as the law leaves the interval a rate above stand's
 * 0.29, as the generic law does over the three minutes that it serves
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when an agitation or the law is out of range
 *
 * @remarks Mean rate over one interval: r = 1 − a(1 − (1 − e^−x)/x), x = interval/τ, 1 when continuous; with
 * `shape` b that of the loss b, to the power a/b. The factor is r(from)/r(to). It serves up to about three
 * minutes between agitations. Stand is a mode of its own with a handbook rate of 0.29 of continuous, known to
 * about 40 % only; no interval is slower than stand. The vigour of each agitation is not in the model. The
 * form is this package's own; its numbers are set against common practice (see {@link genericAgitationLaw}).
 *
 * @example
 * ```ts
 * agitationFactor({ everyS: 30 }, { everyS: 60 }) // => 1.1330
 * agitationFactor({ everyS: 180 }, "stand") // => 1.842
 * agitationFactor({ everyS: 300 }, "stand", { staleLoss: 0.95, staleTimeS: 75 }) // => 1
 * ```
 */
export function agitationFactor(
  from: Agitation,
  to: Agitation,
  law: AgitationLaw = genericAgitationLaw,
): number {
  const ready = checkedAgitationLaw("agitationFactor/law", law);
  const fromS = readInterval("agitationFactor/from", from);
  const toS = readInterval("agitationFactor/to", to);
  return factorOf(agitationEffect(ready, fromS, toS));
}
