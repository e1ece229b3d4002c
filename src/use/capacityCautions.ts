import { isPast, type Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import { pastCapacitySentence } from "./text.js";

/**
 * Whether a bath has developed more than it can.
 *
 * @param usedCm2PerL - area developed in a litre of the bath
 * @param capacityCm2PerL - what a litre of the bath can develop; `undefined` when nobody knows
 * @returns one caution `bath-past-capacity` of severity stop, without a path, or none
 */
export function capacityCautions(
  usedCm2PerL: number,
  capacityCm2PerL: number | undefined,
): readonly Caution[] {
  if (capacityCm2PerL === undefined || !isPast(usedCm2PerL, capacityCm2PerL)) return [];
  const figures = { quantity: "cm2PerL", limit: capacityCm2PerL, actual: usedCm2PerL } as const;
  return [makeCaution(pastCapacitySentence, "bath-past-capacity", "stop", figures)];
}
