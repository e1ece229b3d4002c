import { plainObject } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { compensateRecipe } from "../recipe/compensateRecipe.js";
import type { Recipe } from "../recipe/types.js";
import { AXES, chartOf } from "./chartOf.js";
import type { ChartAxes, TimeChart } from "./types.js";

/**
 * The chart of a recipe: its times over temperature and dilution.
 *
 * @param recipe - a recipe that `checkRecipe` has passed
 * @param axes - the temperatures in °C and perhaps the dilutions; the recipe's own dilution when left out
 * @returns as {@link timeChart} returns it, each row the answer of `compensateRecipe`
 * @throws TypeError when an argument is of the wrong kind, or dilutions are given for a brew
 * @throws RangeError when a value is out of range, there are none or too many, or an axis is not read
 *
 * @remarks What stops the bath itself, such as a brew that cannot develop, refuses its times too.
 *
 * @example
 * ```ts
 * const recipe: Recipe = {
 *   schemaVersion: 2,
 *   material: { name: "plate" },
 *   developer: { kind: "stock", name: "pyro", dilution: "1+1" },
 *   baseline: { timeS: 360, temperatureC: 18 },
 *   knowledge: { dilution: { kind: "power", exponent: 1 } },
 * };
 * const { rows } = chartRecipe(recipe, { temperaturesC: [18], dilutions: ["1+1", "1+3"] });
 * rows.map(({ dilution, timeS }) => [dilution, timeS]) // => [["1+1", 360], ["1+3", 720]]
 * ```
 */
export function chartRecipe(recipe: Recipe, axes: ChartAxes): TimeChart {
  plainObject("chartRecipe/recipe", recipe);
  onlyFields("chartRecipe/axes", axes, AXES);
  const { developer, baseline, conditions: today } = recipe;
  plainObject("chartRecipe/recipe/developer", developer);
  plainObject("chartRecipe/recipe/baseline", baseline);
  const { timeS, temperatureC } = baseline;
  const stock = developer.kind === "stock" ? developer.dilution : undefined;
  const own = today?.dilution ?? stock;
  const known = { timeS, temperatureC, dilution: baseline.dilution ?? stock };
  // The recipe's own dilution is today's, though the known time may be for another.
  const asked = { ...axes, dilutions: axes.dilutions ?? (own === undefined ? undefined : [own]) };
  return chartOf("chartRecipe/axes", asked, known, (conditions) => compensateRecipe(recipe, conditions));
}
