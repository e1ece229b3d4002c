import type { Baseline, Conditions, Knowledge } from "../compensate/types.js";
import { plainObject } from "../core/guards.js";
import { plainData } from "../core/plainData.js";
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
 * @throws TypeError when an argument or a part of the recipe is of the wrong kind
 * @throws RangeError when one holds what is not JSON, such as NaN
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
  for (const part of ["developer", "material", "baseline"] as const)
    plainObject(`${at}/${part}`, recipe[part]);
  // What is no number is refused here; whether a number is in range, by what is asked the question.
  plainData(at, recipe);
  plainData("recipeQuestion/conditions", conditions);
  const { baseline, conditions: asked, knowledge } = recipeInputs(at, recipe, conditions);
  return { baseline, conditions: asked, knowledge };
}
