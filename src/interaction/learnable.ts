/*
 * Learning's half of the pair of temperature and dilution: one number.
 */
import type { Learnable } from "../core/cause.js";
import type { PairSide } from "../core/pair.js";
import { rowOf } from "../core/row.js";
import { GIVEN_INTERACTION_SD_KJ, type InteractionLaw } from "./law.js";
import { interactionEffect } from "./pair.js";

/** The pair as a number that runs teach. */
export const interactionLearnable: Learnable<InteractionLaw, PairSide<number, number>> = {
  place: ({ perHalvingKJPerMol: value, sdKJPerMol: sd = GIVEN_INTERACTION_SD_KJ }) => ({
    parameters: [{ parameter: "interaction", value, sd, range: [-100, 100] }],
    row: (from, to) => rowOf("interaction", interactionEffect(ANY, from, to).slope),
  }),
  law: (law, learned) => {
    const found = learned.get("interaction");
    return found === undefined ? law : { ...law, perHalvingKJPerMol: found.value, sdKJPerMol: found.sd };
  },
};

/** The slope is that of any law. */
const ANY: InteractionLaw = { perHalvingKJPerMol: 0 };
