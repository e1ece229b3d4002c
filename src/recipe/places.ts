/*
 * Room: recipe. Where the fields of `compensate` stand in a recipe.
 */
import type { Caution } from "../core/caution.js";
import type { Conditions } from "../compensate/types.js";
import type { Recipe } from "./types.js";

/** Conditions that a recipe states elsewhere. */
const PLACES: Readonly<Record<string, string>> = {
  "/conditions/dilution": "/developer/dilution",
  "/conditions/agitation": "/agitation",
};

/**
 * The path in a recipe of a field of the conditions: where it is stated, or else where the baseline states
 * it, since what is left out is as in the baseline. A field that `given` states, besides the recipe, keeps
 * its path.
 */
export function placeOf({ conditions }: Recipe, path: string, given: Conditions = {}): string {
  const [, side, field] = path.split("/");
  if (side !== "conditions") return path;
  if (field === undefined)
    return conditions === undefined && Object.keys(given).length === 0 ? "/baseline" : path;
  if (Object.hasOwn({ ...conditions, ...given }, field)) return path;
  return PLACES[path] ?? path.replace("conditions", "baseline");
}

/** A caution with its path in the recipe. */
export function placed(recipe: Recipe, one: Caution, given?: Conditions): Caution {
  return one.path === undefined ? one : { ...one, path: placeOf(recipe, one.path, given) };
}
