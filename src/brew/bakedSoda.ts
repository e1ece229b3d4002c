import { inRange } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { MOST, type WeighedPart } from "./brew.js";
import { CARBONATE_PER_BICARBONATE } from "./bakeYield.js";

/**
 * Partly baked soda as what it is, a mixture, to be spread into the ingredients of a brew.
 *
 * @param input - `massG`, grams of the baked powder to be used, 0 to 100000; `converted`, the fraction of the
 * baking soda that has turned, 0 to 1, from {@link bakeProgress}
 * @returns two parts, anhydrous soda and baking soda, that together weigh `massG`
 * @throws TypeError when a figure is not a number
 * @throws RangeError when it is out of range
 *
 * @remarks Of one gram put in, x turned leaves 0.6308 x of carbonate and 1 − x of bicarbonate.
 *
 * @example
 * ```ts
 * bakedSoda({ massG: 50, converted: 0.5 })[0].massG // => 19.34
 * ```
 */
export function bakedSoda(input: {
  readonly massG: number;
  readonly converted: number;
}): readonly [WeighedPart, WeighedPart] {
  const given = onlyFields("bakedSoda/input", input, ["massG", "converted"]);
  const massG = inRange("bakedSoda/massG", given["massG"], 0, MOST, "massG");
  const converted = inRange("bakedSoda/converted", given["converted"], 0, 1);
  const carbonate = converted * CARBONATE_PER_BICARBONATE;
  const carbonateG = (massG * carbonate) / (carbonate + (1 - converted));
  return [
    { ingredient: "soda-anhydrous", massG: carbonateG },
    { ingredient: "baking-soda", massG: Math.max(0, massG - carbonateG) },
  ];
}
