import type { Caution } from "./caution.js";
import type { CautionData } from "./cautionData.js";
import { logSdOf, type Effect } from "./cause.js";
import { makeCaution } from "./cautionTexts.js";
import { wrongWaySentence } from "./text.js";

/** Less than this in ln(time) is rounding of printed rows (assumed), */
const ROUNDING_LOG = 0.01;
/** and less than so many of its own standard deviations is chance in runs (assumed). */
const CHANCE = 2;
/** Of a law that departs one is enough: its numbers count as independent here, which makes it about twice. */
const DEPARTED_CHANCE = 1;

/**
 * Cautions, and one more where a law goes the wrong way.
 *
 * @param more - above 0 where the bath gets warmer, stronger, younger or more often moved, or the film is
 * pushed less
 * @param effect - what that does to ln(time); a change that is within its own spread is not called wrong
 */
export function orWrongWay(
  cautions: readonly Caution[],
  cause: CautionData["wrong-way"]["cause"],
  more: number,
  effect: Effect,
): readonly Caution[] {
  const chance = effect.further === undefined ? CHANCE : DEPARTED_CHANCE;
  const away = Math.sign(more) * effect.log;
  if (!(away > ROUNDING_LOG && away > chance * logSdOf(effect))) return cautions;
  return [...cautions, makeCaution(wrongWaySentence, "wrong-way", "warn", { data: { cause } })];
}
