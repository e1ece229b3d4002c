import { knownEntry } from "../core/guards.js";
import { handbookUse, type HandbookUse, type UseDeveloper } from "../handbook/use.js";

/**
 * The published use rule of a developer, with its capacity, spread and source.
 *
 * @param developer - for example `"metol-hydroquinone-borax"`
 * @returns a use law with `capacityCm2PerL`, `dilution`, `sdIncrease`, `sources` and `seen`
 * @throws TypeError when `developer` is not text
 * @throws RangeError when no rule is known for it; the message lists those that are
 *
 * @remarks All these rules are from memory, which `seen` says. Each is therefore at least as wide as
 * {@link genericUseLaw}: its spread is half its increase, or 4 % a roll where that is more.
 *
 * @example
 * ```ts
 * handbookUseLaw("phenidone-ascorbate").increase // => 0.03
 * handbookUseLaw("phenidone-ascorbate").seen // => "from-memory"
 * ```
 */
export function handbookUseLaw(developer: UseDeveloper): HandbookUse {
  return knownEntry("handbookUseLaw/developer", handbookUse, developer);
}
