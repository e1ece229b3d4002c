/*
 * Learning's half of dilution: one exponent, and the departures from the power.
 */
import type { Learnable } from "../core/cause.js";
import { learnedDepartures, placedWalk, storable } from "../core/departures.js";
import { joinRows, rowOf } from "../core/row.js";
import { learnedOfTable, placedTable } from "../core/tableWalk.js";
import { GIVEN_EXPONENT_SD, SPACING, tableAxis, walkSd, type ReadyDilutionLaw } from "./dilution.js";

/** Dilution as numbers that runs teach. */
export const dilutionLearnable: Learnable<ReadyDilutionLaw, number> = {
  place: (law, sides) => {
    if (law.kind === "table") return placedTable(tableAxis(law), sides, law.departures);
    const { exponent: value, sd = GIVEN_EXPONENT_SD, departures, scatterLogSd } = law;
    const walk = placedWalk("dilution", sides, walkSd(scatterLogSd), SPACING, departures);
    return {
      parameters: [{ parameter: "dilution", value, sd, range: [0, 3] }, ...walk.parameters],
      row: (from, to) => joinRows([rowOf("dilution", from - to), walk.row(from, to)]),
    };
  },
  law: (law, learned) => {
    if (law.kind === "table")
      return learned.size === 0 ? law : { ...storable(law), departures: learnedOfTable(learned) };
    const found = learned.get("dilution");
    if (found === undefined) return law;
    return {
      ...storable(law),
      exponent: found.value,
      sd: found.sd,
      ...learnedDepartures(learned),
    };
  },
};
