/*
 * Room: compensate. The term of contrast: the contrast room knows how long a gradient takes.
 */
import type { Caution } from "../core/caution.js";
import { Z90 } from "../core/estimate.js";
import { positive } from "../core/guards.js";
import { contrastLogSd } from "../contrast/contrastLogSd.js";
import { genericGrowthLaw } from "../contrast/genericGrowthLaw.js";
import { limitSd, type GrowthLaw } from "../contrast/growth.js";
import { timeForGamma } from "../contrast/timeForGamma.js";
import { caution, choose, needed, row } from "./terms.js";
import type { Baseline, Conditions, Knowledge, WorkedTerm } from "./types.js";

/**
 * The term of contrast, when the conditions name a gradient. Temperature acts on the whole clock, so the
 * ratio of two times is all.
 */
export function contrastTerm(
  baseline: Baseline,
  conditions: Conditions,
  knowledge: Knowledge,
): WorkedTerm | undefined {
  const known =
    baseline.gamma === undefined ? undefined : positive("compensate/baseline/gamma", baseline.gamma, 1000);
  if (conditions.gamma === undefined) return undefined;
  const from = needed("gamma", known);
  const to = positive("compensate/conditions/gamma", conditions.gamma, 1000);
  const [law, basis] = choose("growth", knowledge.growth, genericGrowthLaw);
  const value = timeForGamma(law, to) / timeForGamma(law, from);
  const logSd = contrastLogSd(law, from, to);
  return {
    factor: row("contrast", value, logSd, law, basis),
    cautions: from === to ? [] : nearLimit(law, from, to, Z90 * logSd > Math.abs(Math.log(value))),
  };
}

/**
 * Where the spread, a linear estimate, is worth little. Near the upper limit the 90 % range of the limit
 * itself reaches the steeper gradient, so that the time may have no upper end; near 0 the time is no longer
 * than what is unknown of the appearance, and the interval reaches past the known time.
 */
function nearLimit(law: GrowthLaw, from: number, to: number, pastKnown: boolean): readonly Caution[] {
  const spread = limitSd(law);
  const left = law.gammaInfinity - Math.max(from, to);
  const above = left < Z90 * spread;
  if (!above && !pastKnown) return [];
  const said = caution(
    "near-limit",
    left < spread ? "stop" : "warn",
    "gamma",
    "Near a limit of growth the interval is rough: develop a test strip before the negative.",
  );
  return [
    {
      ...said,
      limit: above ? law.gammaInfinity : 0,
      actual: above ? Math.max(from, to) : Math.min(from, to),
    },
  ];
}
