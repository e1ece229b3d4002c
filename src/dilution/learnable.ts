/*
 * Learning's half of dilution: one exponent, and the departures from the power.
 */
import type { Learnable } from "../core/cause.js";
import { learnedDepartures, placedWalk, storable } from "../core/departures.js";
import { joinRows, rowOf } from "../core/row.js";
import { sourcesOf } from "../core/term.js";
import {
  GIVEN_EXPONENT_SD,
  walkSd,
  type PowerDilutionLaw,
  type ReadyDilutionLaw,
  type ReadyPowerLaw,
} from "./dilution.js";
import { fitDilutionLaw } from "./fitDilutionLaw.js";

/** Dilutions nearer than this in ln(concentration) share one departure: 1+9 and 1+10 are 0.095 apart. */
const SPACING = 0.09;

/** Dilution as numbers that runs teach. */
export const dilutionLearnable: Learnable<ReadyDilutionLaw, number> = {
  // A table becomes the power fitted to it.
  adapt: (law) => (law.kind === "power" ? law : { ...fitDilutionLaw(law.rows).law, ...sourcesOf(law) }),
  place: (law, sides) => {
    const { exponent: value, sd = GIVEN_EXPONENT_SD, departures, scatterLogSd } = law as PowerDilutionLaw;
    const walk = placedWalk("dilution", sides, walkSd(scatterLogSd), SPACING, departures);
    return {
      parameters: [{ parameter: "dilution", value, sd, range: [0, 3] }, ...walk.parameters],
      row: (from, to) => joinRows([rowOf("dilution", from - to), walk.row(from, to)]),
    };
  },
  law: (law, learned) => {
    const found = learned.get("dilution");
    if (found === undefined) return law;
    return {
      ...storable(law as ReadyPowerLaw),
      exponent: found.value,
      sd: found.sd,
      ...learnedDepartures(learned),
    };
  },
};
