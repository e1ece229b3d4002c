/*
 * Room: recipe. A written recipe: what is developed in what, the time that is known for it, and all that is
 * known besides. Plain JSON.
 */
import type { Agitation } from "../agitation/agitation.js";
import type { Brew } from "../brew/brew.js";
import type { Caution } from "../core/caution.js";
import type { Baseline, Knowledge } from "../compensate/types.js";
import type { ProcessBaths } from "../process/types.js";
import type { Sensitization } from "../inspection/safelightCautions.js";

/** The version of the format that this package writes. */
export const RECIPE_VERSION = 2;

/** The film, plate or paper. */
export interface RecipeMaterial {
  readonly name: string;
  readonly kind?: "film" | "plate" | "paper";
  /** what light it sees; taken as panchromatic when left out */
  readonly sensitization?: Sensitization;
  readonly emulsion?: "soft" | "hardened";
  /** speed, ISO arithmetic */
  readonly iso?: number;
  /** area developed at once, cm² */
  readonly areaCm2?: number;
  /** an iodide-rich or tabular film, which fixes more slowly */
  readonly iodideRich?: boolean;
}

/** What every developer may say of itself. */
interface DeveloperLimits {
  /** it holds hydroquinone, which stops working in the cold */
  readonly hydroquinone?: boolean;
  /** capacity, cm² per litre of bath */
  readonly capacityCm2PerL?: number;
  /** how long it keeps as it is stored, h */
  readonly keepingLimitH?: number;
}

/** A stock solution and its dilution. */
export interface StockDeveloper extends DeveloperLimits {
  readonly kind: "stock";
  readonly name: string;
  readonly dilution: string;
  /** volume of the bath, ml */
  readonly volumeMl?: number;
  /** least stock for a roll of 516 cm², ml, own or the maker's */
  readonly leastMlPerRoll?: number;
  /** developer family, for its published least stock */
  readonly family?: "ascorbate-stock" | "solvent-stock" | "concentrate" | "p-aminophenol";
}

/** A developer mixed from groceries. */
export interface BrewDeveloper extends DeveloperLimits {
  readonly kind: "brew";
  readonly name?: string;
  readonly brew: Brew;
}

/** A known time; dilution and agitation are the recipe's own where they are left out. */
export type RecipeBaseline = Omit<Baseline, "dilution" | "hydroquinone" | "emulsion"> & {
  readonly dilution?: string;
};

/** Today's bath. What is left out is as in the baseline. */
export interface RecipeConditions {
  readonly temperatureC?: number;
  readonly usedCm2PerL?: number;
  readonly ageH?: number;
  /** the wanted gradient */
  readonly gamma?: number;
}

/** A recipe of the current version. */
export interface Recipe {
  readonly schemaVersion: typeof RECIPE_VERSION;
  readonly name?: string;
  readonly material: RecipeMaterial;
  readonly developer: StockDeveloper | BrewDeveloper;
  readonly baseline: RecipeBaseline;
  readonly agitation?: Agitation;
  readonly conditions?: RecipeConditions;
  readonly knowledge?: Knowledge;
  readonly baths?: ProcessBaths;
  /** the image is watched while it develops */
  readonly byInspection?: boolean;
  readonly notes?: readonly string[];
  readonly sources?: readonly string[];
}

/** Something wrong with a recipe: a JSON Pointer (RFC 6901) to it, and what was expected there. */
export interface RecipeProblem {
  readonly path: string;
  readonly message: string;
  /**
   * `"shape"`: the JSON Schema refuses it too; `"relation"`: values that do not go together, which no schema
   * can say
   */
  readonly rule: "shape" | "relation";
}

/** What {@link checkRecipe} returns. */
export type RecipeCheck =
  | { readonly ok: true; readonly recipe: Recipe; readonly cautions: readonly Caution[] }
  | { readonly ok: false; readonly problems: readonly RecipeProblem[] };
