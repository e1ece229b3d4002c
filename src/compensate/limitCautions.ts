import { lifeOf, type LifeLaw } from "../age/ownAge.js";
import { judgeBath } from "../bath/judgeBath.js";
import type { Caution } from "../core/caution.js";
import type { TimeEstimate } from "../core/estimate.js";
import type { Baseline, Conditions, Knowledge } from "./types.js";

const NONE: readonly Caution[] = [];

/** No bath was judged that may serve again. */
const NO_BATH: Conditions = {};

/** The life of today's brew, where its strength carries one. */
function lifeIn({ strength }: Conditions): LifeLaw | undefined {
  const { lifeH = 0, lifeLowH = lifeH } = strength ?? {};
  return lifeH > 0 ? { kind: "life", lifeH, lowH: lifeLowH } : undefined;
}

/**
 * Makes the function that says what limits today's bath is past, by the rules of `bathVerdict`: when the
 * conditions name its use or age, and, where it has a life, whether it lasts until the pour-out.
 */
export function limitJudge(
  baseline: Baseline,
  { use, age }: Knowledge,
): (estimate: TimeEstimate, conditions: Conditions) => readonly Caution[] {
  // Without a life the judgement does not depend on the time: it serves again for the same bath.
  let last = NO_BATH;
  let lastCautions = NONE;
  return ({ timeS, highS }, conditions) => {
    const { usedCm2PerL, ageH, dilution, strength } = conditions;
    const named = usedCm2PerL !== undefined || ageH !== undefined;
    const life = lifeIn(conditions);
    const lives = lifeOf(age, life) !== undefined;
    if (!named && !lives) return NONE;
    const same = last.usedCm2PerL === usedCm2PerL && last.ageH === ageH && last.dilution === dilution;
    if (!lives && same && strength === undefined) return lastCautions;
    const judged = judgeBath("compensate/conditions", {
      usedCm2PerL: named ? (usedCm2PerL ?? baseline.usedCm2PerL) : 0,
      ageH: ageH ?? baseline.ageH,
      dilution: dilution ?? baseline.dilution,
      use,
      age,
      life,
      estimatedCm2PerL: strength?.capacityCm2PerL,
      // The known time was found at the baseline's age, however old that was.
      knownAgeH: baseline.ageH,
      timeS,
      highS,
    });
    lastCautions = judged.cautions.flatMap((one) => {
      // The known time was found at the baseline's use, whatever the capacity.
      if (one.path === "/usedCm2PerL" && usedCm2PerL === undefined) return [];
      const side = one.path === "/ageH" && ageH === undefined ? "baseline" : "conditions";
      return [Object.freeze({ ...one, path: `/${side}${one.path ?? ""}` })];
    });
    // A dilution in parts and a strength are objects that their owner may change: they do not serve again.
    const mutable = typeof dilution === "object" || strength !== undefined;
    last = mutable ? NO_BATH : { usedCm2PerL, ageH, dilution };
    return lastCautions;
  };
}
