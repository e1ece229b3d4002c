import type { Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import { checkedEstimate, timeEstimate, Z90, type TimeEstimate } from "../core/estimate.js";
import { positive } from "../core/guards.js";
import { disagreeSentence } from "./text.js";

/** Two estimates as one. */
export interface CombinedEstimate extends TimeEstimate {
  /** how far the two lie apart, in standard deviations of their difference; 0 where they agree */
  readonly apart: number;
  /** where the two do not agree */
  readonly cautions: readonly Caution[];
}

/**
 * Two estimates farther apart than this many standard deviations disagree beyond chance: one pair in twenty
 * does so by chance.
 */
const BEYOND_CHANCE = 1.96;

/**
 * Two independent estimates of one time of development, combined: the computed time and what the image's
 * appearance asks for.
 *
 * @param a - median and 90 % interval, s, as `compensate` or `appearanceEstimate` gives them
 * @param b - the other one; it must not rest on the same observation
 * @returns the mean in ln(time), each weighted by 1/variance, with its 90 % interval, wider the farther they
 * lie apart; a caution when they disagree beyond chance
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a time is not above 0 to 1e9 s, or an interval does not hold its median
 *
 * @remarks 1/σ² = 1/σa² + 1/σb². The spread of each is taken as ln(high/low)/3.29. Two that lie farther
 * apart than is to be expected, one standard deviation of their difference, are known less well than they
 * claim: σ is then multiplied by the root of their reduced chi-square, which is that distance in standard
 * deviations and 1 at the expected one (R. T. Birge, Phys. Rev. 40, 1932, p. 207, from memory). Beyond
 * chance, find out which one is wrong.
 *
 * @example
 * ```ts
 * const computed = { timeS: 400, lowS: 300, highS: 533.3 };
 * combineEstimates(computed, { timeS: 500, lowS: 375, highS: 666.7 }).timeS // => 447.2
 * const seen = { timeS: 700, lowS: 595, highS: 823 };
 * const late = combineEstimates({ timeS: 400, lowS: 340, highS: 470 }, seen);
 * late.lowS < 400 && late.highS > 700 // => true
 * ```
 */
export function combineEstimates(a: TimeEstimate, b: TimeEstimate): CombinedEstimate {
  const [meanA, varianceA] = logNormal("combineEstimates/a", a);
  const [meanB, varianceB] = logNormal("combineEstimates/b", b);
  const sum = varianceA + varianceB;
  const gap = Math.abs(meanA - meanB);
  // Two that are both exact have no variance to weigh by: the middle, and any gap at all is beyond chance.
  const shareA = sum > 0 ? varianceB / sum : 0.5;
  const apart = gap === 0 ? 0 : sum > 0 ? gap / Math.sqrt(sum) : Number.MAX_VALUE;
  // Of two exact ones that differ, half the gap is what is left of the formula.
  const logSd = sum > 0 ? Math.sqrt(shareA * varianceA) * Math.max(1, apart) : gap / 2;
  const estimate = timeEstimate(Math.exp(shareA * meanA + (1 - shareA) * meanB), logSd);
  // Two that are far apart may have no common interval that a clock could show.
  positive("combineEstimates/b", estimate.lowS, 1e9, "timeS", "/lowS");
  positive("combineEstimates/b", estimate.highS, 1e9, "timeS", "/highS");
  const cautions: readonly Caution[] =
    apart > BEYOND_CHANCE
      ? [
          makeCaution(disagreeSentence, "estimates-disagree", "warn", {
            quantity: "standardDeviations",
            limit: BEYOND_CHANCE,
            actual: apart,
            data: { firstS: a.timeS, secondS: b.timeS },
          }),
        ]
      : [];
  return { ...estimate, apart, cautions };
}

/** Mean and variance of ln(time). */
function logNormal(where: string, estimate: TimeEstimate): readonly [mean: number, variance: number] {
  const { timeS, lowS, highS } = checkedEstimate(where, estimate, 1e9);
  return [Math.log(timeS), (Math.log(highS / lowS) / (2 * Z90)) ** 2];
}
