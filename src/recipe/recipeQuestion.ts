import type { Baseline, Conditions, Knowledge } from "../compensate/types.js";
import { plainObject } from "../core/guards.js";
import { inNameOf } from "../core/inNameOf.js";
import { checkMaterial } from "../temperature/temperatureCautions.js";
import { placeOf } from "./places.js";
import { recipeInputs } from "./recipeTime.js";
import type { Recipe } from "./types.js";

/** What `compensate` is asked for a recipe. */
export interface RecipeQuestion {
  /** the known time, with what the recipe says elsewhere of the known bath */
  readonly baseline: Baseline;
  /** today's bath */
  readonly conditions: Conditions;
  /** the laws; of a brew also how long it lives */
  readonly knowledge: Knowledge;
}

/**
 * What a recipe asks of {@link compensate}, for functions that take no recipe, such as {@link steer}.
 *
 * @param recipe - a recipe that {@link checkRecipe} has passed
 * @param conditions - what is otherwise today than the recipe says; nothing when left out
 * @returns the known time, today's conditions and the laws, as {@link compensateRecipe} takes them
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when the emulsion is none of the two
 *
 * @remarks Dilution and agitation of the recipe stand on both sides that do not name their own. A brew brings
 * the law of its life. What stops the bath itself, such as a capacity, is only in the answer of
 * `compensateRecipe`.
 *
 * @example
 * ```ts
 * const recipe: Recipe = {
 *   schemaVersion: 2,
 *   material: { name: "plate", kind: "plate" },
 *   developer: { kind: "stock", name: "pyro", dilution: "1+1" },
 *   baseline: { timeS: 360, temperatureC: 18 },
 * };
 * const { baseline } = recipeQuestion(recipe);
 * [baseline.dilution, baseline.emulsion] // => ["1+1", "soft"]
 * ```
 */
export function recipeQuestion(recipe: Recipe, conditions: Conditions = {}): RecipeQuestion {
  const at = "recipeQuestion/recipe";
  plainObject(at, recipe);
  plainObject("recipeQuestion/conditions", conditions);
  plainObject(`${at}/developer`, recipe.developer);
  plainObject(`${at}/material`, recipe.material);
  const { baseline, conditions: asked, knowledge } = recipeInputs(at, recipe, conditions);
  // What only makes a caution is looked at by nobody else before it is handed on.
  inNameOf(
    at,
    () => {
      checkMaterial(`${at}/baseline`, baseline);
    },
    (path) => placeOf(recipe, path.replace("/recipe", "")),
  );
  return { baseline, conditions: asked, knowledge };
}
