/*
 * Learning's half of use: one increase, which scales the curve that the rule had.
 */
import type { Learnable } from "../core/cause.js";
import { rowOf } from "../core/row.js";
import { useEffect } from "./cause.js";
import { increaseSd, type UseLaw } from "./useFactor.js";

/** Use as a number that runs teach. */
export const useLearnable: Learnable<UseLaw, number> = {
  place: (law) => ({
    parameters: [{ parameter: "use", value: law.increase, sd: increaseSd(law), range: [0, 10] }],
    row: (from, to) => rowOf("use", useEffect(law, from, to).slope),
  }),
  law: (law, learned) => {
    const found = learned.get("use");
    return found === undefined
      ? law
      : { ...law, shape: law.shape ?? law.increase, increase: found.value, sdIncrease: found.sd };
  },
};
