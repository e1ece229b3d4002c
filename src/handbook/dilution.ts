/*
 * Dilution exponents n in time ∝ concentration^−n by developer family, and the least stock for a roll, with
 * their sources. Typed data only.
 */
import { frozen, namesOf } from "../core/frozen.js";
import type { Seen } from "../core/term.js";

/** Developer families whose times are printed at several dilutions. */
export type DilutionFamily =
  "solvent-stock" | "concentrate" | "p-aminophenol" | "pyro" | "glycin" | "ascorbate-stock";

/** An exponent with its standard deviation, and where it comes from. */
export interface HandbookDilution {
  readonly exponent: number;
  readonly sd: number;
  readonly seen: Seen;
  readonly sources: readonly string[];
}

const ILFORD = "Ilford/Harman technical sheets, 20 °C (from memory, not seen in print)";

/**
 * Exponents by family, beside the departure from a power that every dilution law has. How they were reckoned
 * from the published tables: docs/decisions/priors.md. A family is marked "read" when one of its tables was
 * read.
 */
export const handbookDilution: Readonly<Record<DilutionFamily, HandbookDilution>> = /* @__PURE__ */ frozen({
  // Sulphite-rich stocks used undiluted, 1+1 and 1+3: seven tables, none of them seen in print.
  "solvent-stock": {
    exponent: 0.62,
    sd: 0.12,
    seen: "from-memory",
    sources: [`${ILFORD}; D-76 and ID-11 1+1: common practice 0.38 to 0.59`],
  },
  // Liquid concentrates from 1+4: 0.63 to 1.40, many near 0.9.
  "concentrate": {
    exponent: 0.9,
    sd: 0.15,
    seen: "read",
    sources: ["Eastman Kodak, publication F-32, part 2, rotary-tube processing, at 24 °C, Rochester", ILFORD],
  },
  "p-aminophenol": {
    exponent: 0.8,
    sd: 0.12,
    seen: "common-practice",
    sources: [`practitioners' rule 1.5 to 2 times for twice the water (common practice); ${ILFORD}`],
  },
  // The alkali is diluted with the agent: 1.32, 1.47 and 1.71 in one series.
  "pyro": {
    exponent: 1.4,
    sd: 0.2,
    seen: "read",
    sources: [
      "J. B. Schriever (ed.), Self-Instructing Library of Practical Photography, Scranton, 1909, secs. " +
        "452-506",
    ],
  },
  "glycin": {
    exponent: 1,
    sd: 0.15,
    seen: "read",
    sources: ["L. P. Clerc, Photography: Theory and Practice, c. 1937, sec. 341"],
  },
  // 0.43 to 0.85, rising with temperature.
  "ascorbate-stock": {
    exponent: 0.55,
    sd: 0.15,
    seen: "read",
    sources: [
      "Eastman Kodak, publication F-32, part 2, rotary-tube processing: XTOL stock and 1+1, Rochester",
    ],
  },
});

/** The developer families that `handbookDilutionLaw` takes. */
export const dilutionFamilies: readonly DilutionFamily[] = /* @__PURE__ */ namesOf(handbookDilution);

/** The least stock for one roll (516 cm²), by developer, ml. */
export const handbookLeastStock: Readonly<
  Partial<Record<DilutionFamily, { readonly mlPerRoll: number; readonly sources: readonly string[] }>>
> = /* @__PURE__ */ frozen({
  "ascorbate-stock": {
    mlPerRoll: 100,
    sources: ["Eastman Kodak, publication J-109, XTOL (from memory, not seen in print)"],
  },
  "solvent-stock": {
    mlPerRoll: 118,
    sources: [
      "Eastman Kodak, publication J-78, D-76 1+1: a roll in 237 ml, at 10 % more time (from memory, not " +
        "seen in print)",
    ],
  },
  "concentrate": {
    mlPerRoll: 6,
    sources: ["practitioners' rule for syrup concentrates, 6 ml a roll (common practice)"],
  },
  "p-aminophenol": {
    mlPerRoll: 10,
    sources: ["maker's older figure of 10 ml a roll; many users work with 3 to 5 ml (common practice)"],
  },
});

/** The developer families with a published least stock, as `stockCautions` takes them. */
export const leastStockFamilies: readonly DilutionFamily[] = /* @__PURE__ */ namesOf(handbookLeastStock);
