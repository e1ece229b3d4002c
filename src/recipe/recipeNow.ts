/*
 * A recipe under the conditions that are handed in besides.
 */
import type { Conditions } from "../compensate/types.js";
import { present } from "../core/ordered.js";
import type { Recipe } from "./types.js";

/**
 * The recipe with today's conditions in it. A bath that drifts counts with the temperature that it has at
 * pour-in. Where nothing is stated the bath is the baseline's, and so are the paths of its cautions.
 */
export function recipeNow(recipe: Recipe, conditions: Conditions): Recipe {
  const { temperatureC, ...rest } = conditions;
  const startC = startOf(temperatureC);
  const stated = {
    ...present(recipe.conditions ?? {}),
    ...present(rest),
    ...(startC === undefined ? {} : { temperatureC: startC }),
  };
  return Object.keys(stated).length > 0 ? { ...recipe, conditions: stated } : recipe;
}

/** The temperature at pour-in, °C. */
function startOf(temperatureC: Conditions["temperatureC"]): number | undefined {
  if (typeof temperatureC !== "object") return temperatureC;
  return "startC" in temperatureC ? temperatureC.startC : temperatureC[0]?.temperatureC;
}
