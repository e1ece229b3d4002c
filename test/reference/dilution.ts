/*
 * Published figures on dilution: times at several dilutions, the rules of the trade, the
 * least stock for a roll.
 */
import type { DilutionFamily } from "../../src/index.js";
import { IVES, type NotUsed, type Published } from "./published.js";
import { F32 } from "./temperature.js";

const filmSheet = (film: string): string =>
  `Ilford/Harman, ${film} technical information sheet, n.d., development table, 20 °C`;
const F4017 = "Eastman Kodak, publication F-4017, TRI-X 320 and 400 films, 2007, development tables, 20 °C";
const SCHRIEVER =
  "J. B. Schriever (ed.), Self-Instructing Library of Practical Photography, Scranton, 1909, secs. 452-506 (ch. XVIII part 4; tank development part 3)";
const PRACTICE = "practitioners' rule";

/** Times of equal contrast at several dilutions. */
export interface DilutionSeries extends Published<{ readonly dilution: string; readonly minutes: number }> {
  readonly family: DilutionFamily;
  /**
   * n in time ∝ concentration^−n of each later row against the first, worked out to three decimals from the
   * printed times by whoever collected them, apart from this package.
   */
  readonly exponents: readonly number[];
}

/** T-MAX RS: its working solution taken as 1+4, counted from the concentrate, is an interpretation. */
export const dilutionSeries: readonly DilutionSeries[] = [
  {
    id: "DIL-011",
    source: F32,
    provenance: "read",
    about: "T-MAX Developer; T-MAX 100; 24 °C, rotary tube",
    family: "concentrate",
    exponents: [1.272, 1.064, 0.74],
    rows: [
      { dilution: "1+4", minutes: 5.5 },
      { dilution: "1+7", minutes: 10 },
      { dilution: "1+9", minutes: 11.5 },
      { dilution: "1+15", minutes: 13 },
    ],
  },
  {
    id: "DIL-012",
    source: F32,
    provenance: "read",
    about: "T-MAX Developer; T-MAX 400; 24 °C, rotary tube",
    family: "concentrate",
    exponents: [1.272, 1.0, 0.803],
    rows: [
      { dilution: "1+4", minutes: 5.5 },
      { dilution: "1+7", minutes: 10 },
      { dilution: "1+9", minutes: 11 },
      { dilution: "1+15", minutes: 14 },
    ],
  },
  {
    id: "DIL-013",
    source: F32,
    provenance: "read",
    about: "T-MAX RS Developer; T-MAX 100; 24 °C, rotary tube",
    family: "concentrate",
    exponents: [1.129, 1.0],
    rows: [
      { dilution: "1+4", minutes: 5 },
      { dilution: "1+7", minutes: 8.5 },
      { dilution: "1+9", minutes: 10 },
    ],
  },
  {
    id: "DIL-014",
    source: F32,
    provenance: "read",
    about: "T-MAX RS Developer; T-MAX 400; 24 °C, rotary tube",
    family: "concentrate",
    exponents: [0.66, 0.628],
    rows: [
      { dilution: "1+4", minutes: 5.5 },
      { dilution: "1+7", minutes: 7.5 },
      { dilution: "1+9", minutes: 8.5 },
    ],
  },
  {
    id: "DIL-021",
    source: filmSheet("HP5 PLUS"),
    provenance: "from memory",
    about: "ID-11; HP5 PLUS; 20 °C, intermittent agitation, EI 800",
    family: "solvent-stock",
    exponents: [0.652],
    rows: [
      { dilution: "stock", minutes: 10.5 },
      { dilution: "1+1", minutes: 16.5 },
    ],
  },
  {
    id: "DIL-023",
    source: filmSheet("HP5 PLUS"),
    provenance: "from memory",
    about: "MICROPHEN; HP5 PLUS; 20 °C, intermittent agitation, EI 800",
    family: "solvent-stock",
    exponents: [0.907],
    rows: [
      { dilution: "stock", minutes: 8 },
      { dilution: "1+1", minutes: 15 },
    ],
  },
  {
    id: "DIL-024",
    source: filmSheet("HP5 PLUS"),
    provenance: "from memory",
    about: "PERCEPTOL; HP5 PLUS; 20 °C, intermittent agitation",
    family: "solvent-stock",
    exponents: [0.469, 0.472],
    rows: [
      { dilution: "stock", minutes: 13 },
      { dilution: "1+1", minutes: 18 },
      { dilution: "1+3", minutes: 25 },
    ],
  },
  {
    id: "DIL-025",
    source: filmSheet("HP5 PLUS"),
    provenance: "from memory",
    about: "ILFOTEC HC; HP5 PLUS; 20 °C, intermittent agitation, EI 400",
    family: "concentrate",
    exponents: [0.893],
    rows: [
      { dilution: "1+15", minutes: 3.5 },
      { dilution: "1+31", minutes: 6.5 },
    ],
  },
  {
    id: "DIL-026",
    source: filmSheet("HP5 PLUS"),
    provenance: "from memory",
    about: "ILFOTEC HC; HP5 PLUS; 20 °C, intermittent agitation, EI 800",
    family: "concentrate",
    exponents: [0.926],
    rows: [
      { dilution: "1+15", minutes: 5 },
      { dilution: "1+31", minutes: 9.5 },
    ],
  },
  {
    id: "DIL-027",
    source: filmSheet("HP5 PLUS"),
    provenance: "from memory",
    about: "ILFOTEC HC; HP5 PLUS; 20 °C, intermittent agitation, EI 1600",
    family: "concentrate",
    exponents: [0.9],
    rows: [
      { dilution: "1+15", minutes: 7.5 },
      { dilution: "1+31", minutes: 14 },
    ],
  },
  {
    id: "DIL-028",
    source: filmSheet("HP5 PLUS"),
    provenance: "from memory",
    about: "ILFOSOL 3; HP5 PLUS; 20 °C, intermittent agitation, EI 400",
    family: "concentrate",
    exponents: [1.298],
    rows: [
      { dilution: "1+9", minutes: 6.5 },
      { dilution: "1+14", minutes: 11 },
    ],
  },
  {
    id: "DIL-029",
    source: filmSheet("HP5 PLUS"),
    provenance: "from memory, uncertain",
    about: "ILFOTEC LC29; HP5 PLUS; 20 °C, intermittent agitation, EI 400",
    family: "concentrate",
    exponents: [0.7, 0.738],
    rows: [
      { dilution: "1+9", minutes: 4 },
      { dilution: "1+19", minutes: 6.5 },
      { dilution: "1+29", minutes: 9 },
    ],
  },
  {
    id: "DIL-030",
    source: filmSheet("HP5 PLUS"),
    provenance: "from memory",
    about: "Rodinal (p-aminophenol); HP5 PLUS; 20 °C, intermittent agitation, EI 400",
    family: "p-aminophenol",
    exponents: [0.9],
    rows: [
      { dilution: "1+25", minutes: 6 },
      { dilution: "1+50", minutes: 11 },
    ],
  },
  {
    id: "DIL-031",
    source: filmSheet("HP5 PLUS"),
    provenance: "from memory, uncertain",
    about: "XTOL; HP5 PLUS; 20 °C, intermittent agitation, EI 400",
    family: "ascorbate-stock",
    exponents: [0.585],
    rows: [
      { dilution: "stock", minutes: 8 },
      { dilution: "1+1", minutes: 12 },
    ],
  },
  {
    id: "DIL-032",
    source: filmSheet("FP4 PLUS"),
    provenance: "from memory",
    about: "ID-11; FP4 PLUS; 20 °C, intermittent agitation, EI 125",
    family: "solvent-stock",
    exponents: [0.372, 0.617],
    rows: [
      { dilution: "stock", minutes: 8.5 },
      { dilution: "1+1", minutes: 11 },
      { dilution: "1+3", minutes: 20 },
    ],
  },
  {
    id: "DIL-033",
    source: filmSheet("FP4 PLUS"),
    provenance: "from memory, uncertain",
    about: "ILFOTEC HC; FP4 PLUS; 20 °C, intermittent agitation, EI 125",
    family: "concentrate",
    exponents: [1.0],
    rows: [
      { dilution: "1+15", minutes: 4 },
      { dilution: "1+31", minutes: 8 },
    ],
  },
  {
    id: "DIL-034",
    source: filmSheet("FP4 PLUS"),
    provenance: "from memory",
    about: "ILFOSOL 3; FP4 PLUS; 20 °C, intermittent agitation, EI 125",
    family: "concentrate",
    exponents: [1.401],
    rows: [
      { dilution: "1+9", minutes: 4.25 },
      { dilution: "1+14", minutes: 7.5 },
    ],
  },
  {
    id: "DIL-035",
    source: filmSheet("FP4 PLUS"),
    provenance: "from memory",
    about: "Rodinal (p-aminophenol); FP4 PLUS; 20 °C, intermittent agitation, EI 125",
    family: "p-aminophenol",
    exponents: [0.758],
    rows: [
      { dilution: "1+25", minutes: 9 },
      { dilution: "1+50", minutes: 15 },
    ],
  },
  {
    id: "DIL-036",
    source: filmSheet("PAN F PLUS"),
    provenance: "from memory",
    about: "ID-11; PAN F PLUS; 20 °C, intermittent agitation, EI 50",
    family: "solvent-stock",
    exponents: [0.387, 0.603],
    rows: [
      { dilution: "stock", minutes: 6.5 },
      { dilution: "1+1", minutes: 8.5 },
      { dilution: "1+3", minutes: 15 },
    ],
  },
  {
    id: "DIL-037",
    source: filmSheet("PAN F PLUS"),
    provenance: "from memory",
    about: "Rodinal (p-aminophenol); PAN F PLUS; 20 °C, intermittent agitation, EI 50",
    family: "p-aminophenol",
    exponents: [0.9],
    rows: [
      { dilution: "1+25", minutes: 6 },
      { dilution: "1+50", minutes: 11 },
    ],
  },
  {
    id: "DIL-038",
    source: filmSheet("DELTA 100"),
    provenance: "from memory",
    about: "ID-11; DELTA 100; 20 °C, intermittent agitation, EI 100",
    family: "solvent-stock",
    exponents: [0.372, 0.617],
    rows: [
      { dilution: "stock", minutes: 8.5 },
      { dilution: "1+1", minutes: 11 },
      { dilution: "1+3", minutes: 20 },
    ],
  },
  {
    id: "DIL-039",
    source: filmSheet("DELTA 100"),
    provenance: "from memory, uncertain",
    about: "Rodinal (p-aminophenol); DELTA 100; 20 °C, intermittent agitation, EI 100",
    family: "p-aminophenol",
    exponents: [0.656],
    rows: [
      { dilution: "1+25", minutes: 9 },
      { dilution: "1+50", minutes: 14 },
    ],
  },
  {
    id: "DIL-040",
    source: F4017,
    provenance: "from memory",
    about: "D-76; TRI-X 400; 20 °C, small tank, 30 s agitation interval, EI 400",
    family: "solvent-stock",
    exponents: [0.531],
    rows: [
      { dilution: "stock", minutes: 6.75 },
      { dilution: "1+1", minutes: 9.75 },
    ],
  },
  {
    id: "DIL-041",
    source: F4017,
    provenance: "from memory",
    about: "XTOL; TRI-X 400; 20 °C, small tank, 30 s agitation interval, EI 400",
    family: "ascorbate-stock",
    exponents: [0.363],
    rows: [
      { dilution: "stock", minutes: 7 },
      { dilution: "1+1", minutes: 9 },
    ],
  },
];

/** The same developer, stock and 1+1, at four temperatures, with the ratio and n worked out for each. */
export interface StockAndHalf extends Published<{
  readonly temperatureC: number;
  readonly stockMin: number;
  readonly halfMin: number;
  readonly ratio: number;
  readonly n: number;
}> {
  /** the least-squares activation energies of the two columns, kJ/mol, as measured here */
  readonly energies: readonly [stock: number, half: number];
}

export const stockAndHalf: readonly StockAndHalf[] = [
  {
    id: "DIL-015",
    source: F32,
    provenance: "read",
    about: "XTOL; T-MAX 100, size 135; rotary tube",
    energies: [72.1, 61],
    rows: [
      { temperatureC: 20, stockMin: 6, halfMin: 8.75, ratio: 1.458, n: 0.544 },
      { temperatureC: 21, stockMin: 5.25, halfMin: 8, ratio: 1.524, n: 0.608 },
      { temperatureC: 22, stockMin: 4.75, halfMin: 7.25, ratio: 1.526, n: 0.61 },
      { temperatureC: 24, stockMin: 4, halfMin: 6.25, ratio: 1.562, n: 0.644 },
    ],
  },
  {
    id: "DIL-017",
    source: F32,
    provenance: "read",
    about: "XTOL; T-MAX 100, size 120; rotary tube",
    energies: [76.1, 25.1],
    rows: [
      { temperatureC: 20, stockMin: 5.75, halfMin: 7.75, ratio: 1.348, n: 0.431 },
      { temperatureC: 21, stockMin: 5, halfMin: 7.5, ratio: 1.5, n: 0.585 },
      { temperatureC: 22, stockMin: 4.5, halfMin: 7.25, ratio: 1.611, n: 0.688 },
      { temperatureC: 24, stockMin: 3.75, halfMin: 6.75, ratio: 1.8, n: 0.848 },
    ],
  },
];

/** Pairs from one series of three strengths of pyro, alkali falling with the agent. */
export const pyroPairs: readonly (Published<{ readonly grainsPerOz: number; readonly minutes: number }> & {
  readonly exponent: number;
})[] = [
  {
    id: "DIL-004",
    source: SCHRIEVER,
    provenance: "read",
    about: "pyro-soda; plate; 65 °F",
    exponent: 1.322,
    rows: [
      { grainsPerOz: 2.5, minutes: 4 },
      { grainsPerOz: 1.25, minutes: 10 },
    ],
  },
  {
    id: "DIL-005",
    source: SCHRIEVER,
    provenance: "read",
    about: "pyro-soda; plate; 65 °F",
    exponent: 1.465,
    rows: [
      { grainsPerOz: 2.5, minutes: 4 },
      { grainsPerOz: 0.833, minutes: 20 },
    ],
  },
  {
    id: "DIL-006",
    source: SCHRIEVER,
    provenance: "read",
    about: "pyro-soda; plate; 65 °F",
    exponent: 1.71,
    rows: [
      { grainsPerOz: 1.25, minutes: 10 },
      { grainsPerOz: 0.833, minutes: 20 },
    ],
  },
];

/** The 24 °C rows of F-32 once more, both films side by side. */
export const rotaryAt24: Published<{
  readonly series: "T-MAX" | "T-MAX RS";
  readonly dilution: string;
  readonly film100: number;
  readonly film400: number;
}> = {
  id: "rotary-dilution-24c",
  source: F32,
  provenance: "read",
  about: "T-MAX and T-MAX RS; T-MAX 100 and 400; 75 °F",
  rows: [
    { series: "T-MAX", dilution: "1+4", film100: 5.5, film400: 5.5 },
    { series: "T-MAX", dilution: "1+7", film100: 10, film400: 10 },
    { series: "T-MAX", dilution: "1+9", film100: 11.5, film400: 11 },
    { series: "T-MAX", dilution: "1+15", film100: 13, film400: 14 },
    { series: "T-MAX RS", dilution: "1+4", film100: 5, film400: 5.5 },
    { series: "T-MAX RS", dilution: "1+7", film100: 8.5, film400: 7.5 },
    { series: "T-MAX RS", dilution: "1+9", film100: 10, film400: 8.5 },
  ],
};

/** Factors on time for a factor on dilution. */
export const timesPerDilution: readonly Published<{ readonly diluted: number; readonly time: number }>[] = [
  // Ives does not say for which dilution his 2 holds: twice the volume is an interpretation.
  {
    id: "DIL-001",
    source: IVES,
    provenance: "read",
    about: "pyro-metol; chlorhydroquinone-metol; aerial plate; 20 °C",
    rows: [
      { diluted: 2, time: 2 },
      { diluted: 2, time: 2 },
    ],
  },
  {
    id: "ives-1920-dilution",
    source: IVES,
    provenance: "read",
    about: "both developers of the table",
    rows: [{ diluted: 2, time: 2 }],
  },
  {
    id: "DIL-002",
    source: "L. P. Clerc, Photography: Theory and Practice, c. 1937, sec. 341",
    provenance: "read",
    about: "glycin; same exposure",
    rows: [
      { diluted: 2, time: 2 },
      { diluted: 3, time: 3 },
      { diluted: 10, time: 10 },
    ],
  },
];

/** Rules between two dilutions: a factor on time, or a range of it, with the n that it stands for. */
export const dilutionRules: readonly (Published<{
  readonly from: string;
  readonly to: string;
  readonly low: number;
  readonly high: number;
  readonly n: readonly [number, number];
}> & {
  readonly family: DilutionFamily;
})[] = [
  {
    id: "DIL-043",
    source: `${PRACTICE}: HC-110 dilution H`,
    provenance: "common practice",
    about: "twice the water, twice the time",
    family: "concentrate",
    rows: [{ from: "1+31", to: "1+63", low: 2, high: 2, n: [1, 1] }],
  },
  {
    id: "DIL-044",
    source: `${PRACTICE}: Rodinal`,
    provenance: "common practice",
    about: "p-aminophenol",
    family: "p-aminophenol",
    rows: [{ from: "1+25", to: "1+50", low: 1.5, high: 2, n: [0.602, 1.029] }],
  },
  {
    id: "DIL-045",
    source: `${PRACTICE}: D-76 and ID-11 1+1`,
    provenance: "common practice",
    about: "metol-hydroquinone-borax",
    family: "solvent-stock",
    rows: [{ from: "stock", to: "1+1", low: 1.3, high: 1.5, n: [0.379, 0.585] }],
  },
];

/** Four parts, the water last: how much weaker a tank bath of three stocks is than the tray bath. */
export const tankAgainstTray: Published<{ readonly dilution: string; readonly timesWeaker: number }> = {
  id: "DIL-010",
  source: "G. D. Hiscox (ed.), Henley’s Twentieth Century Formulas, Recipes and Processes, 1914, pp. 525-526",
  provenance: "read",
  about: "tolidol; plates",
  rows: [
    { dilution: "1+1+1+7", timesWeaker: 1 },
    { dilution: "1+1+1+35", timesWeaker: 3.8 },
  ],
};

/** The letters of one concentrate: parts of water to one of concentrate, H being a users’ name. */
export const letterDilutions: Published<{
  readonly letter: string;
  readonly water: number;
  readonly partsPerA: number;
}> = {
  id: "DIL-042",
  source: "Eastman Kodak, publication J-24, HC-110, n.d.",
  provenance: "from memory",
  about: "definition of dilutions; partsPerA: how many times A is diluted, our arithmetic on whole parts",
  rows: [
    { letter: "A", water: 15, partsPerA: 1 },
    { letter: "B", water: 31, partsPerA: 2 },
    { letter: "C", water: 19, partsPerA: 1.25 },
    { letter: "D", water: 39, partsPerA: 2.5 },
    { letter: "E", water: 47, partsPerA: 3 },
    { letter: "F", water: 79, partsPerA: 5 },
    { letter: "H", water: 63, partsPerA: 4 },
  ],
};

/**
 * The furthest dilution that the maker lists for each developer; past it the law of its table only carries
 * on.
 */
export const furthestDilution: Published<{
  readonly developer: string;
  readonly furthest: string;
  readonly further: string;
  readonly series: string;
}> = {
  id: "DIL-019",
  source: F32,
  provenance: "read",
  about: "footnote: do not dilute further than listed",
  rows: [
    { developer: "T-MAX", furthest: "1+15", further: "1+16", series: "DIL-011" },
    { developer: "T-MAX RS", furthest: "1+9", further: "1+10", series: "DIL-013" },
    { developer: "XTOL", furthest: "1+1", further: "1+2", series: "DIL-015" },
  ],
};

/** The least stock or concentrate for a roll of 80 square inches, ml. */
export const leastStock: readonly Published<{
  readonly family: DilutionFamily;
  readonly dilution: string;
  readonly mlPerRoll: number;
}>[] = [
  {
    id: "DIL-046",
    source: "Eastman Kodak, publication J-109, XTOL, n.d.",
    provenance: "from memory",
    about: "XTOL, diluted",
    rows: [{ family: "ascorbate-stock", dilution: "1+1", mlPerRoll: 100 }],
  },
  {
    id: "DIL-047",
    source: `${PRACTICE}: the least concentrate for a roll`,
    provenance: "common practice",
    about: "HC-110; Rodinal, the old maker’s figure (many users work with 3 to 5 ml)",
    rows: [
      { family: "concentrate", dilution: "1+31", mlPerRoll: 6 },
      { family: "p-aminophenol", dilution: "1+50", mlPerRoll: 10 },
    ],
  },
  // A roll in 237 ml of 1+1 holds 118.5 ml of stock, at 10 % more time; the handbook module prints 118.
  {
    id: "DIL-048",
    source: "Eastman Kodak, publication J-78, D-76, n.d.",
    provenance: "from memory",
    about: "D-76 1+1, one roll in 237 ml",
    rows: [{ family: "solvent-stock", dilution: "1+1", mlPerRoll: 118.5 }],
  },
];

export const dilutionNotUsed: readonly NotUsed[] = [
  {
    ids: ["DIL-003"],
    reason: "a direction without a number: time grows more than dilution where air destroys the agent",
  },
  { ids: ["DIL-007", "DIL-008"], reason: "times and factors of appearance: the inspection module" },
  { ids: ["DIL-009"], reason: "two developers at one dilution each" },
  { ids: ["DIL-049"], reason: "the mass of a volume of concentrate: the brew module" },
];
