/*
 * Room: handbook. Published temperature coefficients by developing agent, as printed, with their sources.
 * Typed data only. "Read" figures were read in the named source; "from memory" ones were not seen in print
 * and are given a wider spread.
 */

/** Developers, by their developing agents, for which a temperature coefficient is printed. */
export type HandbookDeveloper =
  | "metol"
  | "hydroquinone"
  | "metol-hydroquinone"
  | "metol-hydroquinone-borax"
  | "phenidone-ascorbate"
  | "pyro"
  | "pyro-ammonia"
  | "pyro-metol"
  | "chlorhydroquinone-metol"
  | "glycin"
  | "p-aminophenol";

/**
 * A law as printed: rate grows `ratio` times over `intervalC`; `sdRatio` is our judgement of how far
 * materials differ.
 */
export interface HandbookTemperature {
  readonly ratio: number;
  readonly intervalC: number;
  readonly sdRatio: number;
  readonly sources: readonly string[];
}

const IVES =
  "H. E. Ives, Airplane Photography, Philadelphia, 1920, ch. XXII, comparison table (ratio over 7 °C)";
const LISTS =
  "thermo-development coefficient lists of older handbooks, over 10 °C (from memory, not seen in print)";
const F32 = "Eastman Kodak, publication F-32, part 2, rotary-tube processing, Rochester";

/**
 * Temperature coefficients by developer. The spread of a read figure is 0.25 in a ratio near 1.9 over 10 °C,
 * the scatter between the published tables of one developer on different films; figures from memory have half
 * as much again.
 */
export const handbookTemperature: Readonly<Record<HandbookDeveloper, HandbookTemperature>> = {
  "metol": { ratio: 1.25, intervalC: 10, sdRatio: 0.25, sources: [LISTS] },
  "hydroquinone": { ratio: 2.25, intervalC: 10, sdRatio: 0.4, sources: [LISTS] },
  "metol-hydroquinone": {
    ratio: 2.358,
    intervalC: 10,
    sdRatio: 0.4,
    sources: [
      "E. J. Wall, Thermo-Entwicklung, Jahrbuch für Photographie und Reproduktionstechnik 24, Halle, 1910, p. 44 " +
        "(appearance in 70 s at 8 °C and 25 s at 20 °C)",
    ],
  },
  "metol-hydroquinone-borax": {
    ratio: 1.92,
    intervalC: 10,
    sdRatio: 0.3,
    sources: [`${F32}: D-76 on two films, 20 to 24 °C, fitted to the rows`],
  },
  "phenidone-ascorbate": {
    ratio: 2.3,
    intervalC: 10,
    sdRatio: 0.5,
    sources: [`${F32}: XTOL, stock and 1+1, on two film sizes, 20 to 24 °C, fitted to the rows`],
  },
  "pyro": { ratio: 1.7, intervalC: 10, sdRatio: 0.4, sources: [LISTS] },
  "pyro-ammonia": {
    ratio: 1.92,
    intervalC: 10,
    sdRatio: 0.25,
    sources: [
      "Practical Color Photography, attributed to E. J. Wall, Screen-Plates, part 4 (factors at 10, 16, 20 and 25 °C, fitted)",
    ],
  },
  "pyro-metol": { ratio: 1.4, intervalC: 7, sdRatio: 0.15, sources: [IVES] },
  "chlorhydroquinone-metol": { ratio: 2, intervalC: 7, sdRatio: 0.25, sources: [IVES] },
  "glycin": { ratio: 2.3, intervalC: 10, sdRatio: 0.4, sources: [LISTS] },
  "p-aminophenol": { ratio: 1.9, intervalC: 10, sdRatio: 0.35, sources: [LISTS] },
};
