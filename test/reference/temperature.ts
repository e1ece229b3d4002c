/*
 * Published figures on temperature: time-temperature tables, coefficients, factors and
 * limits, each with its source.
 */
import { IVES, type NotUsed, type Published } from "./published.js";

export const F32 =
  "Eastman Kodak Company, Publication F-32, T-MAX 100 and 400 Professional Films, n.d., part 2, table of rotary-tube processing, rolls";
const TO33B =
  "US Air Force, Army and Navy, T.O. 33B-1-1 / TM 1-1500-335-23, Nondestructive Inspection Methods, n.d., table 6-16, p. 6-75";
const FACT_SHEETS = "Ilford/Harman Technology, film fact sheets, n.d., paragraph on other temperatures";
const F9 = "Eastman Kodak Company, Publication F-9, TRI-X Pan, n.d., small-tank table";
const LISTS = "thermo-development coefficient lists (Watkins, Wall, later handbooks), n.d.";
const WALL_1910 =
  "E. J. Wall, Thermo-Entwicklung, Jahrbuch für Photographie und Reproduktionstechnik 24, 1910, p. 44";
const SS0509 = "US Army, correspondence subcourse SS0509, n.d., lesson 1, p. 13";

/** A time-temperature table: equal contrast at each row. */
export interface TimeTable extends Published<{ readonly temperature: number; readonly minutes: number }> {
  readonly unit: "F" | "C";
  /** half the step to which the times are rounded, min: what a law may miss a row by */
  readonly halfStepMin: number;
  /**
   * The rate ratio over 10 °C worked out from the printed rows by whoever collected them, apart from this
   * package: from the end rows, from a straight line of ln t on °C, and the range within which every row is
   * met to its rounding.
   */
  readonly ratioPer10C: {
    readonly endPoints: number;
    readonly fit: number;
    readonly withinRounding?: readonly [number, number];
  };
  /**
   * where the least-squares law misses a row by more than `halfStepMin`: the worst row's miss, min, as
   * measured here
   */
  readonly fitMissesByMin?: number;
}

/**
 * The tables. F-32 rounds to a quarter or half minute (its own note); the x-ray table prints quarters; the
 * tables from memory print half minutes. F-32 prints °F first and °C rounded, so °F stands here. One cell of
 * F-32, HC-110 B on T-MAX 100 at 75 °F, has lost its whole number in the copy read and is left out.
 */
export const timeTables: readonly TimeTable[] = [
  {
    id: "rotary-concentrate-a-film-100",
    source: F32,
    provenance: "read",
    about: "T-MAX 1+4; T-MAX 100",
    unit: "F",
    halfStepMin: 0.25,
    ratioPer10C: { endPoints: 1.54, fit: 1.59, withinRounding: [1.36, 1.9] },
    rows: [
      { temperature: 68, minutes: 6.5 },
      { temperature: 70, minutes: 6.5 },
      { temperature: 72, minutes: 6 },
      { temperature: 75, minutes: 5.5 },
    ],
  },
  {
    id: "rotary-concentrate-a-film-400",
    source: F32,
    provenance: "read",
    about: "T-MAX 1+4; T-MAX 400",
    unit: "F",
    halfStepMin: 0.25,
    ratioPer10C: { endPoints: 1.54, fit: 1.59, withinRounding: [1.36, 1.9] },
    rows: [
      { temperature: 68, minutes: 6.5 },
      { temperature: 70, minutes: 6.5 },
      { temperature: 72, minutes: 6 },
      { temperature: 75, minutes: 5.5 },
    ],
  },
  {
    id: "rotary-concentrate-b-film-100",
    source: F32,
    provenance: "read",
    about: "T-MAX RS 1+4; T-MAX 100",
    unit: "F",
    halfStepMin: 0.25,
    ratioPer10C: { endPoints: 2.37, fit: 2.37, withinRounding: [1.91, 2.84] },
    rows: [
      { temperature: 68, minutes: 7 },
      { temperature: 70, minutes: 6.5 },
      { temperature: 72, minutes: 6 },
      { temperature: 75, minutes: 5 },
    ],
  },
  {
    id: "rotary-concentrate-b-film-400",
    source: F32,
    provenance: "read",
    about: "T-MAX RS 1+4; T-MAX 400",
    unit: "F",
    halfStepMin: 0.25,
    ratioPer10C: { endPoints: 1.54, fit: 1.55, withinRounding: [1.46, 1.72] },
    // 5.5 min stands at 72 and at 75 °F: at the edge of the rounding
    fitMissesByMin: 0.253,
    rows: [
      { temperature: 68, minutes: 6.5 },
      { temperature: 70, minutes: 6 },
      { temperature: 72, minutes: 5.5 },
      { temperature: 75, minutes: 5.5 },
    ],
  },
  {
    id: "rotary-ascorbate-stock-film-100",
    source: F32,
    provenance: "read",
    about: "XTOL stock; T-MAX 100, size 135",
    unit: "F",
    halfStepMin: 0.125,
    ratioPer10C: { endPoints: 2.84, fit: 2.8, withinRounding: [2.49, 3.24] },
    rows: [
      { temperature: 68, minutes: 6 },
      { temperature: 70, minutes: 5.25 },
      { temperature: 72, minutes: 4.75 },
      { temperature: 75, minutes: 4 },
    ],
  },
  {
    id: "rotary-ascorbate-half-film-100",
    source: F32,
    provenance: "read",
    about: "XTOL 1+1; T-MAX 100, size 135",
    unit: "F",
    halfStepMin: 0.125,
    ratioPer10C: { endPoints: 2.37, fit: 2.38, withinRounding: [2.18, 2.59] },
    rows: [
      { temperature: 68, minutes: 8.75 },
      { temperature: 70, minutes: 8 },
      { temperature: 72, minutes: 7.25 },
      { temperature: 75, minutes: 6.25 },
    ],
  },
  {
    id: "rotary-borax-film-100",
    source: F32,
    provenance: "read",
    about: "D-76 stock; T-MAX 100",
    unit: "F",
    halfStepMin: 0.25,
    ratioPer10C: { endPoints: 1.96, fit: 1.97, withinRounding: [1.57, 2.46] },
    rows: [
      { temperature: 68, minutes: 6.5 },
      { temperature: 70, minutes: 6 },
      { temperature: 72, minutes: 5.5 },
      { temperature: 75, minutes: 5 },
    ],
  },
  {
    id: "rotary-borax-film-400",
    source: F32,
    provenance: "read",
    about: "D-76 stock; T-MAX 400",
    unit: "F",
    halfStepMin: 0.25,
    ratioPer10C: { endPoints: 1.86, fit: 1.87, withinRounding: [1.52, 2.29] },
    rows: [
      { temperature: 68, minutes: 7 },
      { temperature: 70, minutes: 6.5 },
      { temperature: 72, minutes: 6 },
      { temperature: 75, minutes: 5.5 },
    ],
  },
  {
    id: "rotary-syrup-film-100",
    source: F32,
    provenance: "read",
    about: "HC-110 dilution B; T-MAX 100",
    unit: "F",
    halfStepMin: 0.25,
    ratioPer10C: { endPoints: 2.12, fit: 2.12, withinRounding: [1.46, 3.1] },
    rows: [
      { temperature: 68, minutes: 6.5 },
      { temperature: 70, minutes: 6 },
      { temperature: 72, minutes: 5.5 },
    ],
  },
  {
    id: "rotary-syrup-film-400",
    source: F32,
    provenance: "read",
    about: "HC-110 dilution B; T-MAX 400",
    unit: "F",
    halfStepMin: 0.25,
    ratioPer10C: { endPoints: 1.6, fit: 1.61, withinRounding: [1.51, 1.81] },
    // 5 min stands at 72 and at 75 °F: at the edge of the rounding
    fitMissesByMin: 0.252,
    rows: [
      { temperature: 68, minutes: 6 },
      { temperature: 70, minutes: 5.5 },
      { temperature: 72, minutes: 5 },
      { temperature: 75, minutes: 5 },
    ],
  },
  {
    id: "xray-to33b-normal",
    source: TO33B,
    provenance: "read",
    about: "manual x-ray developer; industrial x-ray film; column of normal times",
    unit: "F",
    halfStepMin: 0.125,
    ratioPer10C: { endPoints: 1.91, fit: 1.92 },
    // 4 min at 72 °F is 6 % below the law of the column; no law meets all rows to 1/8 min
    fitMissesByMin: 0.245,
    rows: [
      { temperature: 80, minutes: 3.25 },
      { temperature: 76, minutes: 3.75 },
      { temperature: 72, minutes: 4 },
      { temperature: 70, minutes: 4.5 },
      { temperature: 68, minutes: 5 },
      { temperature: 65, minutes: 5.5 },
      { temperature: 63, minutes: 6 },
    ],
  },
  {
    id: "xray-to33b-max",
    source: TO33B,
    provenance: "read",
    about: "manual x-ray developer; industrial x-ray film; column of longest times",
    unit: "F",
    halfStepMin: 0.125,
    ratioPer10C: { endPoints: 1.47, fit: 1.47 },
    // no law: the other column plus 3 min
    fitMissesByMin: 0.28,
    rows: [
      { temperature: 80, minutes: 6.25 },
      { temperature: 76, minutes: 6.75 },
      { temperature: 72, minutes: 7 },
      { temperature: 70, minutes: 7.5 },
      { temperature: 68, minutes: 8 },
      { temperature: 65, minutes: 8.5 },
      { temperature: 63, minutes: 9 },
    ],
  },
  {
    id: "memory-chart-example",
    source: FACT_SHEETS,
    provenance: "from memory",
    about: "any of the maker’s developers and films; worked example of the chart",
    unit: "C",
    halfStepMin: 0.25,
    ratioPer10C: { endPoints: 2.69, fit: 2.7 },
    rows: [
      { temperature: 16, minutes: 6 },
      { temperature: 20, minutes: 4 },
      { temperature: 23, minutes: 3 },
    ],
  },
  {
    id: "memory-tank-borax",
    source: F9,
    provenance: "from memory",
    about: "D-76; TRI-X Pan; small tank, agitation every 30 s",
    unit: "F",
    halfStepMin: 0.25,
    ratioPer10C: { endPoints: 2.42, fit: 2.44 },
    // the step from 72 to 75 °F is larger than the others
    fitMissesByMin: 0.311,
    rows: [
      { temperature: 65, minutes: 9 },
      { temperature: 68, minutes: 8 },
      { temperature: 70, minutes: 7.5 },
      { temperature: 72, minutes: 6.5 },
      { temperature: 75, minutes: 5.5 },
    ],
  },
  {
    id: "memory-tank-borax-half",
    source: F9,
    provenance: "from memory",
    about: "D-76 1+1; TRI-X Pan; small tank, agitation every 30 s",
    unit: "F",
    halfStepMin: 0.25,
    ratioPer10C: { endPoints: 1.77, fit: 1.75 },
    rows: [
      { temperature: 65, minutes: 11 },
      { temperature: 68, minutes: 10 },
      { temperature: 70, minutes: 9.5 },
      { temperature: 72, minutes: 9 },
      { temperature: 75, minutes: 8 },
    ],
  },
  {
    id: "memory-tank-metaborate-half",
    source: F9,
    provenance: "from memory",
    about: "DK-50 1+1; TRI-X Pan; small tank, agitation every 30 s",
    unit: "F",
    halfStepMin: 0.25,
    ratioPer10C: { endPoints: 2.21, fit: 2.22 },
    rows: [
      { temperature: 65, minutes: 7 },
      { temperature: 68, minutes: 6 },
      { temperature: 70, minutes: 5.5 },
      { temperature: 72, minutes: 5 },
      { temperature: 75, minutes: 4.5 },
    ],
  },
];

/** A printed coefficient: time at a temperature over time `intervalC` warmer. */
export type Coefficient = Published<{ readonly ratio: number; readonly intervalC: number }> & {
  readonly developer: string;
};

export const coefficients: readonly Coefficient[] = [
  {
    id: "ives-1920-tc-pyrometol",
    source: IVES,
    provenance: "read",
    about: "pyro-metol with carbonate; aerial plate; factor on time for 7 °C either side of 20 °C",
    developer: "pyro-metol",
    rows: [{ ratio: 1.4, intervalC: 7 }],
  },
  {
    id: "ives-1920-tc-chlorhq",
    source: IVES,
    provenance: "read",
    about:
      "chlorhydroquinone-metol with carbonate and hydroxide; aerial plate; factor on time for 7 °C either side of 20 °C",
    developer: "chlorhydroquinone-metol",
    rows: [{ ratio: 2, intervalC: 7 }],
  },
  {
    id: "memory-tc-metol",
    source: LISTS,
    provenance: "from memory, uncertain",
    about: "metol; plate",
    developer: "metol",
    rows: [{ ratio: 1.25, intervalC: 10 }],
  },
  {
    id: "memory-tc-pyro-nobr",
    source: LISTS,
    provenance: "from memory, uncertain",
    about: "pyro-soda without bromide; plate",
    developer: "pyro",
    rows: [{ ratio: 1.5, intervalC: 10 }],
  },
  {
    id: "memory-tc-pyro-br",
    source: LISTS,
    provenance: "from memory, uncertain",
    about: "pyro-soda with bromide; plate",
    developer: "pyro",
    rows: [{ ratio: 1.9, intervalC: 10 }],
  },
  {
    id: "memory-tc-mq",
    source: LISTS,
    provenance: "from memory, uncertain",
    about: "metol-hydroquinone; plate",
    developer: "metol-hydroquinone",
    rows: [{ ratio: 1.9, intervalC: 10 }],
  },
  {
    id: "memory-tc-hq",
    source: LISTS,
    provenance: "from memory, uncertain",
    about: "hydroquinone; plate",
    developer: "hydroquinone",
    rows: [{ ratio: 2.25, intervalC: 10 }],
  },
  {
    id: "memory-tc-glycin",
    source: LISTS,
    provenance: "from memory, uncertain",
    about: "glycin; plate",
    developer: "glycin",
    rows: [{ ratio: 2.3, intervalC: 10 }],
  },
  {
    id: "memory-tc-p-aminophenol",
    source: LISTS,
    provenance: "from memory, uncertain",
    about: "p-aminophenol; plate",
    developer: "p-aminophenol",
    rows: [{ ratio: 1.9, intervalC: 10 }],
  },
];

/**
 * Two times of appearance that give a coefficient; the log10 of the ratio per °C is printed as 0.037, cut
 * after these digits.
 */
export const wallAppearance: Published<{ readonly temperatureC: number; readonly seconds: number }> & {
  readonly log10PerDegree: number;
} = {
  id: "wall-1910-appearance-example",
  source: WALL_1910,
  provenance: "read",
  about: "metol-hydroquinone; one exposed plate cut in half; first appearance",
  log10PerDegree: 0.037,
  rows: [
    { temperatureC: 8, seconds: 70 },
    { temperatureC: 20, seconds: 25 },
  ],
};

/** K25/K15: the velocity constant at 25 °C over that at 15 °C. */
export const meesDefinition: Published<{ readonly lowC: number; readonly highC: number }> = {
  id: "mees-1911-tc-definition",
  source:
    "C. E. K. Mees, Zeitentwicklung, Jahrbuch für Photographie und Reproduktionstechnik 25, 1911, p. 170",
  provenance: "read",
  about: "definition of the temperature coefficient",
  rows: [{ lowC: 15, highC: 25 }],
};

/** Velocity at (10 + x) °C is k b^x: the coefficient over 10 °C is b^10 whatever the temperature. */
export const fergusonHoward: Published<{ readonly intervalC: number }> = {
  id: "ferguson-howard-1905-law",
  source:
    "Ferguson and Howard, 1905, as reported in the French Wikibooks on monochrome development, section on the thermal coefficient",
  provenance: "read",
  about: "time to a given gamma",
  rows: [{ intervalC: 10 }],
};

/** k(T + 10)/k(T) of reactions in a homogeneous medium, 10 to 50 °C. */
export const homogeneous: Published<{
  readonly min: number;
  readonly max: number;
  readonly lowC: number;
  readonly highC: number;
}> = {
  id: "sheppard-mees-homogeneous",
  source:
    "Sheppard and Mees, as reported in the French Wikibooks on monochrome development, n.d., section on the thermal coefficient",
  provenance: "read",
  about: "chemical reactions in a homogeneous medium",
  rows: [{ min: 2, max: 3, lowC: 10, highC: 50 }],
};

/** Factors on the time at 16 °C, printed to one decimal. */
export const autochromeFactors: Published<{ readonly temperatureC: number; readonly factor: number }> = {
  id: "screen-plate-pyro-ammonia-factors",
  source: "Practical Color Photography, attributed to E. J. Wall, n.d., Screen-Plates, part 4",
  provenance: "read",
  about: "pyro-ammonia; autochrome and other screen plates; normal 16 °C",
  rows: [
    { temperatureC: 10, factor: 1.6 },
    { temperatureC: 16, factor: 1 },
    { temperatureC: 20, factor: 0.8 },
    { temperatureC: 25, factor: 0.6 },
  ],
};

/** The range of ratios of rate over 10 °C that a secondary account quotes. */
export const quotedRange: Published<{ readonly low: number; readonly high: number }> = {
  id: "EV-TMP-06",
  source: "R. Bijster, Understanding the effect of temperature in film development, 2018",
  provenance: "read",
  about: "secondary account; a check of width only",
  rows: [{ low: 1.5, high: 4 }],
};

/** Hydroquinone minds a slight change of temperature much more than pyro does. */
export const orderOfAgents: Published<{ readonly more: string; readonly less: string }> = {
  id: "EV-TMP-04",
  source: "G. D. Hiscox (ed.), Henley’s Twentieth Century Formulas, Recipes and Processes, 1914, p. 526",
  provenance: "read",
  about: "hydroquinone with caustic potash, against pyro",
  rows: [{ more: "hydroquinone", less: "pyro" }],
};

/** The rule of thumb: ten per cent of the time for each °C. */
export const tenPercentRule: Published<{ readonly percentPerC: number }> = {
  id: "rule-10-percent",
  source: "(Boussat), Cours de photographie à l’usage des amateurs et des clubs, n.d., 7.2.3",
  provenance: "read",
  about: "films; rule of thumb",
  rows: [{ percentPerC: 10 }],
};

/**
 * Single times at 65 °F; the DK-50 one meets the table of memory-tank-metaborate-half, which was not seen in print.
 */
export const armyTimes: Published<{
  readonly developer: string;
  readonly temperatureF: number;
  readonly minutes: number;
}> = {
  id: "army-ss0509",
  source: SS0509,
  provenance: "read",
  about: "film not named; small tank presumably",
  rows: [
    { developer: "Microdol-X", temperatureF: 65, minutes: 10 },
    { developer: "DK-50 1+1", temperatureF: 65, minutes: 7 },
  ],
};

/**
 * What 0.3 °C of tolerance is worth in per cent of time, by the ratio over 10 °C: arithmetic, whatever the
 * tolerance.
 */
export const toleranceArithmetic: Published<{ readonly ratio: number; readonly percent: number }> = {
  id: "memory-tolerance",
  source: "Eastman Kodak Company, processing specifications for motion-picture film, n.d.",
  provenance: "from memory, uncertain",
  about: "tolerance of 0.3 °C at 70 °F",
  rows: [
    { ratio: 1.5, percent: 1.2 },
    { ratio: 1.9, percent: 1.9 },
    { ratio: 2.5, percent: 2.8 },
    { ratio: 4, percent: 4.2 },
  ],
};

/** A temperature and what our cautions must say of it, read as "inside" or "outside" a published limit. */
export interface LimitPoint {
  readonly temperature: number;
  readonly unit: "F" | "C";
  readonly says: "nothing" | "unusual" | "limit" | "hydroquinone" | "no soft-emulsion caution";
}

/** Published limits of temperature, as points at and just beyond them. */
export const limits: readonly Published<LimitPoint>[] = [
  {
    id: "ives-1920-limits",
    source: IVES,
    provenance: "read",
    about: "development controllable without serious damage from 4 to 32 °C",
    rows: [
      { temperature: 3.9, unit: "C", says: "limit" },
      { temperature: 4, unit: "C", says: "unusual" },
      { temperature: 32, unit: "C", says: "unusual" },
      { temperature: 32.1, unit: "C", says: "limit" },
    ],
  },
  {
    id: "army-ss0509-limits",
    source: SS0509,
    provenance: "read",
    about: "68 to 75 °F recommended, to 80 °F with care, below 65 °F inconveniently long",
    rows: [
      { temperature: 68, unit: "F", says: "nothing" },
      { temperature: 75, unit: "F", says: "nothing" },
      { temperature: 80, unit: "F", says: "unusual" },
      { temperature: 64, unit: "F", says: "unusual" },
    ],
  },
  {
    id: "navy-14209",
    source: "US Navy, NAVEDTRA 14209, Photography (Basic), n.d., pp. 10-15, 10-16",
    provenance: "read",
    about: "normal 68 °F, one modern film 75 °F",
    rows: [
      { temperature: 68, unit: "F", says: "nothing" },
      { temperature: 75, unit: "F", says: "nothing" },
    ],
  },
  {
    id: "schriever-temp",
    source:
      "J. B. Schriever (ed.), Complete Self-Instructing Library of Practical Photography, Scranton, 1909, par. 452",
    provenance: "read",
    about: "normal 65 °F",
    rows: [{ temperature: 65, unit: "F", says: "nothing" }],
  },
  {
    id: "xray-german-best-temp",
    source: "German radiography handbook (TIB, PPN 1686551908), n.d., images 132 and 190",
    provenance: "read",
    about: "metol-hydroquinone x-ray developer; best at 18 °C",
    rows: [{ temperature: 18, unit: "C", says: "nothing" }],
  },
  {
    id: "tm11-2323-cold",
    source: "US Army, TM 11-2323, n.d., section 33",
    provenance: "read",
    // The manual still develops there, at full strength: our "stop" below 13 °C is the stricter.
    about:
      "D-72, which holds hydroquinone, undiluted at or below 55 °F; its fixing and washing rules belong to the process module",
    rows: [{ temperature: 55, unit: "F", says: "hydroquinone" }],
  },
  {
    id: "EV-TMP-03",
    source: "household encyclopaedia, Photography: Development of the Negative, n.d., part 3",
    provenance: "read",
    about: "the action of hydroquinone and ortol practically ceases at 55 °F",
    rows: [{ temperature: 55, unit: "F", says: "hydroquinone" }],
  },
  {
    id: "screen-plate-limit",
    source: "French Ministry of Culture, Autochromes Lumière, n.d., page on processing",
    provenance: "read",
    about: "autochrome plate, solutions kept from 15 to 18 °C so that the thin emulsion is not weakened",
    rows: [
      { temperature: 15, unit: "C", says: "no soft-emulsion caution" },
      { temperature: 18, unit: "C", says: "no soft-emulsion caution" },
    ],
  },
];

/** Records of the temperature file that no check here uses. */
export const temperatureNotUsed: readonly NotUsed[] = [
  {
    ids: [
      "screen-plate-standard-time",
      "screen-plate-standard-time-2",
      "plate-maker-tank",
      "xray-asm17",
      "xray-german-normal",
    ],
    reason: "a time at one temperature: no law can be drawn from it",
  },
  {
    ids: ["xray-two-baths"],
    reason: "two developers under two agitations: no law of temperature can be drawn from the two rows",
  },
  {
    ids: ["wall-1910-method", "wall-dictionary-season"],
    reason: "no temperatures: a premise, and twice as long in winter",
  },
  {
    ids: ["eder-1883-oxalate"],
    reason: "readings of a sensitometer at fixed times, not times of equal contrast",
  },
  {
    ids: ["memory-tropical-hardener"],
    reason: "hardening slows development, so the percentages are no law of temperature",
  },
  { ids: ["memory-gelatin"], reason: "from memory and uncertain: orders of magnitude only" },
  { ids: ["memory-sulphate"], reason: "an addition to the bath: a matter of recipes; uncertain" },
  {
    ids: ["plate-maker-temp", "step-between-baths"],
    reason: "lantern plates with a restrainer; the largest step between baths: the process module",
  },
  {
    ids: [
      "ives-1920-wf-pyrometol",
      "ives-1920-wf-chlorhq",
      "cassell-1911-wf-amidol",
      "cassell-1911-wf-edinol",
      "cassell-1911-wf-eikonogen",
      "cassell-1911-wf-glycin",
      "cassell-1911-wf-metol",
      "cassell-1911-wf-p-aminophenol",
      "cassell-1911-wf-pyro",
      "cassell-1911-wf-mix-equal",
      "cassell-1911-wf-mix-weighted",
      "cassell-1911-wf-example",
      "abbott-wf-list",
      "abbott-wf-example",
      "wall-dictionary-claim",
      "schriever-wf-12",
      "schriever-wf-24",
      "schriever-wf-40",
      "schriever-wf-rule",
      "german-wf-caveat",
      "memory-watkins-list",
      "memory-watkins-pyro",
    ],
    reason: "factors on the time of appearance: the inspection module",
  },
  {
    ids: [
      "ives-1920-gamma-pyrometol",
      "ives-1920-gamma-chlorhq",
      "ives-1920-aerial-spec",
      "ives-1920-inertia-invariance",
      "mees-1911-growth-law",
      "contrast-adjust",
      "memory-nietz-form",
      "memory-hd-ratio",
      "memory-two-point-k",
    ],
    reason: "growth of contrast with time: the contrast module",
  },
];
