/*
 * Room: recipe. What the laws make of a recipe: its time, before anything is said of the bath itself.
 */
import { plainObject, positive } from "../core/guards.js";
import { causes } from "../causes.js";
import { prepared } from "../compensate/loop.js";
import type { Baseline, Compensation, Conditions, Knowledge } from "../compensate/types.js";
import { placed } from "./places.js";
import type { Recipe } from "./types.js";

/** What `compensate` is asked for a recipe. */
export interface RecipeInputs {
  readonly baseline: Baseline;
  readonly conditions: Conditions;
  readonly knowledge: Knowledge;
}

/** The known time, today's conditions and the laws of a recipe. */
export function recipeInputs(recipe: Recipe, conditions: Conditions = {}): RecipeInputs {
  const { developer, material, agitation } = recipe;
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
  return {
    baseline,
    conditions: { ...own, ...recipe.conditions, ...conditions },
    knowledge: recipe.knowledge ?? {},
  };
}

/** The answer of `compensate` to a recipe, its cautions with their paths in the recipe. */
export function recipeTime(recipe: Recipe, given: Conditions = {}): Compensation {
  plainObject("compensateRecipe/recipe", recipe);
  plainObject("compensateRecipe/conditions", given);
  const { developer, material } = recipe;
  plainObject("compensateRecipe/recipe/developer", developer);
  plainObject("compensateRecipe/recipe/material", material);
  // A recipe that is compensated may never have been checked.
  const { areaCm2 = 1 } = material;
  const { volumeMl = 1 } = developer.kind === "stock" ? developer : {};
  positive("compensateRecipe/recipe/material/areaCm2", areaCm2, 1e6, "areaCm2");
  positive("compensateRecipe/recipe/developer/volumeMl", volumeMl, 1e6, "volumeMl");
  const { baseline, conditions, knowledge } = recipeInputs(recipe, given);
  const answer = prepared("compensateRecipe", causes, baseline, knowledge).answer(conditions);
  // Papers are developed in one to three minutes (common practice): what is short for film is usual for them.
  const meant = answer.cautions.filter(({ code }) => code !== "short-time" || material.kind !== "paper");
  return { ...answer, cautions: meant.map((one) => placed(recipe, one, given)) };
}
