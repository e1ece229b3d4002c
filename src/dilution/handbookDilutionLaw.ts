import { knownEntry } from "../core/guards.js";
import type { Seen } from "../core/term.js";
import { handbookDilution, type DilutionFamily } from "../handbook/dilution.js";
import type { PowerDilutionLaw } from "./dilution.js";

/** A dilution law of the handbook. */
export type HandbookDilutionLaw = PowerDilutionLaw & {
  /** standard deviation of the exponent */
  readonly sd: number;
  /** how the figure was seen */
  readonly seen: Seen;
};

/**
 * The published dilution exponent of a developer family, with its spread and source.
 *
 * @param family - `"solvent-stock"` (sulphite-rich, used as stock, 1+1, 1+3), `"ascorbate-stock"`,
 * `"concentrate"` (liquid concentrates from 1+4), `"p-aminophenol"`, `"pyro"` or `"glycin"`
 * @returns a power law with `sd`, `sources`, and `seen`: whether its figures were read in print
 * @throws TypeError when `family` is not text
 * @throws RangeError when it is not one of the families; the message lists them
 *
 * @remarks The class of a developer is also the best prior of a fit: `fitDilutionLaw(rows, { prior })`.
 * Beside its spread every dilution law has the departure from a power: one read table has n = 1.3 from 1+4 to
 * 1+7 and 0.3 from 1+9 to 1+15. The figures: docs/decisions/priors.md.
 *
 * @example
 * ```ts
 * handbookDilutionLaw("glycin").exponent // => 1
 * ```
 */
export function handbookDilutionLaw(family: DilutionFamily): HandbookDilutionLaw {
  const entry = knownEntry("handbookDilutionLaw/family", handbookDilution, family);
  return entry.seen === "read" ? { kind: "power", published: true, ...entry } : { kind: "power", ...entry };
}
