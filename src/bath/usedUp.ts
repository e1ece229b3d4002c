import type { Caution } from "../core/caution.js";
import { capacityCautions } from "../use/capacityCautions.js";
import { pastEstimate } from "./pastEstimate.js";

/** Whether a bath has developed more than it can: past a stated capacity is a stop. */
export function usedUp(
  usedCm2PerL: number,
  capacityCm2PerL: number | undefined,
  stated: boolean,
): readonly Caution[] {
  return capacityCautions(usedCm2PerL, capacityCm2PerL).flatMap((one) => {
    const severity = stated ? "stop" : pastEstimate(usedCm2PerL / (capacityCm2PerL as number));
    return severity === undefined ? [] : [{ ...one, severity, path: "/usedCm2PerL" }];
  });
}
