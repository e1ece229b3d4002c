/*
 * Published figures on use: rules for more time, capacities, replenishment, areas.
 */
import { IVES, J78, type NotUsed, type Published } from "./published.js";

const J109 = "Eastman Kodak, publication J-109, XTOL, n.d.";
const J86 = "Eastman Kodak, publication J-86, T-MAX developers, n.d.";
const POWDER_SHEETS =
  "Ilford/Harman, ID-11, Microphen and Perceptol powder developers, technical sheets, n.d.";

/** Capacities: area in a volume, as printed. */
export const capacities: readonly Published<{
  readonly area: number;
  readonly areaUnit: "square inch" | "roll";
  readonly volume: number;
  readonly volumeUnit: "ml" | "gallon";
  /** rolls of 80 square inches in a litre, worked out by whoever collected it */
  readonly rollsPerL: number;
}>[] = [
  {
    id: "EXH-001",
    source: IVES,
    provenance: "read",
    about: "pyro-metol; plates",
    rows: [{ area: 30, areaUnit: "square inch", volume: 100, volumeUnit: "ml", rollsPerL: 3.75 }],
  },
  {
    id: "EXH-002",
    source: IVES,
    provenance: "read",
    about: "chlorhydroquinone-metol; plates",
    rows: [{ area: 300, areaUnit: "square inch", volume: 100, volumeUnit: "ml", rollsPerL: 37.5 }],
  },
  {
    id: "EXH-013",
    source: J78,
    provenance: "from memory",
    about: "D-76 1+1, single use",
    rows: [{ area: 8, areaUnit: "roll", volume: 1, volumeUnit: "gallon", rollsPerL: 2.1 }],
  },
];

/** Rules for more time: so much for each portion of rolls in a volume. */
export const useRules: readonly Published<{
  readonly developer:
    | "metol-hydroquinone-borax"
    | "metol-hydroquinone-borax-per-film"
    | "metol-sulphite"
    | "phenidone-ascorbate";
  readonly increase: number;
  readonly rolls: number;
  readonly volume: "litre" | "gallon";
  readonly capacityRolls: number;
}>[] = [
  {
    id: "EXH-011",
    source: J78,
    provenance: "from memory",
    about: "D-76 stock, unreplenished: 15 % more for each 4 rolls in a US gallon, 16 rolls",
    rows: [
      {
        developer: "metol-hydroquinone-borax",
        increase: 0.15,
        rolls: 4,
        volume: "gallon",
        capacityRolls: 16,
      },
    ],
  },
  {
    id: "EXH-014",
    source: POWDER_SHEETS,
    provenance: "from memory",
    about: "ID-11 and Microphen stock: 10 % for each film after the first in a litre, added, 10 films",
    rows: [
      {
        developer: "metol-hydroquinone-borax-per-film",
        increase: 0.1,
        rolls: 1,
        volume: "litre",
        capacityRolls: 10,
      },
    ],
  },
  {
    id: "EXH-020",
    source: "practitioners' rule: D-23, after the maker's formulae",
    provenance: "from memory, uncertain",
    about: "D-23, unreplenished",
    rows: [{ developer: "metol-sulphite", increase: 0.1, rolls: 1, volume: "litre", capacityRolls: 10 }],
  },
];

/** The tenth film in a litre at 10 % a film: added, and multiplied. */
export const tenthFilm: { readonly linear: number; readonly compound: number } = {
  linear: 1.9,
  compound: 2.36,
};

/** XTOL in steps: the factor for the rolls from `first` to `last` in a litre. */
export const stepRule: Published<{ readonly first: number; readonly last: number; readonly factor: number }> =
  {
    id: "EXH-016",
    source: J109,
    provenance: "from memory, uncertain",
    about: "XTOL stock, unreplenished, 15 rolls in a litre",
    rows: [
      { first: 1, last: 5, factor: 1 },
      { first: 6, last: 10, factor: 1.15 },
      { first: 11, last: 15, factor: 1.3 },
    ],
  };

/** T-MAX 1+4 in added minutes, the same whatever the time: no factor. */
export const addedMinutes: Published<{
  readonly first: number;
  readonly last: number;
  readonly minutes: number;
}> = {
  id: "EXH-018",
  source: J86,
  provenance: "from memory",
  about: "T-MAX 1+4, unreplenished, 48 rolls in a US gallon",
  rows: [
    { first: 1, last: 16, minutes: 0 },
    { first: 17, last: 32, minutes: 1 },
    { first: 33, last: 48, minutes: 2 },
  ],
};

/** The practitioners' range for each film in a litre or half a litre of stock. */
export const perFilmRange: Published<{ readonly low: number; readonly high: number }> = {
  id: "EXH-019",
  source: "practitioners' rule: stock used again",
  provenance: "common practice",
  about: "metol-hydroquinone stock",
  rows: [{ low: 0.05, high: 0.1 }],
};

/** Replenisher for an area, ml; `key` where the handbook module carries it. */
export const replenishment: readonly Published<{
  readonly ml: number;
  readonly squareInches: number;
  readonly mlPerRoll: number;
  readonly key: "metol-hydroquinone-borax" | "tank-generic" | "top-up" | null;
}>[] = [
  {
    id: "EXH-003",
    source: "US Army, correspondence subcourse SS0513, n.d., p. 23",
    provenance: "read",
    about: "generic developer, 15 l tank: 8 fl oz for 800 square inches",
    rows: [{ ml: 237, squareInches: 800, mlPerRoll: 23.7, key: "tank-generic" }],
  },
  {
    id: "EXH-005",
    source: "R. Suzuki (Silvergrain Labs), Replenishing system, n.d.",
    provenance: "read",
    about: "top-up, about the carry-over",
    rows: [{ ml: 20, squareInches: 80, mlPerRoll: 20, key: "top-up" }],
  },
  {
    id: "EXH-007",
    source: "forum users quoting Eastman Kodak, publication J-86, n.d.",
    provenance: "read",
    about: "T-MAX RS, 1.5 fl oz a roll",
    rows: [{ ml: 44.4, squareInches: 80, mlPerRoll: 44.4, key: null }],
  },
  {
    id: "EXH-012",
    source: J78,
    provenance: "from memory",
    about: "D-76 with D-76R, 3/4 fl oz a roll",
    rows: [{ ml: 22, squareInches: 80, mlPerRoll: 22, key: "metol-hydroquinone-borax" }],
  },
  {
    id: "EXH-017",
    source: J109,
    provenance: "from memory",
    about: "XTOL as its own replenisher",
    rows: [{ ml: 70, squareInches: 80, mlPerRoll: 70, key: null }],
  },
];

/** What counts as a roll of 80 square inches. */
export const rollEquivalents: Published<{ readonly format: string; readonly perRoll: number }> = {
  id: "EXH-006",
  source: "Brodie-Tyrrell, Fixer Capacity, analogue FAQ, n.d.",
  provenance: "read",
  about: "80 square inches, 516.1 cm²; half a 220 roll",
  rows: [
    { format: "135-36", perRoll: 1 },
    { format: "120", perRoll: 1 },
    { format: "220", perRoll: 0.5 },
    { format: "4x5in", perRoll: 4 },
    { format: "8x10in", perRoll: 1 },
  ],
};

export const useNotUsed: readonly NotUsed[] = [
  { ids: ["EXH-004"], reason: "bromide released for each roll: no module here models bromide" },
  { ids: ["EXH-008"], reason: "a colour process" },
  {
    ids: ["EXH-009"],
    reason: "paper developer lost to air in open trays: a share of consumption, no factor on time",
  },
  { ids: ["EXH-010"], reason: "words without a number" },
  {
    ids: ["EXH-015"],
    reason: "from memory and uncertain, and not in the handbook module: no test may rest on it",
  },
];
