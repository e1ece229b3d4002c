import { frozen } from "../core/frozen.js";
import { inRange } from "../core/guards.js";
import { checkedOrigin, type LawOrigin } from "../core/term.js";

/**
 * How the activation energy changes with dilution: `perHalvingKJPerMol` for each halving of the
 * concentration, −100 to 100 kJ/mol, with its standard deviation.
 */
export interface InteractionLaw extends LawOrigin {
  readonly perHalvingKJPerMol: number;
  /** 0 to 100 kJ/mol; 20 when left out */
  readonly sdKJPerMol?: number | undefined;
}

/** The spread of a law that was given without one, kJ/mol: that of the generic law. */
export const GIVEN_INTERACTION_SD_KJ: number = 20;

/**
 * The law taken when none is given: −12 ± 20 kJ/mol for each halving of the concentration.
 *
 * @remarks In print the diluted bath has the lower temperature coefficient: the three pairs of tables, stock
 * and 1+1, that this package is checked with give −12, −22 and −53 kJ/mol. Beyond two halvings the change is
 * held.
 */
export const genericInteractionLaw: InteractionLaw = /* @__PURE__ */ frozen({
  perHalvingKJPerMol: -12,
  sdKJPerMol: GIVEN_INTERACTION_SD_KJ,
  sources: ["generic law over printed pairs of tables, stock and 1+1: -12, -22 and -53 kJ/mol"],
});

/** Checks a law and returns it. */
export function checkedInteractionLaw(at: string, given: unknown): InteractionLaw {
  const law = checkedOrigin(at, given as InteractionLaw);
  inRange(at, law.perHalvingKJPerMol, -100, 100, "kJPerMol", "/perHalvingKJPerMol");
  inRange(at, law.sdKJPerMol ?? 0, 0, 100, "kJPerMol", "/sdKJPerMol");
  return law;
}
