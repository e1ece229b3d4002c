/*
 * Room: compensate. The term of contrast: the contrast room knows how long a gradient takes.
 */
import { positive } from "../core/guards.js";
import { contrastLogSd } from "../contrast/contrastLogSd.js";
import { genericGrowthLaw } from "../contrast/genericGrowthLaw.js";
import { timeForGamma } from "../contrast/timeForGamma.js";
import { choose, needed, row } from "./terms.js";
import type { Baseline, Conditions, Knowledge, WorkedTerm } from "./types.js";

/** The term of contrast, when the conditions name a gradient. Temperature acts on the whole clock, so the ratio of two times is all. */
export function contrastTerm(baseline: Baseline, conditions: Conditions, knowledge: Knowledge): WorkedTerm | undefined {
  const known = baseline.gamma === undefined ? undefined : positive("compensate: baseline.gamma", baseline.gamma, 1000, "");
  if (conditions.gamma === undefined) return undefined;
  const from = needed("gamma", known);
  const to = positive("compensate: conditions.gamma", conditions.gamma, 1000, "");
  const [law, basis] = choose("growth", knowledge.growth, genericGrowthLaw);
  const value = timeForGamma(law, to) / timeForGamma(law, from);
  return { factor: row("contrast", value, contrastLogSd(law, from, to), law, basis), cautions: [] };
}
