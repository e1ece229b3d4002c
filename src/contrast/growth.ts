/*
 * Module: contrast. How the gradient grows with time of development.
 */
import { inRange, plainObject, positive } from "../core/guards.js";
import { checkedOrigin, type LawOrigin } from "../core/term.js";

/** Correlations between the three numbers of a {@link GrowthLaw}, each from −1 to 1. */
export interface GrowthCorrelation {
  /** of γ∞ and k: a fit knows their product better than either, so it is below 0 */
  readonly limitRate: number;
  /** of γ∞ and t0 */
  readonly limitAppearance: number;
  /** of k and t0 */
  readonly rateAppearance: number;
}

/** Standard deviations of the three numbers of a {@link GrowthLaw}. */
export interface GrowthSpread {
  /** of the limit, 0 to 1000 */
  readonly gammaInfinity: number;
  /** of the rate, 1/s, 0 to 100 */
  readonly ratePerS: number;
  /** of the time of appearance, s, 0 to 1e6 */
  readonly appearanceS: number;
  /** how the three are correlated; not at all when left out */
  readonly correlation?: GrowthCorrelation | undefined;
}

/**
 * Growth of the gradient: γ(t) = γ∞(1 − e^(−k(t − t0))), with γ∞ the limit (above 0 to 1000), k in 1/s (above
 * 0 to 100) and t0 the time of appearance in s (0 to 1e6).
 */
export interface GrowthLaw extends LawOrigin {
  /** the gradient that is never passed, above 0 to 1000 */
  readonly gammaInfinity: number;
  /** rate of growth, 1/s, above 0 to 100 */
  readonly ratePerS: number;
  /** when the image begins to grow, s, 0 to 1e6 */
  readonly appearanceS: number;
  /** standard deviations of the three; 10, 10 and 20 % of them when left out */
  readonly sd?: GrowthSpread | undefined;
}

/** Checks a law; throws otherwise. */
export function checkedGrowth(where: string, given: unknown): GrowthLaw {
  const law = checkedOrigin(where, given as GrowthLaw);
  positive(where, law.gammaInfinity, 1000, undefined, "/gammaInfinity");
  positive(where, law.ratePerS, 100, "ratePerS", "/ratePerS");
  inRange(where, law.appearanceS, 0, 1e6, "timeS", "/appearanceS");
  if (law.sd !== undefined) {
    const { gammaInfinity, ratePerS, appearanceS } = plainObject(where, law.sd, "/sd");
    inRange(where, gammaInfinity, 0, 1000, undefined, "/sd/gammaInfinity");
    inRange(where, ratePerS, 0, 100, "ratePerS", "/sd/ratePerS");
    inRange(where, appearanceS, 0, 1e6, "timeS", "/sd/appearanceS");
    const { correlation } = law.sd;
    if (correlation !== undefined)
      for (const pair of ["limitRate", "limitAppearance", "rateAppearance"] as const)
        inRange(
          where,
          plainObject(where, correlation, "/sd/correlation")[pair],
          -1,
          1,
          undefined,
          `/sd/correlation/${pair}`,
        );
  }
  return law;
}

/** The standard deviation of γ∞: a tenth of it where the law states none. */
export function limitSd({ gammaInfinity, sd }: GrowthLaw): number {
  return sd?.gammaInfinity ?? gammaInfinity / 10;
}

/** How ln of the time that gives a gradient runs with the gradient, below the limit of a checked law. */
export function logTimePerGamma(law: GrowthLaw, gamma: number): number {
  return 1 / (law.ratePerS * (law.gammaInfinity - gamma) * timeOfGamma(law, gamma));
}

/** The time of development that gives a gradient below the limit of a checked law. */
export function timeOfGamma({ gammaInfinity, ratePerS, appearanceS }: GrowthLaw, gamma: number): number {
  const left = gammaInfinity - gamma;
  // From half the limit on the difference is exact, and nothing is lost near the limit.
  const log = left < gamma ? Math.log(left / gammaInfinity) : Math.log1p(-gamma / gammaInfinity);
  return appearanceS - log / ratePerS;
}
