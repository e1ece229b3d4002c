import { knownEntry } from "../core/guards.js";
import { handbookUse, type HandbookUse, type UseDeveloper } from "../handbook/use.js";

/**
 * The published use rule of a developer, as printed, with its capacity and source.
 *
 * @param developer - for example `"metol-hydroquinone-borax"`
 * @returns a use law with `capacityCm2PerL` and `sources`
 * @throws TypeError when `developer` is not text
 * @throws RangeError when no rule is known for it; the message lists those that are
 *
 * @example
 * ```ts
 * handbookUseLaw("phenidone-ascorbate").increase // => 0.03
 * ```
 */
export function handbookUseLaw(developer: UseDeveloper): HandbookUse & { readonly published: true } {
  return { published: true, ...knownEntry("handbookUseLaw/developer", handbookUse, developer) };
}
