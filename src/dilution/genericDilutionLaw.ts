import { frozen } from "../core/frozen.js";
import type { PowerDilutionLaw } from "./dilution.js";

/**
 * How far ln(time) departs from any power of the concentration: the standard deviation of a random walk over
 * one unit of ln(concentration).
 *
 * @remarks The published tables in this repository are most likely under 0.23, and nearly as likely from 0.17
 * to 0.31: docs/decisions/priors.md.
 */
export const DEPARTURE_LOG_SD: number = 0.19;

/**
 * The dilution law used when nothing is known of the developer: n = 0.75 ± 0.25, beside the departure from a
 * power that every dilution law has.
 *
 * @remarks Published exponents run from about 0.36 (sulphite-rich stocks) to 1.7 (pyro-soda). How it was
 * reckoned: docs/decisions/priors.md.
 */
export const genericDilutionLaw: PowerDilutionLaw = /* @__PURE__ */ frozen({
  kind: "power",
  exponent: 0.75,
  sd: 0.25,
  sources: ["generic law over published dilution tables, n 0.36 to 1.7"],
  runs: 0,
});
