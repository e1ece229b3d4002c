import { arrayOf, plainObject, positive } from "../core/guards.js";
import { checkedFactor } from "./appearance.js";

/** One developer of a mixture. */
export interface AppearancePart {
  /** its own factor, 1 to 1000 */
  readonly factor: number;
  /** how many parts of it there are, above 0 to 1e6 */
  readonly parts: number;
}

/**
 * The factor of a mixture of developers: the mean of their factors, weighted by parts.
 *
 * @param mixture - one or more developers with their factors and parts
 * @returns the factor of the mixture
 * @throws TypeError or RangeError when a field is of the wrong kind or out of range
 *
 * @remarks B. E. Jones (ed.), Cassell's Cyclopaedia of Photography, London, 1911, Factorial development: pyro
 * 6 and metol 30 make 18 in equal parts and 14 as four parts and two. A rule of thumb: agents that help each
 * other, as metol and hydroquinone do, do not keep to it.
 *
 * @example
 * ```ts
 * mixedAppearanceFactor([{ factor: 6, parts: 4 }, { factor: 30, parts: 2 }]) // => 14
 * ```
 */
export function mixedAppearanceFactor(mixture: readonly AppearancePart[]): number {
  let weighted = 0;
  let all = 0;
  arrayOf("mixedAppearanceFactor/mixture", mixture, 1).forEach((part, i) => {
    const where = `mixedAppearanceFactor/mixture/${i}`;
    const { factor, parts } = plainObject(where, part);
    const share = positive(where, parts, 1e6, undefined, "/parts");
    weighted += share * checkedFactor(where, factor, "/factor");
    all += share;
  });
  return weighted / all;
}
