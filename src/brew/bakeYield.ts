import type { Caution } from "../core/caution.js";
import { inRange } from "../core/guards.js";
import { BICARBONATE_G_PER_MOL, SODA_G_PER_MOL } from "../handbook/ingredients.js";
import { MOST } from "./brew.js";
import { say } from "./text.js";

/** Grams of carbonate from a gram of bicarbonate, 0.6308. */
export const CARBONATE_PER_BICARBONATE: number = SODA_G_PER_MOL / (2 * BICARBONATE_G_PER_MOL);

/** What baking leaves, and what goes off as steam and carbon dioxide. */
export interface BakeYield {
  /** anhydrous washing soda, g */
  readonly carbonateG: number;
  /** what goes off as steam and gas, g */
  readonly lossG: number;
  /** what to mind before the oven is lit */
  readonly cautions: readonly Caution[];
}

/**
 * Anhydrous washing soda from baking soda baked to the end: 0.6308 g a gram, 36.92 % lost.
 *
 * @param bicarbonateG - dry baking soda, 0 to 100000 g
 * @returns grams of anhydrous carbonate, and grams lost as water and carbon dioxide
 * @throws TypeError when the mass is not a number
 * @throws RangeError when it is out of range
 *
 * @remarks 2 NaHCO3 → Na2CO3 + H2O + CO2, from molar masses (IUPAC CIAAW, 2021). Watch the weight with {@link
 * bakeProgress}: the scale decides, not the clock. Hot soda is caustic dust and gives off steam: open the
 * oven with care, let in air, use no aluminium tray, and let it cool.
 *
 * @example
 * ```ts
 * bakeYield(100).carbonateG // => 63.08
 * bakeYield(100).lossG // => 36.92
 * ```
 */
export function bakeYield(bicarbonateG: number): BakeYield {
  inRange("bakeYield/bicarbonateG", bicarbonateG, 0, MOST, "massG");
  const carbonateG = bicarbonateG * CARBONATE_PER_BICARBONATE;
  return { carbonateG, lossG: bicarbonateG - carbonateG, cautions: [say("baking-care", "warn")] };
}
