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
  /** 0 to 100 kJ/mol; 20 when left out */
  readonly sdKJPerMol?: number | undefined;
}

/** The spread of a law that was given without one, kJ/mol: that of the generic law. */
export const GIVEN_INTERACTION_SD_KJ: number = 20;

/**
 * The law taken when none is given: −12 ± 20 kJ/mol for each halving of the concentration.
 *
 * @remarks In print the diluted bath has the lower temperature coefficient. Two pairs of tables, stock and
 * 1+1, are known here: −12 kJ/mol (read in print) and −24 kJ/mol (from memory). Two pairs leave much open, so
 * the spread is wide.
 */
export const genericInteractionLaw: InteractionLaw = /* @__PURE__ */ frozen({
  perHalvingKJPerMol: -12,
  sdKJPerMol: GIVEN_INTERACTION_SD_KJ,
  sources: ["generic law over two printed pairs of tables, stock and 1+1: -12 kJ/mol, and -24 (from memory)"],
  runs: 0,
});

/** Checks a law and returns it. */
export function checkedInteractionLaw(at: string, given: unknown): InteractionLaw {
  const law = checkedOrigin(at, given as InteractionLaw);
  inRange(at, law.perHalvingKJPerMol, -100, 100, "kJPerMol", "/perHalvingKJPerMol");
  inRange(at, law.sdKJPerMol ?? 0, 0, 100, "kJPerMol", "/sdKJPerMol");
  return law;
}
