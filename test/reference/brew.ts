/*
 * Published figures against which the brew module is checked, typed in once, with their sources. Nothing here
 * is read by src.
 */

/** IUPAC CIAAW, Standard atomic weights, conventional values, 2021. */
export const ATOMIC_WEIGHTS: Readonly<Record<string, number>> = {
  H: 1.008,
  C: 12.011,
  O: 15.999,
  Na: 22.98976928,
  K: 39.0983,
  Cl: 35.45,
  Br: 79.904,
  B: 10.81,
  S: 32.06,
  P: 30.973761998,
};

/** Formulas as weighed: common chemical knowledge. */
export const FORMULAS = [
  ["ascorbic-acid", "C6 H8 O6"],
  ["ascorbic-acid-tablet", "C6 H8 O6"],
  ["sodium-ascorbate", "C6 H7 Na O6"],
  ["soda-anhydrous", "Na2 C O3"],
  ["soda-monohydrate", "Na2 C O3 H2 O"],
  ["soda-heptahydrate", "Na2 C O3 H14 O7"],
  ["soda-decahydrate", "Na2 C O3 H20 O10"],
  ["baking-soda", "Na H C O3"],
  ["borax", "Na2 B4 O7 H20 O10"],
  ["trisodium-phosphate", "Na3 P O4 H24 O12"],
  ["sodium-hydroxide", "Na O H"],
  ["sodium-sulphite", "Na2 S O3"],
  ["potassium-bromide", "K Br"],
  ["table-salt", "Na Cl"],
  ["iodised-salt", "Na Cl"],
  ["potassium-carbonate", "K2 C O3"],
  ["citric-acid", "C6 H8 O7"],
] as const;

/** Molar masses in print: supplier lists of soda (105.9888, 286.1416), R. A. Kiper (84.01, 124.004). */
export const PRINTED_MOLAR_MASSES = [
  ["soda-anhydrous", 105.9888, 0.002],
  ["soda-decahydrate", 286.1416, 0.005],
  ["baking-soda", 84.01, 0.005],
  ["soda-monohydrate", 124.004, 0.002],
] as const;

/**
 * pH(S) of the carbonate buffer, 0.025 m + 0.025 m: manual MI 611-211, 2005, table 7, p. 23, after the NBS.
 */
export const CARBONATE_BUFFER = [
  [0, 10.32],
  [5, 10.25],
  [10, 10.18],
  [15, 10.12],
  [20, 10.06],
  [25, 10.01],
  [30, 9.97],
  [35, 9.93],
  [40, 9.89],
  [45, 9.86],
  [50, 9.83],
] as const;

/**
 * R. G. Bates, J. Res. NBS 66A, 1962, p. 179 (third decimals from memory): 0.01 m borax; 0.025 m + 0.025 m
 * phosphate.
 */
export const BORAX_BUFFER = [
  [5, 9.395],
  [10, 9.332],
  [15, 9.276],
  [20, 9.225],
  [25, 9.18],
  [30, 9.139],
  [35, 9.102],
  [40, 9.068],
] as const;
export const PHOSPHATE_BUFFER = [
  [5, 6.951],
  [10, 6.923],
  [15, 6.9],
  [20, 6.881],
  [25, 6.865],
  [30, 6.853],
  [35, 6.844],
  [40, 6.838],
] as const;

/**
 * pH of soda at 25 °C by weight per cent, as several pages quote an encyclopaedia of chemical technology,
 * with grams a litre from the densities 1.0086, 1.0502 (between rows) and 1.1029 of the CRC Handbook (from
 * memory).
 */
export const SODA_PH = [
  [1, 10.086, 11.37],
  [5, 52.51, 11.58],
  [10, 110.29, 11.7],
] as const;

/**
 * Spoons in grams: USDA nos. 14214, 14218, 18372, 02047; P. Gainer, tables I and II; kuhniperm.ru;
 * ntro.it.com.
 */
export const SPOONS = [
  ["instant-coffee", "level", 4.92892159375, 1, "USDA 14214"],
  ["decaffeinated-coffee", "rounded", 4.92892159375, 1.8, "USDA 14218"],
  ["baking-soda", "level", 4.92892159375, 4.6, "USDA 18372"],
  ["table-salt", "level", 4.92892159375, 6, "USDA 02047"],
  ["ascorbic-acid", "level", 4.92892159375, 4, "Gainer"],
  ["sodium-ascorbate", "level", 4.92892159375, 3, "Gainer"],
  ["borax", "level", 4.92892159375, 4.07, "Gainer"],
  ["baking-soda", "level", 4.92892159375, 3.73, "Gainer"],
  ["instant-coffee", "level", 5, 2, "kuhniperm.ru"],
  ["instant-coffee", "heaped", 5, 3, "kuhniperm.ru"],
  ["instant-coffee", "heaped", 5, 4, "ntro.it.com, upper end"],
  ["instant-coffee", "heaped", 5, 2.5, "ntro.it.com, lower end"],
  ["instant-coffee", "level", 15, 6, "kuhniperm.ru, tablespoon"],
] as const;

/**
 * Solubility of dry soda, g per 100 g: Chemway (g per 100 ml, 15 and 27.8 °C), Niochim (17.7 wt % at 20 °C).
 */
export const SODA_SOLUBILITY = [
  [15, 16.4],
  [20, 21.5],
  [27.8, 34.07],
] as const;

/** Household recipes, g in so many ml. */
export const RECIPES = [
  {
    source: "kwerfeldein, Alles bio oder was?, 2012; the same per litre is common practice for films of 100",
    volumeMl: 400,
    soda: 21.6,
    ascorbic: 6.4,
    coffee: 16,
    bromide: 0,
  },
  {
    source: "common practice for fast films, with bromide",
    volumeMl: 1000,
    soda: 54,
    ascorbic: 16,
    coffee: 40,
    bromide: 1,
  },
  {
    source: "common practice for standing development (amounts from memory)",
    volumeMl: 1000,
    soda: 16,
    ascorbic: 10,
    coffee: 40,
    bromide: 1,
  },
  // Five heaped teaspoons of coffee and two level ones of soda in 300 ml, in grams by the spoons above.
  {
    source: "Bean Thinking, Developing, a new way to slow down with coffee",
    volumeMl: 300,
    soda: 7.5,
    ascorbic: 0,
    coffee: 15,
    bromide: 0,
  },
] as const;
