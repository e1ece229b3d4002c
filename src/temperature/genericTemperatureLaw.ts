import { frozen } from "../core/frozen.js";
import type { ArrheniusLaw } from "./law.js";

/**
 * The temperature law used when nothing is known of the developer: 60 ± 18 kJ/mol.
 *
 * @remarks The published tables that this package is checked with, fitted one by one, run from 25 to 78
 * kJ/mol; the trade's rule of ten per cent per degree comes to 68 to 75. About 60 their root mean square is
 * 18. It is wide on purpose: from 20 to 14 °C the 90 % interval of the time is ± 29 %. Own runs or a maker's
 * table for the same developer and film narrow it. How it was reckoned: docs/decisions/priors.md.
 */
export const genericTemperatureLaw: ArrheniusLaw = /* @__PURE__ */ frozen({
  kind: "arrhenius",
  activationEnergyKJPerMol: 60,
  sdKJPerMol: 18,
  sources: ["generic law over published time-temperature tables, 25 to 78 kJ/mol"],
  runs: 0,
});
