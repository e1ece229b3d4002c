/*
 * Learning's half of use: one increase, which scales the curve that the rule had.
 */
import type { Learnable } from "../core/cause.js";
import { useEffect } from "./cause.js";
import { increaseSd, type UseLaw } from "./useFactor.js";

/** Use as a number that runs teach. */
export const useLearnable: Learnable<UseLaw, number> = {
  parameters: (law) => [{ parameter: "use", value: law.increase, sd: increaseSd(law), range: [0, 10] }],
  row: (law, from, to) => [{ parameter: "use", slope: useEffect(law, from, to).slope }],
  law: (law, learned) => {
    const found = learned.get("use");
    return found === undefined
      ? law
      : { ...law, shape: law.shape ?? law.increase, increase: found.value, sdIncrease: found.sd };
  },
};
