/*
 * Room: contrast. How the gradient grows with time of development.
 */
import { inRange, plainObject, positive } from "../core/guards.js";
import type { LawOrigin } from "../core/term.js";

/** Standard deviations of the three numbers of a {@link GrowthLaw}. */
export interface GrowthSpread {
  readonly gammaInfinity: number;
  readonly ratePerS: number;
  readonly appearanceS: number;
}

/**
 * Growth of the gradient: γ(t) = γ∞(1 − e^(−k(t − t0))), with γ∞ the limit (above 0 to 1000), k in 1/s (above
 * 0 to 100) and t0 the time of appearance in s (0 to 1e6).
 */
export interface GrowthLaw extends LawOrigin {
  readonly gammaInfinity: number;
  readonly ratePerS: number;
  readonly appearanceS: number;
  readonly sd?: GrowthSpread;
}

/** Checks a law; throws otherwise. */
export function checkedGrowth(where: string, law: GrowthLaw): GrowthLaw {
  plainObject(where, law, "/law");
  positive(where, law.gammaInfinity, 1000, undefined, "/law/gammaInfinity");
  positive(where, law.ratePerS, 100, "ratePerS", "/law/ratePerS");
  inRange(where, law.appearanceS, 0, 1e6, "timeS", "/law/appearanceS");
  if (law.sd !== undefined) {
    const { gammaInfinity, ratePerS, appearanceS } = plainObject(where, law.sd, "/law/sd");
    inRange(where, gammaInfinity, 0, 1000, undefined, "/law/sd/gammaInfinity");
    inRange(where, ratePerS, 0, 100, "ratePerS", "/law/sd/ratePerS");
    inRange(where, appearanceS, 0, 1e6, "timeS", "/law/sd/appearanceS");
  }
  return law;
}

/** The standard deviation of γ∞: a tenth of it where the law states none. */
export function limitSd({ gammaInfinity, sd }: GrowthLaw): number {
  return sd?.gammaInfinity ?? gammaInfinity / 10;
}
