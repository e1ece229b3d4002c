import { plainObject } from "../core/guards.js";
import { compensate } from "../compensate/compensate.js";
import type { Baseline, Compensation, Conditions } from "../compensate/types.js";
import { placed } from "./places.js";
import type { Recipe } from "./types.js";

/**
 * The time that a recipe gives.
 *
 * @param recipe - a recipe that {@link checkRecipe} has passed
 * @param conditions - what is otherwise today than the recipe says; nothing when left out
 * @returns as `compensate` returns it; a recipe that has been checked always gets a time for its own conditions
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a condition that is handed in is out of range
 *
 * @remarks The baseline's dilution and agitation are those of the recipe where it does not name its own, so that a recipe for one dilution with a
 * time known for another is compensated for the difference.
 *
 * @example
 * ```ts
 * const recipe = {
 *   schemaVersion: 2, material: { name: "plate" }, developer: { kind: "stock", name: "pyro", dilution: "1+1" },
 *   baseline: { timeS: 360, temperatureC: 18, dilution: "stock" }, knowledge: { dilution: { kind: "power", exponent: 1 } },
 * };
 * compensateRecipe(recipe).timeS // => 720
 * ```
 */
export function compensateRecipe(recipe: Recipe, conditions: Conditions = {}): Compensation {
  plainObject("compensateRecipe: recipe", recipe);
  plainObject("compensateRecipe: conditions", conditions);
  const { developer, material, agitation } = recipe;
  plainObject("compensateRecipe: recipe.developer", developer);
  plainObject("compensateRecipe: recipe.material", material);
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
