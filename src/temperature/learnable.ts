/*
 * Learning's half of temperature: one activation energy, or how far that of a table is off, and the
 * departures from it.
 */
import type { Learnable } from "../core/cause.js";
import { learnedDepartures, placedWalk, storable } from "../core/departures.js";
import { joinRows, rowOf } from "../core/row.js";
import { learnedOfTable, placedTable } from "../core/tableWalk.js";
import { sourcesOf } from "../core/term.js";
import { asArrheniusLaw } from "./asArrheniusLaw.js";
import { temperatureEffect } from "./cause.js";
import {
  DEPARTURE_LOG_SD,
  GIVEN_LAW_SD_KJ,
  SPACING_C,
  TABLE_ENERGY_RANGE,
  TABLE_ENERGY_SD_KJ,
  tableAxis,
  WIDEST_ENERGY_SD_KJ,
  type ArrheniusLaw,
  type ReadyArrheniusLaw,
  type ReadyTemperatureLaw,
} from "./law.js";
import { FAHRENHEIT_ABOVE_C } from "./temperatureCautions.js";

/** Temperature as numbers that runs teach. */
export const temperatureLearnable: Learnable<ReadyTemperatureLaw, number> = {
  // A coefficient becomes the Arrhenius law that agrees with it 5 °C either side of the known temperature. A
  // table stays one.
  adapt: (law, knownC) => {
    if (law.kind !== "coefficient") return law;
    const c = knownC ?? 20;
    return { ...asArrheniusLaw(law, Math.max(0, c - 5), Math.min(100, c + 5)), ...sourcesOf(law) };
  },
  place: (law, sides) => {
    if (law.kind === "table") {
      const { energyOffKJPerMol: value = 0, sdKJPerMol: sd = TABLE_ENERGY_SD_KJ, departures } = law;
      const table = placedTable(tableAxis(law), sides, departures);
      const off = { parameter: "temperature", value, sd, range: TABLE_ENERGY_RANGE, tail: "free" } as const;
      return {
        parameters: [off, ...table.parameters],
        row: (from, to) =>
          joinRows([rowOf("temperature", temperatureEffect(law, from, to).slope), table.row(from, to)]),
      };
    }
    const {
      activationEnergyKJPerMol: value,
      sdKJPerMol: sd = GIVEN_LAW_SD_KJ,
      departures,
    } = law as ArrheniusLaw;
    const walk = placedWalk("temperature", sides, DEPARTURE_LOG_SD, SPACING_C, departures);
    return {
      parameters: [{ parameter: "temperature", value, sd, range: [0, 200] }, ...walk.parameters],
      row: (from, to) =>
        joinRows([rowOf("temperature", temperatureEffect(law, from, to).slope), walk.row(from, to)]),
    };
  },
  law: (law, learned) => {
    const found = learned.get("temperature");
    if (found === undefined) return law;
    if (law.kind === "table")
      return {
        ...storable(law),
        energyOffKJPerMol: found.value,
        sdKJPerMol: Math.min(WIDEST_ENERGY_SD_KJ, found.sd),
        departures: learnedOfTable(learned),
      };
    return {
      ...storable(law as ReadyArrheniusLaw),
      activationEnergyKJPerMol: found.value,
      sdKJPerMol: found.sd,
      ...learnedDepartures(learned),
    };
  },
  unfit: (_law, _from, to) => (to > FAHRENHEIT_ABOVE_C ? "maybe-fahrenheit" : undefined),
};
