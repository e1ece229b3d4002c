/*
 * A written recipe: what is developed in what, the time that is known for it, and all that is known besides.
 * Plain JSON.
 */
import type { Agitation } from "../agitation/agitation.js";
import type { DeveloperBrew } from "../brew/brew.js";
import type { BrewMaterial } from "../brew/brewCapacity.js";
import type { Caution } from "../core/caution.js";
import type { OwnFields, MayHaveOwn } from "../core/ownFields.js";
import type { DocumentProblem } from "../core/schemaWords.js";
import type { Baseline, Conditions, Knowledge } from "../compensate/types.js";
import type { Dilution } from "../dilution/dilution.js";
import type { LearnedKnowledge } from "../learning/types.js";
import type { ProcessBaths } from "../process/types.js";
import type { Sensitization } from "../inspection/safelightCautions.js";

/** The version of the format that this package writes and reads. */
export const RECIPE_VERSION = 2;

/** The film, plate or paper. */
export interface RecipeMaterial extends OwnFields {
  /** text, up to 200 characters */
  readonly name: string;
  /** what it is coated on */
  readonly kind?: BrewMaterial | undefined;
  /** what light it sees; taken as panchromatic when left out */
  readonly sensitization?: Sensitization | undefined;
  /**
   * soft as on a plate or an unhardened film, or hardened; that of the baseline when left out, and then soft
   * for a plate
   */
  readonly emulsion?: "soft" | "hardened" | undefined;
  /** speed, ISO arithmetic */
  readonly iso?: number | undefined;
  /** area developed at once, cm² */
  readonly areaCm2?: number | undefined;
  /** sheets or plates developed at once, 1 to 1000; 1 when left out */
  readonly pieces?: number | undefined;
  /** an iodide-rich or tabular film, which fixes more slowly */
  readonly iodideRich?: boolean | undefined;
}

/** What every developer may say of itself. */
interface DeveloperLimits extends OwnFields {
  /** it holds hydroquinone, which stops working in the cold */
  readonly hydroquinone?: boolean | undefined;
  /** capacity, cm² per litre of bath */
  readonly capacityCm2PerL?: number | undefined;
  /** how long it keeps as it is stored, h */
  readonly keepingLimitH?: number | undefined;
}

/** A stock solution and its dilution. */
export interface RecipeStock extends DeveloperLimits {
  readonly kind: "stock";
  /** text, up to 200 characters */
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
export interface RecipeBrew extends DeveloperLimits {
  readonly kind: "brew";
  /** text, up to 200 characters */
  readonly name?: string | undefined;
  /** what it is mixed from */
  readonly brew: MayHaveOwn<DeveloperBrew>;
}

/** A known time; dilution and agitation are the recipe's own where they are left out. */
export type RecipeBaseline = MayHaveOwn<Baseline>;

/** Today's bath. What is left out is as in the recipe, and then as in the baseline. */
export interface RecipeConditions extends OwnFields, Omit<Conditions, "temperatureC"> {
  /** °C, 0 to 100 */
  readonly temperatureC?: number | undefined;
}

/** A recipe of the current version. Fields of one's own begin with `x-`. */
export interface Recipe extends OwnFields {
  /** where an editor finds the schema of the format */
  readonly $schema?: string | undefined;
  /** the version of the format */
  readonly schemaVersion: typeof RECIPE_VERSION;
  /** text, up to 200 characters */
  readonly name?: string | undefined;
  /** the film, plate or paper */
  readonly material: RecipeMaterial;
  /** a stock and its dilution, or a brew */
  readonly developer: RecipeStock | RecipeBrew;
  /** the known time and its conditions */
  readonly baseline: RecipeBaseline;
  /** how the bath is moved */
  readonly agitation?: Agitation | undefined;
  /** today's bath */
  readonly conditions?: RecipeConditions | undefined;
  /** laws, or what `learn` returned, its correlations included */
  readonly knowledge?: MayHaveOwn<Knowledge | LearnedKnowledge> | undefined;
  /** the baths besides the developer */
  readonly baths?: MayHaveOwn<ProcessBaths> | undefined;
  /** the image is watched while it develops */
  readonly byInspection?: boolean | undefined;
  /** lines of text, up to 50 of 2000 characters */
  readonly notes?: readonly string[] | undefined;
  /** where the recipe comes from, up to 50 lines of 2000 characters */
  readonly sources?: readonly string[] | undefined;
}

/** Something wrong with a recipe. */
export type RecipeProblem = DocumentProblem;

/** What {@link checkRecipe} returns. */
export type RecipeCheck =
  | {
      readonly ok: true;
      /** the recipe, as a clean copy */
      readonly recipe: Recipe;
      /** what is valid but unwise, gravest first */
      readonly cautions: readonly Caution[];
      /** what holds for every run: gloves, air, the acid of a stop bath, silver, safety data sheets */
      readonly benchNotes: readonly Caution[];
    }
  | {
      readonly ok: false;
      /** everything that is wrong, up to 100 */
      readonly problems: readonly RecipeProblem[];
    };
