import { isPast, type Caution } from "../core/caution.js";
import { pastCapacityText } from "./text.js";

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
  const facts = { quantity: "cm2PerL", limit: capacityCm2PerL, actual: usedCm2PerL } as const;
  return [{ code: "bath-past-capacity", severity: "stop", message: pastCapacityText(facts), ...facts }];
}
