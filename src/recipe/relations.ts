/*
 * Values of a recipe that are each in range and do not go together. The loop over the causes finds them.
 */
import { conditionProblems } from "../compensate/checkConditions.js";
import type { AnyCause } from "../core/cause.js";
import { placeOf } from "./places.js";
import type { RecipeInputs } from "./recipeTime.js";
import type { Recipe, RecipeProblem } from "./types.js";

/** The problems of a recipe whose shape is right, apart from those of its brew. */
export function relationProblems(
  recipe: Recipe,
  { baseline, conditions, knowledge }: RecipeInputs,
  list: readonly AnyCause[],
): readonly RecipeProblem[] {
  return conditionProblems("checkRecipe", list, baseline, conditions, knowledge, true).map(
    ({ code, path, expected, actual, sentence }) => ({
      code,
      path: placeOf(recipe, path),
      expected,
      actual,
      message: sentence,
      rule: "relation",
    }),
  );
}
