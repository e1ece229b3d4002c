/*
 * Learning's half of temperature: one activation energy.
 */
import type { Learnable } from "../core/cause.js";
import { rowOf } from "../core/row.js";
import { sourcesOf } from "../core/term.js";
import { asArrheniusLaw } from "./asArrheniusLaw.js";
import { temperatureEffect } from "./cause.js";
import { GIVEN_LAW_SD_KJ, type ArrheniusLaw, type ReadyTemperatureLaw } from "./law.js";
import { FAHRENHEIT_ABOVE_C } from "./temperatureCautions.js";

/** Temperature as a number that runs teach. */
export const temperatureLearnable: Learnable<ReadyTemperatureLaw, number> = {
  // A coefficient or a table becomes the Arrhenius law that agrees with it 5 °C either side of the known
  // temperature.
  adapt: (law, knownC) => {
    if (law.kind === "arrhenius") return law;
    const c = knownC ?? 20;
    return { ...asArrheniusLaw(law, Math.max(0, c - 5), Math.min(100, c + 5)), ...sourcesOf(law) };
  },
  place: (law) => {
    const { activationEnergyKJPerMol: value, sdKJPerMol: sd = GIVEN_LAW_SD_KJ } = law as ArrheniusLaw;
    return {
      parameters: [{ parameter: "temperature", value, sd, range: [0, 200] }],
      row: (from, to) => rowOf("temperature", temperatureEffect(law, from, to).slope),
    };
  },
  law: (law, learned) => {
    const found = learned.get("temperature");
    return found === undefined
      ? law
      : { ...(law as ArrheniusLaw), activationEnergyKJPerMol: found.value, sdKJPerMol: found.sd };
  },
  unfit: (_law, _from, to) => (to > FAHRENHEIT_ABOVE_C ? "maybe-fahrenheit" : undefined),
};
