import { Z90 } from "../core/estimate.js";
import { inRange, notOneOf, plainObject } from "../core/guards.js";
import { agentsOf, gramsPerL, solveBrew } from "./solveBrew.js";
import { readBrew, type DeveloperBrew, type ReadBrew } from "./brew.js";
import { vessels, type ProcessVessel } from "../handbook/process.js";

/** How the brew waits: what decides how much air gets at it. */
export interface BrewLifeOptions {
  /** depth of the bath in an open vessel, mm, 1 to 1000; 10 when left out */
  readonly depthMm?: number | undefined;
  /** a tank is closed and counts twice; `"tray"` when left out, as a drum does too */
  readonly vessel?: ProcessVessel | undefined;
}

/** The life of a brew from mixing, in hours, with its range. */
export interface BrewLife {
  /** the likely life, h */
  readonly lifeH: number;
  /** ends of the 90 % interval */
  readonly lowH: number;
  /** the longest, h */
  readonly highH: number;
  /** standard deviation of ln(life) */
  readonly logSd: number;
  readonly basis: "default";
  /** what the estimate rests on */
  readonly sources: readonly string[];
}

/** An open dish of 57 mmol/l of alkaline vitamin C lives 2 to 2.5 h; the lower end is taken. */
const DATUM_H = 2;
const DATUM_MMOL_PER_L = 57;
/** Longest life of an open brew without sulphite, and with 100 g/l of it (common practice), h. */
const CAP_H = 3;
const CAP_SULPHITE_H = 24;
const CAP_SULPHITE_G_PER_L = 100;
/** Oxygen that a gram of coffee solids takes up, in mmol of agent; it gives coffee alone 1.5 h (assumed). */
const COFFEE_MMOL_PER_G = 1.07;
/** Decades of rate for each unit of pH, measured from pH 6.8 to 9.2. */
const DECADES_PER_PH = 0.43;

const SOURCES: readonly string[] = [
  "Shinkawa Photographic Laboratory, 2015: strips every half hour (57 mmol/l of alkaline vitamin C, 2 to " +
    "2.5 h)",
  "X. M. Shu, Kinetics research on the oxidation of L-ascorbic acid, 2007 (abstract): 0.43 decades per pH",
  "common practice: use within the hour; sulphite keeps a bath for a day",
];

/**
 * How long a brew lives in the air, from the moment it is mixed.
 *
 * @param brew - the brew, as for {@link brewPh}
 * @param options - depth of the bath, 1 to 1000 mm, and the vessel
 * @returns the life in hours with its 90 % interval; 0 when nothing in it develops
 * @throws TypeError when something is of the wrong kind
 * @throws RangeError for a brew that {@link brewPh} refuses, or a depth or vessel out of range
 *
 * @remarks life = min(cap, 2 h × N/57) × min(3, 10^(0.43 max(0, 10 − pH))) × depth. N in mmol/l is the
 * ascorbate, 1.07 for each gram of coffee solids, and half the sulphite. The cap is 3 h and rises to 24 h at
 * 100 g/l of sulphite (common practice). Depth counts as depth/10 mm from 0.5 to 3, and twice in a tank
 * (assumed). A factor of 2 each way is the 90 % interval; 3 below 2 g/l of vitamin C. The measured life and
 * the slope hold in different regimes: without the cap their product gives 16 h, which practice contradicts.
 * Not covered: warmth, stirring, copper or iron in the water.
 *
 * @example
 * ```ts
 * const soda: BrewPart = { ingredient: "soda-anhydrous", massG: 54 };
 * const coffee: BrewPart = { ingredient: "instant-coffee", massG: 40 };
 * brewLife({ volumeMl: 1000, ingredients: [soda, coffee] }).lifeH // => 1.5
 * ```
 */
export function brewLife(brew: DeveloperBrew, options: BrewLifeOptions = {}): BrewLife {
  const read = readBrew("brewLife/brew", brew);
  const { depthMm = 10, vessel = "tray" } = plainObject("brewLife/options", options);
  const depth = inRange("brewLife/options/depthMm", depthMm, 1, 1000) / 10;
  if (vessel !== "tank" && vessel !== "tray" && vessel !== "drum")
    notOneOf("brewLife/options/vessel", vessels, vessel);
  const lifeH =
    openLife(read, solveBrew(read).ph) * Math.min(3, Math.max(0.5, depth)) * (vessel === "tank" ? 2 : 1);
  const vitaminC = agentsOf(read).ascorbate * VITAMIN_C_G_PER_MOL;
  const logSd = Math.log(vitaminC < 2 ? 3 : 2) / Z90;
  const spread = Math.exp(Z90 * logSd);
  return { lifeH, lowH: lifeH / spread, highH: lifeH * spread, logSd, basis: "default", sources: SOURCES };
}

const VITAMIN_C_G_PER_MOL = 176.124;

/** The life 10 mm deep in an open dish, h. */
function openLife(read: ReadBrew, ph: number): number {
  const { ascorbate, catechol } = agentsOf(read);
  if (!(ascorbate + catechol > 0)) return 0;
  const solids = gramsPerL(read, ({ data }) => data.solids?.value ?? 0);
  const sulphiteG = gramsPerL(read, ({ ingredient }) => (ingredient === "sodium-sulphite" ? 1 : 0));
  const sulphiteMmol = gramsPerL(
    read,
    ({ data }) => (1000 * (data.moles?.sulphite ?? 0)) / (data.molarMassGPerMol ?? 1),
  );
  const mmol = 1000 * ascorbate + COFFEE_MMOL_PER_G * solids + sulphiteMmol / 2;
  const capH = CAP_H + (CAP_SULPHITE_H - CAP_H) * Math.min(1, sulphiteG / CAP_SULPHITE_G_PER_L);
  return (
    Math.min(capH, (DATUM_H * mmol) / DATUM_MMOL_PER_L) *
    Math.min(3, 10 ** (DECADES_PER_PH * Math.max(0, 10 - ph)))
  );
}
