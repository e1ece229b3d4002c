/*
 * A written recipe: what is developed in what, the time that is known for it, and all that is known besides.
 * Plain JSON.
 */
import type { Agitation } from "../agitation/agitation.js";
import type { Brew } from "../brew/brew.js";
import type { Caution } from "../core/caution.js";
import type { DocumentProblem } from "../core/schemaWords.js";
import type { Baseline, Conditions, Knowledge } from "../compensate/types.js";
import type { Dilution } from "../dilution/dilution.js";
import type { LearnedKnowledge } from "../learning/types.js";
import type { ProcessBaths } from "../process/types.js";
import type { Sensitization } from "../inspection/safelightCautions.js";

/** The version of the format that this package writes and reads. */
export const RECIPE_VERSION = 2;

/** The film, plate or paper. */
export interface RecipeMaterial {
  readonly name: string;
  readonly kind?: "film" | "plate" | "paper" | undefined;
  /** what light it sees; taken as panchromatic when left out */
  readonly sensitization?: Sensitization | undefined;
  readonly emulsion?: "soft" | "hardened" | undefined;
  /** speed, ISO arithmetic */
  readonly iso?: number | undefined;
  /** area developed at once, cm² */
  readonly areaCm2?: number | undefined;
  /** an iodide-rich or tabular film, which fixes more slowly */
  readonly iodideRich?: boolean | undefined;
}

/** What every developer may say of itself. */
interface DeveloperLimits {
  /** it holds hydroquinone, which stops working in the cold */
  readonly hydroquinone?: boolean | undefined;
  /** capacity, cm² per litre of bath */
  readonly capacityCm2PerL?: number | undefined;
  /** how long it keeps as it is stored, h */
  readonly keepingLimitH?: number | undefined;
}

/** A stock solution and its dilution. */
export interface StockDeveloper extends DeveloperLimits {
  readonly kind: "stock";
  readonly name: string;
  /** as text, `"1+9"`, or parts */
  readonly dilution: Dilution | string;
  /** volume of the bath, ml */
  readonly volumeMl?: number | undefined;
  /** least stock for a roll of 516 cm², ml, own or the maker's */
  readonly leastMlPerRoll?: number | undefined;
  /** developer family, for its published least stock */
  readonly family?: "ascorbate-stock" | "solvent-stock" | "concentrate" | "p-aminophenol" | undefined;
}

/** A developer mixed from groceries. */
export interface BrewDeveloper extends DeveloperLimits {
  readonly kind: "brew";
  readonly name?: string | undefined;
  readonly brew: Brew;
}

/** A known time; dilution and agitation are the recipe's own where they are left out. */
export type RecipeBaseline = Baseline;

/** Today's bath. What is left out is as in the recipe, and then as in the baseline. */
export interface RecipeConditions extends Omit<Conditions, "temperatureC"> {
  /** °C, 0 to 100 */
  readonly temperatureC?: number | undefined;
}

/** A recipe of the current version. Fields of one's own begin with `x-`. */
export interface Recipe {
  /** where an editor finds the schema of the format */
  readonly $schema?: string | undefined;
  readonly schemaVersion: typeof RECIPE_VERSION;
  readonly name?: string | undefined;
  readonly material: RecipeMaterial;
  readonly developer: StockDeveloper | BrewDeveloper;
  readonly baseline: RecipeBaseline;
  readonly agitation?: Agitation | undefined;
  readonly conditions?: RecipeConditions | undefined;
  /** laws, or what `learn` returned, its correlations included */
  readonly knowledge?: Knowledge | LearnedKnowledge | undefined;
  readonly baths?: ProcessBaths | undefined;
  /** the image is watched while it develops */
  readonly byInspection?: boolean | undefined;
  readonly notes?: readonly string[] | undefined;
  readonly sources?: readonly string[] | undefined;
}

/** Something wrong with a recipe. */
export type RecipeProblem = DocumentProblem;

/** What {@link checkRecipe} returns. */
export type RecipeCheck =
  | { readonly ok: true; readonly recipe: Recipe; readonly cautions: readonly Caution[] }
  | { readonly ok: false; readonly problems: readonly RecipeProblem[] };
