import { onlyFields } from "../core/onlyFields.js";
import { checkedAppearance, checkedFactor } from "./appearance.js";

/**
 * The whole time of development from the time of appearance and the developer's factor.
 *
 * @param seen - `appearanceS`, above 0 to 1e5 s, and `factor`, 1 to 1000
 * @returns the whole time from pouring in, s
 * @throws TypeError or RangeError when a field is of the wrong kind or out of range
 *
 * @remarks total = factor × time of appearance: B. E. Jones (ed.), Cassell's Cyclopaedia of Photography,
 * London, 1911, Factorial development (9 s and factor 15 make 135 s). For the interval, {@link
 * appearanceEstimate}.
 *
 * @example
 * ```ts
 * timeFromAppearance({ appearanceS: 9, factor: 15 }) // => 135
 * ```
 */
export function timeFromAppearance(seen: { readonly appearanceS: number; readonly factor: number }): number {
  onlyFields("timeFromAppearance/seen", seen, ["appearanceS", "factor"]);
  return (
    checkedAppearance("timeFromAppearance/seen", seen.appearanceS) *
    checkedFactor("timeFromAppearance/seen", seen.factor)
  );
}
