import { namesOf } from "../core/frozen.js";
import { notOneOf } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { PRACTICE_FILM_CM2_PER_L } from "../handbook/roll.js";
import { agentsOf } from "./solveBrew.js";
import { readBrew, type DeveloperBrew, type ReadBrew } from "./brew.js";

/** What is developed: how much silver it carries. */
export type BrewMaterial = "film" | "plate" | "paper";

/** Options of {@link brewCapacity}. */
export interface BrewCapacityOptions {
  /** `"film"` when left out */
  readonly material?: BrewMaterial | undefined;
}

/** How much a litre of a brew develops, cm² per litre of working bath. */
export interface BrewCapacity {
  /** the least of the three limits */
  readonly cm2PerL: number;
  /** a fifth of the silver that the agents can reduce */
  readonly agentCm2PerL: number;
  /** bromide released to that of 1 g/l of potassium bromide */
  readonly bromideCm2PerL: number;
  /** 250 ml for each roll of film, and as much for the same silver in plates or paper */
  readonly practiceCm2PerL: number;
  /** all agents, at all silver that is coated: past it nothing is left that develops */
  readonly allAgentCm2PerL: number;
  /** which limit is the least */
  readonly by: "agent" | "bromide" | "practice";
}

/** Silver coated, g/m² (from memory): film 3 to 8, dry plates 5 to 10, paper 1 to 2. */
const SILVER_G_PER_M2: Readonly<Record<BrewMaterial, number>> = { film: 5, plate: 7.5, paper: 1.6 };

/** Silver coated on a material, g/m². */
export const silverOf = (material: BrewMaterial): number => SILVER_G_PER_M2[material];

/** The kinds of material that a brew, a plan or a recipe can be for. */
export const brewMaterials: readonly BrewMaterial[] = /* @__PURE__ */ namesOf(SILVER_G_PER_M2);

/** Returns a material; throws for anything else. */
export function brewMaterial(at: string, material: unknown): BrewMaterial {
  if (material !== "film" && material !== "plate" && material !== "paper")
    notOneOf(at, brewMaterials, material);
  return material;
}

const SILVER_G_PER_MOL = 107.8682;
const CM2_PER_M2 = 1e4;
/** Share of the coated silver that is developed in an ordinary negative (assumed). */
const DEVELOPED = 0.3;
/** Silver reduced by one molecule of ascorbate or catechol: both give two electrons. */
const SILVER_PER_AGENT = 2;
/** Share of the agent that may be used up; printed capacities use 2.6 to 10 % of it (assumed). */
const USED = 0.2;
/** 1 g/l of potassium bromide, mol/l. */
const BROMIDE_MOL_PER_L = 8.4e-3;

/**
 * How much a litre of a brew develops before it is spent.
 *
 * @param brew - the brew, as for {@link brewPh}
 * @param options - the material, `"film"`, `"plate"` or `"paper"`
 * @returns three limits in cm² per litre, the least of them, and where all agent would be gone
 * @throws TypeError when something is of the wrong kind
 * @throws RangeError for a brew that {@link brewPh} refuses, or an unknown material
 *
 * @remarks Silver coated: film 5, plate 7.5, paper 1.6 g/m² (from memory), of which 30 % is developed
 * (assumed). Agent: a fifth of two silver for each molecule (assumed). Bromide: one for each silver, up to
 * 8.4 mmol/l. Practice: 250 ml for each roll of film (common practice). Two silver for each molecule alone
 * would give an ordinary brew 268 rolls a litre; printed capacities use 2.6 to 10 % of that. Not covered:
 * exposure, replenishment, and what air takes, for which see {@link brewLife}.
 *
 * @example
 * ```ts
 * const soda: BrewPart = { ingredient: "soda-anhydrous", massG: 54 };
 * const coffee: BrewPart = { ingredient: "instant-coffee", massG: 40 };
 * brewCapacity({ volumeMl: 1000, ingredients: [soda, coffee] }).cm2PerL / 516.128 // => 2.9
 * ```
 */
export function brewCapacity(brew: DeveloperBrew, options: BrewCapacityOptions = {}): BrewCapacity {
  const read = readBrew("brewCapacity/brew", brew);
  const { material = "film" } = onlyFields("brewCapacity/options", options, ["material"]);
  return capacityOfBrew(read, brewMaterial("brewCapacity/options/material", material));
}

/** The answer of {@link brewCapacity} for a brew that was read. */
export function capacityOfBrew(read: ReadBrew, material: BrewMaterial): BrewCapacity {
  const { ascorbate, catechol } = agentsOf(read);
  const coatedPerCm2 = coatedSilver(material);
  const reducible = SILVER_PER_AGENT * (ascorbate + catechol);
  const limits = { agent: (USED * reducible) / (DEVELOPED * coatedPerCm2), ...materialLimits(material) };
  const by = (["agent", "bromide", "practice"] as const).reduce((least, one) =>
    limits[one] < limits[least] ? one : least,
  );
  return {
    cm2PerL: limits[by],
    agentCm2PerL: limits.agent,
    bromideCm2PerL: limits.bromide,
    practiceCm2PerL: limits.practice,
    allAgentCm2PerL: reducible / coatedPerCm2,
    by,
  };
}

/** Silver coated on a cm², mol. */
function coatedSilver(material: BrewMaterial): number {
  return SILVER_G_PER_M2[material] / SILVER_G_PER_MOL / CM2_PER_M2;
}

/** What a litre of any developer develops of a material, by the bromide that it releases and by practice. */
export function materialLimits(material: BrewMaterial): {
  readonly bromide: number;
  readonly practice: number;
} {
  return {
    bromide: BROMIDE_MOL_PER_L / (DEVELOPED * coatedSilver(material)),
    practice: PRACTICE_FILM_CM2_PER_L * (SILVER_G_PER_M2.film / SILVER_G_PER_M2[material]),
  };
}
