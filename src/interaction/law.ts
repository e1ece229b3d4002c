import { frozen } from "../core/frozen.js";
import { inRange } from "../core/guards.js";
import { checkedOrigin, type LawOrigin } from "../core/term.js";

/**
 * How the activation energy changes with dilution: `perHalvingKJPerMol` for each halving of the
 * concentration, −100 to 100 kJ/mol, with its standard deviation.
 */
export interface InteractionLaw extends LawOrigin {
  /** change of the activation energy for each halving, kJ/mol, −100 to 100 */
  readonly perHalvingKJPerMol: number;
  /** 0 to 100 kJ/mol; 25 when left out */
  readonly sdKJPerMol?: number | undefined;
}

/** The spread of a law that was given without one, kJ/mol: that of the generic law. */
export const GIVEN_INTERACTION_SD_KJ: number = 25;

/**
 * The law taken when none is given: −12 ± 25 kJ/mol for each halving of the concentration.
 *
 * @remarks In print the diluted bath has the lower temperature coefficient. Three pairs of tables, stock and
 * 1+1, are known here. Two were read, of one ascorbate developer on two sizes of one film: −12 and −53 kJ/mol
 * (Eastman Kodak Company, F-32). One, of a borax developer, is from memory: −22 kJ/mol. The spread is their
 * root mean square about −12, 24, rounded up: docs/decisions/priors.md.
 */
export const genericInteractionLaw: InteractionLaw = /* @__PURE__ */ frozen({
  perHalvingKJPerMol: -12,
  sdKJPerMol: GIVEN_INTERACTION_SD_KJ,
  sources: [
    "generic law over three printed pairs of tables, stock and 1+1: -12, -53, and -22 kJ/mol (from memory)",
  ],
  runs: 0,
});

/** Checks a law and returns it. */
export function checkedInteractionLaw(at: string, given: unknown): InteractionLaw {
  const law = checkedOrigin(at, given as InteractionLaw);
  inRange(at, law.perHalvingKJPerMol, -100, 100, "kJPerMol", "/perHalvingKJPerMol");
  inRange(at, law.sdKJPerMol ?? 0, 0, 100, "kJPerMol", "/sdKJPerMol");
  return law;
}
