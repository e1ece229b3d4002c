import { gravestFirst, refuses } from "../core/caution.js";
import type { Compensation, Conditions } from "../compensate/types.js";
import { brewCautions, developerCautions } from "./recipeCautions.js";
import { recipeNow } from "./recipeNow.js";
import { recipeTime } from "./recipeTime.js";
import type { Recipe } from "./types.js";

/**
 * The time that a recipe gives.
 *
 * @param recipe - a recipe that {@link checkRecipe} has passed
 * @param conditions - what is otherwise today than the recipe says; nothing when left out
 * @returns as `compensate` returns it; a recipe that has been checked always gets a time for its own
 * conditions
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a condition that is handed in is out of range, or the brew of a recipe that was not
 * checked
 *
 * @remarks The baseline's dilution and agitation are those of the recipe where it does not name its own, so
 * that a recipe for one dilution with a time known for another is compensated for the difference. What stops
 * the bath itself stops its time: a brew that cannot develop, a bath past its keeping or its capacity, or
 * twice as slow as fresh. A bath past an estimated capacity is a warning. The other cautions about it are
 * those of {@link checkRecipe}.
 *
 * A recipe that holds what `learn` returned is answered as `predict` answers, with the correlations of what
 * was learned and with what was doubted, when its baseline is the known time of that knowledge: the
 * conditions, and the time to 1 s or 1 %.
 *
 * @example
 * ```ts
 * const recipe: Recipe = {
 *   schemaVersion: 2,
 *   material: { name: "plate" },
 *   developer: { kind: "stock", name: "pyro", dilution: "1+1" },
 *   baseline: { timeS: 360, temperatureC: 18, dilution: "stock" },
 *   knowledge: { dilution: { kind: "power", exponent: 1 } },
 * };
 * compensateRecipe(recipe).timeS // => 720
 * ```
 */
export function compensateRecipe(recipe: Recipe, conditions: Conditions = {}): Compensation {
  const answer = recipeTime(recipe, conditions);
  const now = recipeNow(recipe, conditions);
  const found = developerCautions(now, answer, brewCautions(now)).filter(
    ({ severity, code }) => severity === "stop" || code === "bath-past-capacity",
  );
  const cautions = gravestFirst([...answer.cautions, ...found]);
  return { ...answer, refused: refuses(cautions), cautions };
}
