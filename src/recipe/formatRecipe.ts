import { plainObject } from "../core/guards.js";
import { plainData } from "../core/plainData.js";
import type { Recipe } from "./types.js";

/**
 * Writes a recipe as JSON text, to be kept in a file and read again by {@link checkRecipe}.
 *
 * @param recipe - a recipe as `checkRecipe` returns it, its fields in the format's order
 * @returns JSON text, indented by two spaces, with a line break at its end
 * @throws TypeError when `recipe` is not an object
 * @throws RangeError when it holds what JSON would lose: NaN and Infinity would come back as null, a date or
 * a map as something else
 *
 * @example
 * ```ts
 * const recipe: Recipe = {
 *   schemaVersion: 2,
 *   material: { name: "plate" },
 *   developer: { kind: "stock", name: "pyro", dilution: "1+1" },
 *   baseline: { timeS: 360, temperatureC: 18 },
 * };
 * formatRecipe(recipe).split("\n")[1] // => "  \"schemaVersion\": 2,"
 * checkRecipe(formatRecipe(recipe)).ok // => true
 * ```
 */
export function formatRecipe(recipe: Recipe): string {
  plainObject("formatRecipe/recipe", recipe);
  // One object in many places is written in each: the text may be far larger than what was given.
  return `${JSON.stringify(plainData("formatRecipe/recipe", recipe), undefined, 2)}\n`;
}
