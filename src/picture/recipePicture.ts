import { causes } from "../causes.js";
import { prepared } from "../compensate/loop.js";
import type { Conditions } from "../compensate/types.js";
import { plainObject } from "../core/guards.js";
import { compensateRecipe } from "../recipe/compensateRecipe.js";
import { recipeInputs } from "../recipe/recipeTime.js";
import type { Recipe } from "../recipe/types.js";
import { pictureOf } from "./pictureOf.js";
import type { AnswerPicture, PictureRange } from "./types.js";

/**
 * The answer of a recipe as a picture.
 *
 * @param recipe - a recipe that `checkRecipe` has passed
 * @param conditions - what is otherwise today than the recipe says; nothing when left out
 * @param range - what the picture covers
 * @returns as {@link answerPicture} returns it, each number from `compensateRecipe`
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is out of range, or an edge lies beyond the other
 *
 * @remarks What stops the bath itself, such as a brew that cannot develop, refuses its times too.
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
 * recipePicture(recipe).rungs.map(({ cause }) => cause) // => ["baseline", "dilution", "together"]
 * recipePicture(recipe).rungs.map(({ endS }) => endS) // => [360, 720, 720]
 * ```
 */
export function recipePicture(
  recipe: Recipe,
  conditions: Conditions = {},
  range: PictureRange = {},
): AnswerPicture {
  const at = "recipePicture/range";
  plainObject("recipePicture/recipe", recipe);
  plainObject("recipePicture/conditions", conditions);
  plainObject(at, range);
  const answer = compensateRecipe(recipe, conditions);
  const { baseline, conditions: today, knowledge } = recipeInputs("recipePicture/recipe", recipe, conditions);
  const ask = prepared("recipePicture", causes, baseline, knowledge);
  const source = {
    baseline,
    knowledge,
    temperatureC: today.temperatureC,
    answer,
    known: (temperatureC: number) => ask.answer({ temperatureC }),
    bath: (temperatureC: number) => compensateRecipe(recipe, { ...conditions, temperatureC }),
    any: ask.answer,
  };
  return pictureOf(at, source, range);
}
