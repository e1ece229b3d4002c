/*
 * Room: recipe. What the laws make of a recipe: its time, before anything is said of the bath itself.
 */
import { plainObject, positive } from "../core/guards.js";
import { compensate } from "../compensate/compensate.js";
import type { Baseline, Compensation, Conditions } from "../compensate/types.js";
import { placed } from "./places.js";
import type { Recipe } from "./types.js";

/** The answer of `compensate` to a recipe, its cautions with their paths in the recipe. */
export function recipeTime(recipe: Recipe, conditions: Conditions = {}): Compensation {
  plainObject("compensateRecipe/recipe", recipe);
  plainObject("compensateRecipe/conditions", conditions);
  const { developer, material, agitation } = recipe;
  plainObject("compensateRecipe/recipe/developer", developer);
  plainObject("compensateRecipe/recipe/material", material);
  // A recipe that is compensated may never have been checked.
  const { areaCm2 = 1 } = material;
  const { volumeMl = 1 } = developer.kind === "stock" ? developer : {};
  positive("compensateRecipe/recipe/material/areaCm2", areaCm2, 1e6, "areaCm2");
  positive("compensateRecipe/recipe/developer/volumeMl", volumeMl, 1e6, "volumeMl");
  const own = {
    ...(developer.kind === "stock" ? { dilution: developer.dilution } : {}),
    ...(agitation === undefined ? {} : { agitation }),
  };
  const baseline: Baseline = {
    ...own,
    ...recipe.baseline,
    ...(developer.hydroquinone === undefined ? {} : { hydroquinone: developer.hydroquinone }),
    ...(material.emulsion === undefined ? {} : { emulsion: material.emulsion }),
  };
  const answer = compensate(baseline, { ...own, ...recipe.conditions, ...conditions }, recipe.knowledge);
  // Papers are developed in one to three minutes (common practice): what is short for film is usual for them.
  const meant = answer.cautions.filter(({ code }) => code !== "short-time" || material.kind !== "paper");
  return { ...answer, cautions: meant.map((one) => placed(recipe, one, conditions)) };
}
