import type { Caution } from "./caution.js";
import type { CautionData } from "./cautionData.js";
import { makeCaution } from "./cautionTexts.js";
import { wrongWaySentence } from "./text.js";

/** Less than this in ln(time) is rounding of printed rows, or chance in runs (assumed). */
const ROUNDING_LOG = 0.01;

/**
 * Cautions, and one more where a law goes the wrong way.
 *
 * @param more - above 0 where the bath gets warmer, stronger, younger or more often moved, or the film is
 * pushed less
 * @param log - what that does to ln(time)
 */
export function orWrongWay(
  cautions: readonly Caution[],
  cause: CautionData["wrong-way"]["cause"],
  more: number,
  log: number,
): readonly Caution[] {
  if (!(Math.sign(more) * log > ROUNDING_LOG)) return cautions;
  return [...cautions, makeCaution(wrongWaySentence, "wrong-way", "warn", { data: { cause } })];
}
