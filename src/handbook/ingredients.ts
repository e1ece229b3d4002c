/*
 * Module: handbook. What a cupboard holds, as typed data with sources: molar masses, what a mole brings into
 * the bath, loose densities for spoons, solubilities. "From memory" figures were not seen in print and are
 * ranged wide.
 */
import { frozen } from "../core/frozen.js";

/** A figure with the range it is published or remembered in. */
export interface HandbookRange {
  /** the least */
  readonly low: number;
  /** the usual one */
  readonly value: number;
  /** the most */
  readonly high: number;
}

/** What can be weighed or spooned into a brew. */
export type Ingredient =
  | "instant-coffee"
  | "decaffeinated-coffee"
  | "brewed-coffee"
  | "ascorbic-acid"
  | "ascorbic-acid-tablet"
  | "sodium-ascorbate"
  | "soda-anhydrous"
  | "soda-monohydrate"
  | "soda-heptahydrate"
  | "soda-decahydrate"
  | "baking-soda"
  | "borax"
  | "trisodium-phosphate"
  | "sodium-hydroxide"
  | "sodium-sulphite"
  | "potassium-bromide"
  | "table-salt"
  | "iodised-salt"
  | "potassium-carbonate"
  | "citric-acid";

/** What an ingredient may do to whoever handles it, by name; `docs/brew.md` says each in words. */
export type IngredientHazard =
  "burns" | "caustic-dust" | "fertility" | "irritant" | "swallowing" | "sulphur-dioxide";

/** What one mole of an ingredient brings into the bath, in moles. */
export interface IngredientMoles {
  /** strong cations that no strong anion balances */
  readonly sodium?: number;
  /** fully ionised salt that neither gives nor takes protons */
  readonly salt?: number;
  /** moles of carbonate */
  readonly carbonate?: number;
  /** moles of ascorbate */
  readonly ascorbate?: number;
  /** moles of borate */
  readonly borate?: number;
  /** moles of phosphate */
  readonly phosphate?: number;
  /** moles of sulphite */
  readonly sulphite?: number;
  /** moles of citrate */
  readonly citrate?: number;
}

/** One ingredient of the handbook. */
export interface IngredientData {
  /** plain name for labels and steps */
  readonly name: string;
  /** what it does in a brew */
  readonly role: "agent" | "alkali" | "restrainer" | "preservative" | "acid";
  /** as weighed, with its water of crystallisation; coffee has none */
  readonly molarMassGPerMol?: number;
  /** what one mole brings into the bath */
  readonly moles?: IngredientMoles;
  /** coffee only: dry coffee solids, g per g */
  readonly solids?: HandbookRange;
  /** loose density in g/ml; tablets have none */
  readonly bulkGPerMl?: HandbookRange;
  /** narrower loose densities where the grade is known */
  readonly grades?: Readonly<Record<string, HandbookRange>>;
  /**
   * °C and g per 100 g water; of dry soda for its hydrates, otherwise as weighed; none where a bath never
   * gets there
   */
  readonly solubility?: readonly (readonly [temperatureC: number, gPer100G: number])[];
  /** what it may do to whoever handles it */
  readonly hazard?: IngredientHazard;
  /** where the figures come from */
  readonly sources: readonly string[];
}

/** Molar mass of anhydrous sodium carbonate, g/mol. */
export const SODA_G_PER_MOL = 105.9875;
/** Molar mass of sodium bicarbonate, g/mol. */
export const BICARBONATE_G_PER_MOL = 84.0058;
/** Molar mass of ascorbic acid, g/mol. */
export const ASCORBIC_ACID_G_PER_MOL = 176.124;
/** Molar mass of water, g/mol. */
export const WATER_G_PER_MOL = 18.015;

/*
 * Short names of sources. IUPAC CIAAW: conventional atomic weights, summed. Gainer: grams per teaspoon,
 * tables I and II. Niochim, Soda ash: general information, loose density of both grades. Batali: dissolved
 * solids. CRC: CRC Handbook of Chemistry and Physics, solubilities, from memory. USDA: household weights,
 * nos. 14214 (1.0 g of instant coffee a level teaspoon), 14218 (1.8 g rounded), 18372 (4.6 g of baking soda),
 * 02047 (6.0 g of salt). The soda solubilities are from memory, within 4 % of two suppliers'
 * lists (17.7 wt % at 20 °C), their maximum of 49.7 g at 35.4 °C from a supplier's page of 2018; those of
 * baking soda are Seidell's as given by R. A. Kiper. Kitchen tables (kuhniperm.ru, ntro.it.com) give 2 g of
 * coffee a level teaspoon, 2.5 to 4 g heaped.
 */
const CIAAW = "IUPAC CIAAW 2021";
const USDA = "USDA Nutrient Database";
const GAINER = "P. Gainer, Vitamin C developer formulas";
const CRC = "CRC Handbook (from memory)";
const LOOSE = "density from memory";
const SODA_ASH = "Niochim, Soda ash";
const SODA_SOLUBILITY = "solubility from memory, within 4 % of suppliers' lists";

const range = (low: number, value: number, high: number): HandbookRange => ({ low, value, high });

/** What instant coffees share. */
const coffee = {
  role: "agent",
  solids: range(0.95, 0.97, 1),
  bulkGPerMl: range(0.18, 0.27, 0.42),
  grades: {
    "spray-dried": range(0.18, 0.23, 0.3),
    "agglomerated": range(0.2, 0.23, 0.27),
    "freeze-dried": range(0.18, 0.22, 0.26),
  },
  sources: [
    USDA,
    "How many grams of coffee (instant and ground) in one spoon?, kuhniperm.ru; How many grams is 1 tsp of " +
      "instant coffee?, ntro.it.com",
    LOOSE,
  ],
} as const;

/** What the hydrates of washing soda share. */
const soda = {
  role: "alkali",
  moles: { sodium: 2, carbonate: 1 },
  bulkGPerMl: range(0.75, 0.87, 1),
  solubility: [
    [0, 7],
    [10, 12.2],
    [20, 21.8],
    [25, 29.4],
    [30, 39.7],
    [35.4, 49.7],
    [40, 48.8],
    [50, 47.3],
  ],
  // GHS H319, eye irritation, on suppliers' data sheets of soda
  hazard: "irritant",
  sources: [CIAAW, SODA_ASH, LOOSE, SODA_SOLUBILITY],
} as const;

/** What ascorbic acid is, loose or in tablets. */
const ascorbicAcid = {
  role: "agent",
  molarMassGPerMol: ASCORBIC_ACID_G_PER_MOL,
  moles: { ascorbate: 1 },
} as const;

/** What plain and iodised salt share. */
const salt = {
  role: "restrainer",
  molarMassGPerMol: 58.4398,
  moles: { salt: 1 },
  bulkGPerMl: range(1.1, 1.22, 1.35),
  solubility: [
    [0, 35.6],
    [20, 35.9],
    [60, 37],
  ],
  sources: [CIAAW, USDA, CRC],
} as const;

/** The cupboard: every ingredient a brew may hold. */
export const handbookIngredients: Readonly<Record<Ingredient, IngredientData>> = /* @__PURE__ */ frozen({
  "instant-coffee": { ...coffee, name: "instant coffee" },
  "decaffeinated-coffee": { ...coffee, name: "decaffeinated instant coffee" },
  "brewed-coffee": {
    name: "strong brewed coffee",
    role: "agent",
    solids: range(0.01, 0.02, 0.04),
    bulkGPerMl: range(1, 1, 1.01),
    // ordinary brews: 0.8 to 1.6 % dissolved solids, twice that in a strong one assumed
    sources: ["Batali et al. 2021"],
  },
  "ascorbic-acid": {
    ...ascorbicAcid,
    name: "ascorbic acid (vitamin C)",
    bulkGPerMl: range(0.5, 0.82, 1.1),
    grades: { crystals: range(0.8, 0.92, 1.1), powder: range(0.5, 0.65, 0.8) },
    solubility: [[25, 33]],
    sources: [CIAAW, GAINER, LOOSE, CRC],
  },
  "ascorbic-acid-tablet": {
    ...ascorbicAcid,
    name: "plain vitamin C tablets",
    // a 500 mg tablet weighs 0.6 to 0.9 g (from memory), so the label counts
    sources: [CIAAW, "the label"],
  },
  "sodium-ascorbate": {
    name: "sodium ascorbate",
    role: "agent",
    molarMassGPerMol: 198.1058,
    moles: { sodium: 1, ascorbate: 1 },
    bulkGPerMl: range(0.5, 0.65, 0.9),
    solubility: [[25, 62]],
    sources: [CIAAW, GAINER, LOOSE, CRC],
  },
  "soda-anhydrous": {
    ...soda,
    name: "washing soda, anhydrous",
    molarMassGPerMol: SODA_G_PER_MOL,
    bulkGPerMl: range(0.5, 0.75, 1.1),
    // baked: from memory
    grades: { light: range(0.5, 0.6, 0.7), dense: range(0.9, 1.02, 1.1), baked: range(0.5, 0.6, 0.75) },
  },
  "soda-monohydrate": {
    ...soda,
    name: "washing soda, monohydrate",
    molarMassGPerMol: SODA_G_PER_MOL + WATER_G_PER_MOL,
    bulkGPerMl: range(0.8, 0.95, 1.2),
  },
  "soda-heptahydrate": {
    ...soda,
    name: "washing soda, heptahydrate",
    molarMassGPerMol: SODA_G_PER_MOL + 7 * WATER_G_PER_MOL,
  },
  "soda-decahydrate": {
    ...soda,
    name: "washing soda crystals, decahydrate",
    molarMassGPerMol: SODA_G_PER_MOL + 10 * WATER_G_PER_MOL,
  },
  "baking-soda": {
    name: "baking soda (bicarbonate)",
    role: "alkali",
    molarMassGPerMol: BICARBONATE_G_PER_MOL,
    moles: { sodium: 1, carbonate: 1 },
    bulkGPerMl: range(0.75, 0.93, 1.15),
    solubility: [
      [0, 6.9],
      [5, 7.41],
      [10, 8.2],
      [20, 9.6],
      [25, 10.4],
      [30, 11.1],
      [40, 12.7],
      [60, 16.4],
    ],
    sources: [CIAAW, USDA, GAINER, "R. A. Kiper after Seidell"],
  },
  "borax": {
    name: "borax",
    role: "alkali",
    molarMassGPerMol: 381.3625,
    moles: { sodium: 2, borate: 4 },
    bulkGPerMl: range(0.7, 0.83, 0.95),
    solubility: [
      [0, 2.1],
      [10, 3],
      [20, 4.9],
      [30, 7.6],
      [40, 13.7],
      [50, 23],
    ],
    hazard: "fertility",
    sources: [CIAAW, GAINER, CRC],
  },
  "trisodium-phosphate": {
    name: "trisodium phosphate, dodecahydrate",
    role: "alkali",
    molarMassGPerMol: 380.1191,
    moles: { sodium: 3, phosphate: 1 },
    bulkGPerMl: range(0.7, 0.9, 1.1),
    solubility: [
      [0, 13.5],
      [10, 21.3],
      [20, 33.4],
      [30, 48.1],
      [40, 63.8],
    ],
    hazard: "caustic-dust",
    sources: [CIAAW, LOOSE, CRC],
  },
  "sodium-hydroxide": {
    name: "sodium hydroxide (caustic soda)",
    role: "alkali",
    molarMassGPerMol: 39.9968,
    moles: { sodium: 1 },
    bulkGPerMl: range(0.8, 1.05, 1.3),
    hazard: "burns",
    sources: [CIAAW, LOOSE],
  },
  "sodium-sulphite": {
    name: "sodium sulphite, anhydrous",
    role: "preservative",
    molarMassGPerMol: 126.0365,
    moles: { sodium: 2, sulphite: 1 },
    bulkGPerMl: range(1, 1.3, 1.6),
    solubility: [
      [0, 14.4],
      [10, 19.5],
      [20, 26.3],
      [30, 35.5],
      [40, 37.2],
    ],
    hazard: "sulphur-dioxide",
    sources: [CIAAW, LOOSE, CRC],
  },
  "potassium-bromide": {
    name: "potassium bromide",
    role: "restrainer",
    molarMassGPerMol: 119.0023,
    moles: { salt: 1 },
    bulkGPerMl: range(1.2, 1.5, 1.8),
    solubility: [
      [0, 53.5],
      [20, 65],
      [60, 85],
    ],
    hazard: "swallowing",
    sources: [CIAAW, LOOSE, CRC],
  },
  "table-salt": { ...salt, name: "table salt" },
  // 20 to 75 mg of potassium iodide a kilogram (from memory), too little to count
  "iodised-salt": { ...salt, name: "iodised table salt" },
  // potassium counts as sodium: it is a strong cation all the same
  "potassium-carbonate": {
    name: "potassium carbonate (potash)",
    role: "alkali",
    molarMassGPerMol: 138.2046,
    moles: { sodium: 2, carbonate: 1 },
    bulkGPerMl: range(0.6, 0.9, 1.2),
    solubility: [
      [0, 105],
      [20, 111],
      [40, 117],
    ],
    hazard: "irritant",
    sources: [CIAAW, LOOSE, CRC],
  },
  "citric-acid": {
    name: "citric acid, anhydrous",
    role: "acid",
    molarMassGPerMol: 192.123,
    moles: { citrate: 1 },
    bulkGPerMl: range(0.7, 0.9, 1.1),
    solubility: [
      [0, 96],
      [20, 147],
      [40, 216],
    ],
    hazard: "irritant",
    sources: [CIAAW, LOOSE, CRC],
  },
});
