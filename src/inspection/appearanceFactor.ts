import { positive } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { checkedAppearance, checkedFactor } from "./appearance.js";

/**
 * The factor of a developer, from one good development: the whole time over the time of appearance.
 *
 * @param times - `appearanceS`, when the first high lights showed, above 0 to 1e5 s, and `totalS`, the whole
 * time, from it to 1000 times it
 * @returns the factor, 1 or more
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range, or the total is shorter than the appearance
 *
 * @remarks Both times count from pouring in. The factor is that of a formula: temperature and, for most
 * agents, dilution move both times alike (E. J. Wall, The Dictionary of Photography, London, c. 1902, Time,
 * Development by, after A. Watkins, 1901). For pyro and amidol it falls as strength rises. A German handbook
 * reads the product as the time still to go after appearance; here it is the whole time.
 *
 * @example
 * ```ts
 * appearanceFactor({ appearanceS: 20, totalS: 240 }) // => 12
 * ```
 */
export function appearanceFactor(times: { readonly appearanceS: number; readonly totalS: number }): number {
  onlyFields("appearanceFactor/times", times, ["appearanceS", "totalS"]);
  const appearanceS = checkedAppearance("appearanceFactor/times", times.appearanceS);
  const totalS = positive("appearanceFactor/times/totalS", times.totalS, 1e7, "timeS");
  return checkedFactor("appearanceFactor/times", totalS / appearanceS, "");
}
