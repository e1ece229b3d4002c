import { sourcesOf } from "../core/term.js";
import { dilutionRatio, type DilutionLaw, type PowerDilutionLaw } from "./dilution.js";
import { fitDilutionLaw } from "./fitDilutionLaw.js";

/**
 * Any dilution law as one exponent, so that it can be learned: a table becomes the power fitted to it, and
 * keeps its sources. Throws when it is no law.
 */
export function asPowerLaw(where: string, law: DilutionLaw): PowerDilutionLaw {
  dilutionRatio(where, law);
  return law.kind === "table" ? { ...fitDilutionLaw(law.rows).law, ...sourcesOf(law) } : law;
}
