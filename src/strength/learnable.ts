/*
 * Learning's half of strength: by how many of its standard deviations the law is off that gave strengths.
 */
import type { Learnable } from "../core/cause.js";
import { rowOf } from "../core/row.js";
import { strengthBeside, strengthSlope, type Strength, type StrengthCorrection } from "./cause.js";

/** Strength as a number that runs teach. */
export const strengthLearnable: Learnable<StrengthCorrection, Strength> = {
  place: ({ correction: value, sdCorrection: sd = 1 }) => ({
    parameters: [{ parameter: "strength", value, sd, range: [-1e3, 1e3] }],
    row: (_from, to) => ({ ...rowOf("strength", strengthSlope(to)), beside: strengthBeside(to) }),
  }),
  law: (law, learned) => {
    const found = learned.get("strength");
    return found === undefined ? law : { ...law, correction: found.value, sdCorrection: found.sd };
  },
};
