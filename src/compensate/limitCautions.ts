import { judgeBath } from "../bath/judgeBath.js";
import type { Caution } from "../core/caution.js";
import type { TimeEstimate } from "../core/estimate.js";
import type { Baseline, Conditions, Knowledge } from "./types.js";

/**
 * What limits today's bath is past, by the rules of `bathVerdict`: when the conditions name its use or age,
 * and, where it has a life, whether it lasts until the pour-out.
 */
export function limitCautions(
  { timeS, highS }: TimeEstimate,
  baseline: Baseline,
  conditions: Conditions,
  { use, age }: Knowledge,
): readonly Caution[] {
  const { usedCm2PerL, ageH } = conditions;
  const named = usedCm2PerL !== undefined || ageH !== undefined;
  if (!named && age?.kind !== "life") return [];
  const judged = judgeBath("compensate/conditions", {
    usedCm2PerL: named ? (usedCm2PerL ?? baseline.usedCm2PerL) : 0,
    ageH: ageH ?? baseline.ageH,
    dilution: conditions.dilution ?? baseline.dilution,
    use,
    age,
    timeS,
    highS,
  });
  return judged.cautions.flatMap((one) => {
    // The known time was found at the baseline's use, whatever the capacity.
    if (one.path === "/usedCm2PerL" && usedCm2PerL === undefined) return [];
    const side = one.path === "/ageH" && ageH === undefined ? "baseline" : "conditions";
    return [{ ...one, path: `/${side}${one.path ?? ""}` }];
  });
}
