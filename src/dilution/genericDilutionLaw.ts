import type { PowerDilutionLaw } from "./dilution.js";

/**
 * The dilution law used when nothing is known of the developer: n = 0.8 ± 0.32.
 *
 * @remarks Published exponents run from about 0.36 (sulphite-rich stocks) to 1.7 (pyro-soda); the middle of
 * the pairs read for this package is 0.8 and their standard deviation 0.31. Wide on purpose: at twice the
 * water the 90 % interval is ± 44 %.
 */
export const genericDilutionLaw: PowerDilutionLaw = {
  kind: "power",
  exponent: 0.8,
  sd: 0.32,
  sources: ["generic law over published dilution pairs, n 0.36 to 1.7"],
};
