import { frozen } from "../core/frozen.js";
import type { GrowthLaw } from "./growth.js";

/**
 * The growth law taken when none is given: limit 1.8 ± 0.5, 0.83 per minute, image at once.
 *
 * @remarks The middle of the two developers of H. E. Ives, Airplane Photography, 1920, ch. XXII (limits 1.45
 * and 2.12, constants 0.32 and 0.40). The book prints no unit for the constants. Common logarithms per minute
 * are inferred: read so, both developers reach one gradient, 1.14, at their printed factor times their time
 * of appearance, to 0.2 %; natural logarithms leave the two 16 % apart. So k = 0.36 × ln 10 per minute. Only
 * the ratio of two times is used, in which k cancels. It is wide on purpose: limits differ by material more
 * than by anything else, from below 1 for some modern films to above 2 for process plates.
 */
export const genericGrowthLaw: GrowthLaw = /* @__PURE__ */ frozen({
  gammaInfinity: 1.8,
  ratePerS: 0.0138,
  appearanceS: 0,
  sd: { gammaInfinity: 0.5, ratePerS: 0.004, appearanceS: 5 },
  seen: "read",
  sources: [
    "generic growth between the two developers of H. E. Ives, Airplane Photography, Philadelphia, 1920, " +
      "ch. XXII " +
      "(the unit of the constants is inferred)",
  ],
  runs: 0,
});
