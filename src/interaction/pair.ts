/*
 * Temperature and dilution as a pair: in print the diluted bath has the lower temperature coefficient.
 */
import type { Effect } from "../core/cause.js";
import type { AloneLogs, Pair, PairSide } from "../core/pair.js";
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
    return (toC, toLogC, aloneC, aloneLogC) => {
      const step = inverseKelvin(toC) - known;
      const halvings = halvingsOf(fromLogC, toLogC);
      return bounded(perHalving, step, halvings, aloneC, aloneLogC);
    };
  },
  effect: interactionEffect,
};

/**
 * The pair takes away at most this share of what temperature, or dilution, does alone (assumed): more, and a
 * colder or a weaker bath would be the faster one.
 */
const MOST_TAKEN = 0.5;

/** The halvings of the concentration from one ln(concentration) to another. */
function halvingsOf(fromLogC: number, toLogC: number): number {
  return Math.min(FURTHEST, Math.max(-FURTHEST, (fromLogC - toLogC) / Math.LN2));
}

/** The ln(factor) of the pair; `step` is that of 1/T in 1/K. */
function bounded(
  perHalving: number,
  step: number,
  halvings: number,
  aloneC: number,
  aloneLogC: number,
): number {
  const log = perHalving * ((halvings * step) / GAS_CONSTANT_KJ);
  // Colder is slower, and so is weaker: what goes the other way is bounded.
  let most = Infinity;
  if (log * step < 0) most = MOST_TAKEN * Math.max(0, step > 0 ? aloneC : -aloneC);
  if (log * halvings < 0)
    most = Math.min(most, MOST_TAKEN * Math.max(0, halvings > 0 ? aloneLogC : -aloneLogC));
  return log < 0 ? Math.max(-most, log) : Math.min(most, log);
}

/**
 * The effect beside those of the two causes. Its slope and its spread are those of the number, within the
 * bound and past it.
 */
export function interactionEffect(
  law: InteractionLaw,
  from: PairSide<number, number>,
  to: PairSide<number, number>,
  alone?: AloneLogs,
): Effect {
  const step = inverseKelvin(to[0]) - inverseKelvin(from[0]);
  const halvings = halvingsOf(from[1], to[1]);
  const slope = (halvings * step) / GAS_CONSTANT_KJ;
  const sd = law.sdKJPerMol ?? GIVEN_INTERACTION_SD_KJ;
  const log =
    alone === undefined
      ? law.perHalvingKJPerMol * slope
      : bounded(law.perHalvingKJPerMol, step, halvings, alone[0], alone[1]);
  return { log, slope, sd, beside: 0 };
}
