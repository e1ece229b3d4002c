/*
 * Temperature and dilution as a pair: in print the diluted bath has the lower temperature coefficient.
 */
import type { Effect } from "../core/cause.js";
import type { Pair, PairSide } from "../core/pair.js";
import { dilutionCause } from "../dilution/cause.js";
import { temperatureCause } from "../temperature/cause.js";
import { GAS_CONSTANT_KJ, inverseKelvin } from "../temperature/law.js";
import {
  checkedInteractionLaw,
  genericInteractionLaw,
  GIVEN_INTERACTION_SD_KJ,
  type InteractionLaw,
} from "./law.js";

/**
 * Printed pairs of tables are one halving apart. Beyond two the number is held: carried on, it would make a
 * cold bath the faster one.
 */
const FURTHEST = 2;

/**
 * The pair. Its parameter is the change of the activation energy for each halving of the concentration,
 * kJ/mol.
 */
export const interactionPair: Pair<InteractionLaw, number, number, "interaction"> = {
  name: "interaction",
  law: "interaction",
  lawFields: ["perHalvingKJPerMol", "sdKJPerMol"],
  causes: [temperatureCause, dilutionCause],
  generic: genericInteractionLaw,
  check: checkedInteractionLaw,
  logAt: (law, [fromC, fromLogC]) => {
    const known = inverseKelvin(fromC);
    const perHalving = law.perHalvingKJPerMol;
    return (toC, toLogC) => perHalving * slopeOf(known, fromLogC, inverseKelvin(toC), toLogC);
  },
  effect: interactionEffect,
};

/** How ln(time) moves with the number; a side is 1/T in 1/K and ln(concentration). */
function slopeOf(from: number, fromLogC: number, to: number, toLogC: number): number {
  const halvings = Math.min(FURTHEST, Math.max(-FURTHEST, (fromLogC - toLogC) / Math.LN2));
  return (halvings * (to - from)) / GAS_CONSTANT_KJ;
}

/** The effect beside those of the two causes. */
export function interactionEffect(
  law: InteractionLaw,
  from: PairSide<number, number>,
  to: PairSide<number, number>,
): Effect {
  const slope = slopeOf(inverseKelvin(from[0]), from[1], inverseKelvin(to[0]), to[1]);
  const sd = law.sdKJPerMol ?? GIVEN_INTERACTION_SD_KJ;
  return { log: law.perHalvingKJPerMol * slope, slope, sd, beside: 0 };
}
