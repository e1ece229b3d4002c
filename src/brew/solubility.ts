import type { Ingredient } from "../handbook/ingredients.js";
import { brewTemperature, ingredientOf } from "./brew.js";

/**
 * Grams that dissolve in 100 g of water at the bath's temperature; of dry soda for its hydrates,
 * otherwise as weighed.
 *
 * @param ingredient - which ingredient
 * @param temperatureC - temperature of the water, 0 to 50 °C
 * @returns g per 100 g water; undefined for coffee and tablets, for which no figure stands
 * @throws TypeError when something is of the wrong kind
 * @throws RangeError for an unknown or unfit ingredient or a temperature out of range
 *
 * @remarks Straight lines between published rows; the nearest row beyond them. In pure water: other sodium
 * salts in the bath lower it. Rows and sources: {@link handbookIngredients}.
 *
 * @example
 * ```ts
 * solubility("soda-anhydrous", 10) // => 12.2
 * solubility("baking-soda", 15) // => 8.9
 * ```
 */
export function solubility(ingredient: Ingredient, temperatureC: number): number | undefined {
  const rows = ingredientOf("solubility/ingredient", ingredient).solubility;
  brewTemperature("solubility/temperatureC", temperatureC);
  if (rows === undefined) return undefined;
  let [belowC, belowG] = rows[0] as readonly [number, number];
  for (const [rowC, rowG] of rows) {
    if (rowC >= temperatureC)
      return rowC === belowC ? rowG : belowG + ((temperatureC - belowC) / (rowC - belowC)) * (rowG - belowG);
    [belowC, belowG] = [rowC, rowG];
  }
  return belowG;
}
