import { Z90 } from "../core/estimate.js";
import { inRange, notOneOf } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { agentsOf, gramsPerL, solveBrew } from "./solveBrew.js";
import { readBrew, type DeveloperBrew, type ReadBrew } from "./brew.js";
import { ASCORBIC_ACID_G_PER_MOL } from "../handbook/ingredients.js";
import { vessels, type ProcessVessel } from "../handbook/process.js";

/** How the brew waits: what decides how much air gets at it. */
export interface BrewLifeOptions {
  /** depth of the bath in an open vessel, mm, 1 to 1000; 10 when left out */
  readonly depthMm?: number | undefined;
  /**
   * a drum turns a thin film of bath through air and halves the depth; a tank counts as a tray, and
   * `"tray"` when left out
   */
  readonly vessel?: ProcessVessel | undefined;
}

/** The life of a brew from mixing, in hours, with its range. */
export interface BrewLife {
  /** the likely life, h */
  readonly lifeH: number;
  /** lower end of the 90 % interval, h */
  readonly lowH: number;
  /** upper end of it, h */
  readonly highH: number;
  /** standard deviation of ln(life) */
  readonly logSd: number;
  readonly basis: "default";
  /** what the estimate rests on */
  readonly sources: readonly string[];
}

/**
 * 57 mmol/l of alkaline vitamin C in an open dish: full black to 1.5 h, slightly weak at 2 h, none at 2.5 h.
 * 2 h is taken as its life.
 */
const DATUM_H = 2;
const DATUM_MMOL_PER_L = 57;
/**
 * What depth and vessel do to a life that was measured in a dish: assumed, since nothing measures it. Air
 * gets at a bath through its surface, and a tank is inverted with the air in it. So depth lengthens by half
 * at most.
 */
const DEPTH_MM = 10;
const DEPTH_LEAST = 0.5;
const DEPTH_MOST = 1.5;
const DRUM_DEPTH = 0.5;
/** Longest life of an open brew without sulphite, and with 100 g/l of it (common practice), h. */
const CAP_H = 3;
const CAP_SULPHITE_H = 24;
const CAP_SULPHITE_G_PER_L = 100;
/** Oxygen that a gram of coffee solids takes up, in mmol of agent; it gives coffee alone 1.5 h (assumed). */
const COFFEE_MMOL_PER_G = 1.07;
/** Decades of rate for each unit of pH, measured from pH 6.8 to 9.2. */
const DECADES_PER_PH = 0.43;
/** Below this pH a bath lives longer, three times at most (assumed). */
const SLOWER_BELOW_PH = 10;
const MOST_SLOWER = 3;
/** Where the life was measured and the pH is taken, °C: warmth lowers the pH, and keeps no bath. */
const LIFE_AT_C = 20;
/** Above that a bath takes up oxygen twice as fast for each so many °C (assumed, as of most reactions). */
const HALVES_OVER_C = 10;

const SOURCES: readonly string[] = [
  "Shinkawa Photographic Laboratory, 2015 (57 mmol/l of vitamin C: full black to 1.5 h, slightly weak at " +
    "2 h, none at 2.5 h)",
  "X. M. Shu, Kinetics research on the oxidation of L-ascorbic acid, 2007 (abstract): 0.43 decades per pH",
  "common practice: use within the hour; sulphite keeps a bath for a day",
  "common practice: a reaction doubles its rate for 10 °C or so",
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
 * @remarks life = min(cap, 2 h × N/57 × max(1, d) × min(3, 10^(0.43 max(0, 10 − pH)))) × min(1, d) × w. N in
 * mmol/l is the ascorbate, 1.07 for each gram of coffee solids, and half the sulphite. The pH is that at 20
 * °C: warmth lowers it, and keeps no bath. 2 h is taken from a test in an open dish: full black to 1.5 h,
 * slightly weak at 2 h, none at 2.5 h. The cap is 3 h and rises to 24 h at 100 g/l of sulphite (common
 * practice). d is depth/10 mm from 0.5 to 1.5, half of that in a drum; no test says what depth and vessel do
 * (assumed). A tank counts as a dish, since it is inverted with air. w is 2^(−(t − 20 °C)/10 °C) at the
 * brew's temperature t (assumed), and 1 below 20 °C, where nothing was measured. Nothing carries a life past
 * the cap. Practice uses such a bath within the hour, and never tomorrow. A factor of 2 each way is the 90 %
 * interval; 3 below 2 g/l of vitamin C. The measured life and the slope hold in different regimes: without
 * the cap their product gives 16 h, which practice contradicts.
 * Not covered: cold, stirring, copper or iron in the water.
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
  const { depthMm = 10, vessel = "tray" } = onlyFields("brewLife/options", options, ["depthMm", "vessel"]);
  inRange("brewLife/options/depthMm", depthMm, 1, 1000);
  if (vessel !== "tank" && vessel !== "tray" && vessel !== "drum")
    notOneOf("brewLife/options/vessel", vessels, vessel);
  const depth = ((depthMm as number) / DEPTH_MM) * (vessel === "drum" ? DRUM_DEPTH : 1);
  const lifeH = lifeAt(read, Math.min(DEPTH_MOST, Math.max(DEPTH_LEAST, depth)));
  const vitaminC = agentsOf(read).ascorbate * ASCORBIC_ACID_G_PER_MOL;
  const logSd = Math.log(vitaminC < 2 ? 3 : 2) / Z90;
  const spread = Math.exp(Z90 * logSd);
  return { lifeH, lowH: lifeH / spread, highH: lifeH * spread, logSd, basis: "default", sources: SOURCES };
}

/** The life at a depth, in depths of the dish, h. */
function lifeAt(read: ReadBrew, depth: number): number {
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
  const { ph } = solveBrew({ ...read, temperatureC: LIFE_AT_C });
  const slower = Math.min(MOST_SLOWER, 10 ** (DECADES_PER_PH * Math.max(0, SLOWER_BELOW_PH - ph)));
  const openH = ((DATUM_H * mmol) / DATUM_MMOL_PER_L) * Math.max(1, depth) * slower;
  const warm = 2 ** (-Math.max(0, read.temperatureC - LIFE_AT_C) / HALVES_OVER_C);
  // The cap comes after them: neither acid nor depth carries a life past it.
  return Math.min(capH, openH) * Math.min(1, depth) * warm;
}
