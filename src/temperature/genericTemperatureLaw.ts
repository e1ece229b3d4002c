import type { ArrheniusLaw } from "./law.js";

/**
 * The temperature law used when nothing is known of the developer: 60 ± 21.5 kJ/mol.
 *
 * @remarks Published tables fitted one by one run from about 30 to 95 kJ/mol, which is the central 90 % of
 * this law. Those that this package is checked with run from 25 to 76 and average 51 kJ/mol, the trade's
 * rules of thumb (ten per cent per degree) come to about 70; 60 stands between them. It is wide on purpose:
 * from 20 to 14 °C the 90 % interval of the time is ± 35 %. Own runs or a maker's table for the same
 * developer and film narrow it.
 */
export const genericTemperatureLaw: ArrheniusLaw = {
  kind: "arrhenius",
  activationEnergyKJPerMol: 60,
  sdKJPerMol: 21.5,
  sources: ["generic law over published time-temperature tables, 30 to 95 kJ/mol"],
};
