/*
 * Where the fields of `compensate` are in a recipe.
 */
import type { Caution } from "../core/caution.js";
import type { Conditions } from "../compensate/types.js";
import { present } from "../core/ordered.js";
import type { Recipe } from "./types.js";

/** What a recipe says elsewhere. */
const PLACES: Readonly<Record<string, string>> = {
  dilution: "/developer/dilution",
  agitation: "/agitation",
};

/** What a recipe says of the known bath elsewhere only. */
const KNOWN_PLACES: Readonly<Record<string, string>> = {
  ...PLACES,
  hydroquinone: "/developer/hydroquinone",
  emulsion: "/material/emulsion",
};

/**
 * The path in a recipe of a field of the conditions or of the baseline: where it is said, or else where the
 * baseline says it, since what is left out is as in the baseline. A field that `given` says, besides the
 * recipe, keeps its path.
 */
export function placeOf(recipe: Recipe, path: string, given: Conditions = {}): string {
  const { baseline, conditions } = recipe;
  const [, side, field, ...rest] = path.split("/");
  const below = rest.map((key) => `/${key}`).join("");
  if (field === undefined)
    return side === "conditions" && conditions === undefined && Object.keys(given).length === 0
      ? "/baseline"
      : path;
  if (side === "baseline")
    return Object.hasOwn(present(baseline), field)
      ? path
      : (KNOWN_PLACES[field] ?? `/baseline/${field}`) + below;
  if (side !== "conditions" || Object.hasOwn(present({ ...conditions, ...present(given) }), field))
    return path;
  return (PLACES[field] ?? `/baseline/${field}`) + below;
}

/** A caution with its path in the recipe. */
export function placed(recipe: Recipe, one: Caution, given?: Conditions): Caution {
  return one.path === undefined ? one : { ...one, path: placeOf(recipe, one.path, given) };
}
