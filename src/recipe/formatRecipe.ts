import { plainObject, wrongKind } from "../core/guards.js";
import type { Recipe } from "./types.js";

/**
 * Writes a recipe as JSON text, to be kept in a file and read again by {@link checkRecipe}.
 *
 * @param recipe - a recipe as `checkRecipe` returns it, its fields in the format's order
 * @returns JSON text, indented by two spaces, with a line break at its end
 * @throws TypeError when `recipe` is not an object
 *
 * @example
 * ```ts
 * const check = checkRecipe({ schemaVersion: 1, film: "plate", developer: { kind: "stock", name: "pyro", dilution: "1+1" }, baseline: { timeMin: 6, temperatureC: 18 } });
 * formatRecipe(check.recipe).split("\n")[1] // => "  \"schemaVersion\": 2,"
 * checkRecipe(formatRecipe(check.recipe)).recipe.baseline.timeS // => 360
 * ```
 */
export function formatRecipe(recipe: Recipe): string {
  plainObject("formatRecipe: recipe", recipe);
  try {
    return `${JSON.stringify(recipe, null, 2)}\n`;
  } catch {
    // A ring, or a number that JSON has no form for.
    return wrongKind("formatRecipe: recipe", "plain data as checkRecipe returns it", recipe);
  }
}
