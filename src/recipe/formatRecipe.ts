import { plainObject, wrongKind } from "../core/guards.js";
import type { Recipe } from "./types.js";

/**
 * Writes a recipe as JSON text, to be kept in a file and read again by {@link checkRecipe}.
 *
 * @param recipe - a recipe as `checkRecipe` returns it, its fields in the format's order
 * @returns JSON text, indented by two spaces, with a line break at its end
 * @throws TypeError when `recipe` is not an object, or holds what JSON has no form for: NaN and Infinity
 * would come back as null
 *
 * @example
 * ```ts
 * const developer = { kind: "stock", name: "pyro", dilution: "1+1" };
 * const baseline = { timeS: 360, temperatureC: 18 };
 * const check = checkRecipe({ schemaVersion: 2, material: { name: "plate" }, developer, baseline });
 * formatRecipe(check.recipe).split("\n")[1] // => "  \"schemaVersion\": 2,"
 * checkRecipe(formatRecipe(check.recipe)).recipe.baseline.timeS // => 360
 * ```
 */
export function formatRecipe(recipe: Recipe): string {
  plainObject("formatRecipe/recipe", recipe);
  let where = "formatRecipe/recipe";
  let culprit: unknown = recipe;
  const finite = (field: string, value: unknown): unknown => {
    if (typeof value !== "number" || Number.isFinite(value)) return value;
    where = `formatRecipe/recipe/${field}`;
    culprit = value;
    throw new TypeError(where);
  };
  try {
    return `${JSON.stringify(recipe, finite, 2)}\n`;
  } catch {
    // A ring, or a number that JSON has no form for.
    return wrongKind(where, "plain data as checkRecipe returns it", culprit);
  }
}
