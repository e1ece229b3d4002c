/*
 * Learning's half of dilution: one exponent.
 */
import type { Learnable } from "../core/cause.js";
import { sourcesOf } from "../core/term.js";
import { dilutionEffect } from "./cause.js";
import { GIVEN_EXPONENT_SD, type PowerDilutionLaw, type ReadyDilutionLaw } from "./dilution.js";
import { fitDilutionLaw } from "./fitDilutionLaw.js";

/** Dilution as a number that runs teach. */
export const dilutionLearnable: Learnable<ReadyDilutionLaw, number> = {
  // A table becomes the power fitted to it.
  adapt: (law) => (law.kind === "power" ? law : { ...fitDilutionLaw(law.rows).law, ...sourcesOf(law) }),
  parameters: (law) => {
    const { exponent: value, sd = GIVEN_EXPONENT_SD } = law as PowerDilutionLaw;
    return [{ parameter: "dilution", value, sd, range: [0, 3] }];
  },
  row: (law, from, to) => [{ parameter: "dilution", slope: dilutionEffect(law, from, to).slope }],
  law: (law, learned) => {
    const found = learned.get("dilution");
    return found === undefined ? law : { ...(law as PowerDilutionLaw), exponent: found.value, sd: found.sd };
  },
};
