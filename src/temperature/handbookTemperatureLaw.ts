import { knownEntry } from "../core/guards.js";
import { handbookTemperature, type HandbookDeveloper } from "../handbook/temperature.js";
import type { CoefficientLaw } from "./law.js";

/**
 * The published temperature coefficient of a developer, as printed, with its source and a spread.
 *
 * @param developer - the developing agents, for example `"metol-hydroquinone"`
 * @returns a coefficient law with `sdRatio` and `sources`
 * @throws TypeError when `developer` is not text
 * @throws RangeError when it is not one of the known developers; the message lists them
 *
 * @remarks Coefficients differ by developer and by material, so each has a spread of 10 to 24 %. Those whose
 * source says "from memory" were not seen in print. There is none for grocery developers of coffee and
 * vitamin C: nobody printed one.
 *
 * @example
 * ```ts
 * handbookTemperatureLaw("pyro-metol").ratio // => 1.4
 * ```
 */
export function handbookTemperatureLaw(developer: HandbookDeveloper): CoefficientLaw {
  return {
    kind: "coefficient",
    published: true,
    ...knownEntry("handbookTemperatureLaw/developer", handbookTemperature, developer),
  };
}
