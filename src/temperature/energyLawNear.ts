import { sourcesOf } from "../core/term.js";
import { asArrheniusLaw } from "./asArrheniusLaw.js";
import { lawSlope, type ArrheniusLaw, type TemperatureLaw } from "./law.js";

/**
 * Any temperature law as one activation energy, so that it can be learned: a coefficient or a table becomes
 * the Arrhenius law that agrees with it 5 °C either side of `baseC`, 0 to 100 °C, and keeps its sources.
 * Throws when the law is none.
 */
export function energyLawNear(where: string, law: TemperatureLaw, baseC: number): ArrheniusLaw {
  lawSlope(where, law);
  if (law.kind === "arrhenius") return law;
  return { ...asArrheniusLaw(law, Math.max(0, baseC - 5), Math.min(100, baseC + 5)), ...sourcesOf(law) };
}
