/*
 * Learning's half of dilution: one exponent, or how far that of a table is off, and the departures from it.
 */
import type { Learnable } from "../core/cause.js";
import { learnedDepartures, placedWalk, storable } from "../core/departures.js";
import { joinRows, rowOf } from "../core/row.js";
import { learnedOfTable, placedTable } from "../core/tableWalk.js";
import {
  GIVEN_EXPONENT_SD,
  SPACING,
  TABLE_EXPONENT_RANGE,
  TABLE_EXPONENT_SD,
  tableAxis,
  walkSd,
  WIDEST_EXPONENT_SD,
  type ReadyDilutionLaw,
} from "./dilution.js";

/** Dilution as numbers that runs teach. */
export const dilutionLearnable: Learnable<ReadyDilutionLaw, number> = {
  place: (law, sides) => {
    if (law.kind === "table") {
      const { exponentOff: value = 0, sd = TABLE_EXPONENT_SD, departures } = law;
      const table = placedTable(tableAxis(law), sides, departures);
      const off = { parameter: "dilution", value, sd, range: TABLE_EXPONENT_RANGE, tail: "free" } as const;
      return {
        parameters: [off, ...table.parameters],
        row: (from, to) => joinRows([rowOf("dilution", from - to), table.row(from, to)]),
      };
    }
    const { exponent: value, sd = GIVEN_EXPONENT_SD, departures, scatterLogSd } = law;
    const walk = placedWalk("dilution", sides, walkSd(scatterLogSd), SPACING, departures);
    return {
      parameters: [{ parameter: "dilution", value, sd, range: [0, 3] }, ...walk.parameters],
      row: (from, to) => joinRows([rowOf("dilution", from - to), walk.row(from, to)]),
    };
  },
  law: (law, learned) => {
    const found = learned.get("dilution");
    if (found === undefined) return law;
    if (law.kind === "table")
      return {
        ...storable(law),
        exponentOff: found.value,
        sd: Math.min(WIDEST_EXPONENT_SD, found.sd),
        departures: learnedOfTable(learned),
      };
    return {
      ...storable(law),
      exponent: found.value,
      sd: found.sd,
      ...learnedDepartures(learned),
    };
  },
};
