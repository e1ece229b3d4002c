/*
 * Learning's half of strength: by how many of its standard deviations a strength is off.
 */
import type { Learnable } from "../core/cause.js";
import { rowOf } from "../core/row.js";
import type { Strength, StrengthCorrection } from "./cause.js";

/** Strength as a number that runs teach. */
export const strengthLearnable: Learnable<StrengthCorrection, Strength> = {
  place: ({ correction: value, sdCorrection: sd = 1 }) => ({
    parameters: [{ parameter: "strength", value, sd, range: [-1e3, 1e3] }],
    row: (from, to) => rowOf("strength", to.logSd - from.logSd),
  }),
  law: (law, learned) => {
    const found = learned.get("strength");
    return found === undefined ? law : { ...law, correction: found.value, sdCorrection: found.sd };
  },
};
