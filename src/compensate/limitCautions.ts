import { judgeBath } from "../bath/judgeBath.js";
import type { Caution } from "../core/caution.js";
import type { TimeEstimate } from "../core/estimate.js";
import type { Baseline, Conditions, Knowledge } from "./types.js";

const NONE: readonly Caution[] = [];

/**
 * Makes the function that says what limits today's bath is past, by the rules of `bathVerdict`: when the
 * conditions name its use or age, and, where it has a life, whether it lasts until the pour-out.
 */
export function limitJudge(
  baseline: Baseline,
  { use, age }: Knowledge,
): (estimate: TimeEstimate, conditions: Conditions) => readonly Caution[] {
  const lives = age?.kind === "life";
  // Without a life the judgement does not depend on the time: it serves again for the same bath.
  let last: Conditions = {};
  let lastCautions = NONE;
  return ({ timeS, highS }, conditions) => {
    const { usedCm2PerL, ageH, dilution } = conditions;
    const named = usedCm2PerL !== undefined || ageH !== undefined;
    if (!named && !lives) return NONE;
    if (!lives && last.usedCm2PerL === usedCm2PerL && last.ageH === ageH && last.dilution === dilution)
      return lastCautions;
    const judged = judgeBath("compensate/conditions", {
      usedCm2PerL: named ? (usedCm2PerL ?? baseline.usedCm2PerL) : 0,
      ageH: ageH ?? baseline.ageH,
      dilution: dilution ?? baseline.dilution,
      use,
      age,
      timeS,
      highS,
    });
    lastCautions = judged.cautions.flatMap((one) => {
      // The known time was found at the baseline's use, whatever the capacity.
      if (one.path === "/usedCm2PerL" && usedCm2PerL === undefined) return [];
      const side = one.path === "/ageH" && ageH === undefined ? "baseline" : "conditions";
      return [Object.freeze({ ...one, path: `/${side}${one.path ?? ""}` })];
    });
    // A dilution in parts is an object that its owner may change: only text serves again.
    last = typeof dilution === "object" ? {} : { usedCm2PerL, ageH, dilution };
    return lastCautions;
  };
}
