import { factorOf } from "../core/cause.js";
import { ageEffect, bathAge, checkedAgeLaw, notPast, type AgeLaw } from "./law.js";

/**
 * The factor on development time for the age of a bath.
 *
 * @param fromH - age of the bath when the time was known, 0 to 1e6 h; 0 is a fresh bath
 * @param toH - age of the bath that is asked about, 0 to 1e6 h
 * @param law - the age law; `halfLifeH` or `lifeH` above 0 to 1e6 h, `lowH` above 0 to `lifeH`, `perDay` or
 * `perRootH` from -1 to 1
 * @returns the time under `to` divided by the time under `from`
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is out of range, or a bath is past its life or past ten half-lives, where
 * no time can be given
 *
 * @remarks half-life: 2^((to − from)/halfLife). life: 1 up to and including `lifeH`.
 * speeding: exp(perDay·((to/24)^1.5 − (from/24)^1.5)), each age at most 24 h; slowing: exp(perRootH·(√to −
 * √from)), each at most 25 h; past the hours that either covers an old bath is slower by 0.8 x, x being 8 %
 * for each further day; all are assumptions of this package. Alkaline vitamin C gave
 * full black to 1.5 h, slightly weak at 2 h, none at 2.5 h (Shinkawa Photographic Laboratory, L-ascorbic acid
 * oxidation in alkaline solution, 2015). A keeping limit on a label is a limit, not an
 * activity: it is no half-life.
 *
 * @example
 * ```ts
 * ageFactor(0, 12, { kind: "half-life", halfLifeH: 24 }) // => 1.4142
 * ageFactor(0, 1.5, { kind: "life", lifeH: 1.5 }) // => 1
 * ```
 */
export function ageFactor(fromH: number, toH: number, law: AgeLaw): number {
  const ready = checkedAgeLaw("ageFactor/law", law);
  const from = bathAge("ageFactor/fromH", fromH);
  const to = bathAge("ageFactor/toH", toH);
  notPast("ageFactor/fromH", ready, from);
  notPast("ageFactor/toH", ready, to);
  return factorOf(ageEffect(ready, from, to));
}
