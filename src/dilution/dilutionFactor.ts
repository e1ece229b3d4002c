import { factorOf } from "../core/cause.js";
import { dilutionCause, dilutionEffect } from "./cause.js";
import { checkedDilutionLaw, type Dilution, type DilutionLaw } from "./dilution.js";
import { genericDilutionLaw } from "./genericDilutionLaw.js";

/**
 * The factor by which development time changes with dilution: time with `to` divided by time with `from`.
 *
 * @param from - dilution that the time is known for, as text (`"1+9"`) or parts
 * @param to - dilution of today's bath
 * @param law - the dilution law; the wide generic law when left out
 * @returns the time factor, dimensionless, above 0: above 1 when `to` is the weaker
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a dilution or the law is out of range, or a colon is ambiguous
 *
 * @remarks Power law: (c_from/c_to)^n, c the share of stock in the bath. Table: the ratio of its own times,
 * exact at its rows, a monotone cubic of ln t in ln c between them, straight on outside. Some developers
 * follow no power: then use the maker's table. The whole bath is diluted, so alkali and bromide fall with the
 * agent. L. P. Clerc, Photography: Theory and Practice, c. 1937, sec. 341 (n = 1 for glycin).
 *
 * @example
 * ```ts
 * dilutionFactor("1+1", "1+3", { kind: "power", exponent: 1 }) // => 2
 * ```
 */
export function dilutionFactor(
  from: Dilution | string,
  to: Dilution | string,
  law: DilutionLaw = genericDilutionLaw,
): number {
  const ready = checkedDilutionLaw("dilutionFactor/law", law);
  const fromLogC = dilutionCause.read("dilutionFactor/from", from);
  const toLogC = dilutionCause.read("dilutionFactor/to", to);
  return factorOf(dilutionEffect(ready, fromLogC, toLogC));
}
