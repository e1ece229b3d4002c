/*
 * Values of a recipe that are each in range and do not go together. The loop over the causes finds them.
 */
import { causes } from "../causes.js";
import { conditionProblems } from "../compensate/checkConditions.js";
import { isInputError } from "../core/errors.js";
import { placeOf } from "./places.js";
import { recipeInputs } from "./recipeTime.js";
import type { Recipe, RecipeProblem } from "./types.js";

/** Asks a module and turns its refusal into a problem at `path`, or at the field below it that the refusal names. */
export function ask<T>(problems: RecipeProblem[], path: string, call: () => T): T | undefined {
  try {
    return call();
  } catch (error) {
    if (!isInputError(error)) throw error;
    // The first name in its path is that of the argument, which is at `path` here.
    const field = error.path
      .split("/")
      .slice(2)
      .map((key) => `/${key}`)
      .join("");
    problems.push({ path: path + field, message: error.sentence, rule: "relation" });
    return undefined;
  }
}

/** The problems of a recipe whose shape is right, apart from those of its brew. */
export function relationProblems(recipe: Recipe): readonly RecipeProblem[] {
  const { baseline, conditions, knowledge } = recipeInputs(recipe);
  return conditionProblems("checkRecipe", causes, baseline, conditions, knowledge).map(
    ({ path, sentence }) => ({
      path: placeOf(recipe, path),
      message: sentence,
      rule: "relation",
    }),
  );
}
