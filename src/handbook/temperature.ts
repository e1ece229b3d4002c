/*
 * Published temperature coefficients by developing agent, as printed, with their sources. Typed data only.
 */
import { frozen, namesOf } from "../core/frozen.js";
import type { Seen } from "../core/term.js";

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

/** A law as printed: rate grows `ratio` times over `intervalC`. `sdRatio` is how far materials differ. */
export interface HandbookTemperature {
  readonly ratio: number;
  readonly intervalC: number;
  readonly sdRatio: number;
  readonly seen: Seen;
  readonly sources: readonly string[];
  readonly hydroquinone: boolean;
}

const IVES =
  "H. E. Ives, Airplane Photography, Philadelphia, 1920, ch. XXII, comparison table (ratio over 7 °C)";
const LISTS =
  "thermo-development coefficient lists of older handbooks, over 10 °C (from memory, not seen in print)";
const F32 = "Eastman Kodak, publication F-32, part 2, rotary-tube processing, Rochester";

/**
 * A ratio that was read: between the tables of one developer on different materials the activation energy has
 * a standard deviation of 14 kJ/mol at least, which is 0.2 in ln(ratio) over 10 °C. Taken as 0.22.
 */
function read(ratio: number, intervalC: number, source: string, hydroquinone = false): HandbookTemperature {
  const sdRatio = (0.22 * ratio * intervalC) / 10;
  return { ratio, intervalC, sdRatio, seen: "read", sources: [source], hydroquinone };
}

/**
 * A ratio over 10 °C that was not seen in print: at 0 to 10 °C as wide as the generic law, above it wider.
 */
function remembered(ratio: number, hydroquinone = false): HandbookTemperature {
  const sdRatio = 0.28 * ratio;
  return { ratio, intervalC: 10, sdRatio, seen: "from-memory", sources: [LISTS], hydroquinone };
}

/** The developer holds hydroquinone. */
const HYDROQUINONE = true;

/** Temperature coefficients by developer. */
export const handbookTemperature: Readonly<Record<HandbookDeveloper, HandbookTemperature>> =
  /* @__PURE__ */ frozen({
    "metol": remembered(1.25),
    "hydroquinone": remembered(2.25, HYDROQUINONE),
    "metol-hydroquinone": read(
      2.358,
      10,
      "E. J. Wall, Thermo-Entwicklung, Jahrbuch für Photographie und Reproduktionstechnik 24, Halle, " +
        "1910, p. 44 " +
        "(appearance in 70 s at 8 °C and 25 s at 20 °C)",
      HYDROQUINONE,
    ),
    "metol-hydroquinone-borax": read(
      1.92,
      10,
      `${F32}: D-76 on two films, 20 to 24 °C, fitted to the rows`,
      HYDROQUINONE,
    ),
    "phenidone-ascorbate": read(
      2.3,
      10,
      `${F32}: XTOL, stock and 1+1, on two film sizes, 20 to 24 °C, fitted to the rows`,
    ),
    "pyro": remembered(1.7),
    "pyro-ammonia": read(
      1.92,
      10,
      "Practical Color Photography, attributed to E. J. Wall, Screen-Plates, part 4 (factors at 10, 16, " +
        "20 and 25 °C, fitted)",
    ),
    "pyro-metol": read(1.4, 7, IVES),
    "chlorhydroquinone-metol": read(2, 7, IVES),
    "glycin": remembered(2.3),
    "p-aminophenol": remembered(1.9),
  });

/** The developers that `handbookTemperatureLaw` takes. */
export const handbookDevelopers: readonly HandbookDeveloper[] = /* @__PURE__ */ namesOf(handbookTemperature);
