/*
 * Contrast as a cause: the gradient on each side. Temperature acts on the whole clock, so the ratio of two
 * times of development is all.
 */
import type { Caution } from "../core/caution.js";
import type { Cause, Effect } from "../core/cause.js";
import { makeCaution } from "../core/cautionTexts.js";
import { Z90 } from "../core/estimate.js";
import { positive, refuse } from "../core/guards.js";
import { contrastSpread } from "./contrastSpread.js";
import { genericGrowthLaw } from "./genericGrowthLaw.js";
import { checkedGrowth, limitSd, timeOfGamma, type GrowthLaw } from "./growth.js";
import { belowTopText, nearLimitSentence } from "./text.js";

/** Contrast as a cause. */
export const contrastCause: Cause<GrowthLaw, number, "contrast"> = {
  name: "contrast",
  field: "gamma",
  law: "growth",
  lawFields: ["gammaInfinity", "ratePerS", "appearanceS", "sd"],
  generic: genericGrowthLaw,
  read: (at, given) => positive(at, given, 1000, "gamma"),
  check: checkedGrowth,
  within: belowLimit,
  effect: contrastEffect,
  cautions: nearLimit,
};

/** A gradient at or above the limit is reached by no time. */
export function belowLimit(at: string, { gammaInfinity }: GrowthLaw, gamma: number): void {
  if (gamma >= gammaInfinity)
    refuse(at, "below-top", belowTopText, { above: 0, max: gammaInfinity, quantity: "gamma" }, gamma);
}

/** The effect of going from one gradient to another. */
export function contrastEffect(law: GrowthLaw, from: number, to: number): Effect {
  if (from === to) return { log: 0, slope: 0, sd: 0, beside: 0 };
  const exact = timeOfGamma(law, to) / timeOfGamma(law, from);
  return { log: Math.log(exact), exact, slope: 0, sd: 0, beside: contrastSpread(law, from, to) };
}

/**
 * Where the spread, a linear estimate, is worth little. Near the upper limit the 90 % range of the limit
 * itself reaches the steeper gradient, so that the time may have no upper end; near 0 the time is no longer
 * than what is unknown of the appearance, and the interval reaches past the known time.
 */
function nearLimit(law: GrowthLaw, from: number, to: number, effect: Effect): readonly Caution[] {
  if (from === to) return [];
  const spread = limitSd(law);
  const left = law.gammaInfinity - Math.max(from, to);
  const above = left < Z90 * spread;
  if (!above && !(Z90 * effect.beside > Math.abs(effect.log))) return [];
  return [
    makeCaution(nearLimitSentence, "near-limit", left < spread ? "stop" : "warn", {
      quantity: "gamma",
      limit: above ? law.gammaInfinity : 0,
      actual: above ? Math.max(from, to) : Math.min(from, to),
      data: { side: above ? "top" : "bottom" },
    }),
  ];
}
