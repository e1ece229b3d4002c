import { plainObject, refuse } from "../core/guards.js";
import { MOST_VALUES } from "../core/plainCopy.js";
import { plainText } from "../core/text.js";
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
  let where = "formatRecipe/recipe";
  let culprit: unknown = recipe;
  // One object in many places is written in each: the text may be far larger than what was given.
  let left = MOST_VALUES;
  const finite = (field: string, value: unknown): unknown => {
    left -= 1;
    if (left < 0) throw new TypeError(where);
    if (typeof value !== "number" || Number.isFinite(value)) return value;
    where = `formatRecipe/recipe/${field}`;
    culprit = value;
    throw new TypeError(where);
  };
  try {
    return `${JSON.stringify(recipe, finite, 2)}\n`;
  } catch {
    // A ring, too many values, or a number that JSON has no form for.
    return refuse(where, "plain-data", plainText, {}, culprit);
  }
}
