import { knownEntry } from "../core/guards.js";
import { handbookDilution, type DilutionFamily } from "../handbook/dilution.js";
import type { PowerDilutionLaw } from "./dilution.js";

/**
 * The published dilution exponent of a developer family, with its spread and source.
 *
 * @param family - `"solvent-stock"` (sulphite-rich, used as stock, 1+1, 1+3), `"ascorbate-stock"`,
 * `"concentrate"` (liquid concentrates from 1+4), `"p-aminophenol"`, `"pyro"` or `"glycin"`
 * @returns a power law with `sd` and `sources`
 * @throws TypeError when `family` is not text
 * @throws RangeError when it is not one of the families; the message lists them
 *
 * @remarks Makers' tables are not all powers: one read table has n = 1.3 from 1+4 to 1+7 and 0.3 from 1+9 to
 * 1+15.
 *
 * @example
 * ```ts
 * handbookDilutionLaw("glycin").exponent // => 1
 * ```
 */
export function handbookDilutionLaw(family: DilutionFamily): PowerDilutionLaw {
  return {
    kind: "power",
    published: true,
    ...knownEntry("handbookDilutionLaw/family", handbookDilution, family),
  };
}
