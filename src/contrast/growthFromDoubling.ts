import { inRange, positive, refuse } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { checkedGrowth, type GrowthLaw } from "./growth.js";
import { betweenText } from "./text.js";

/** Two gradients, at a time and at twice that time. */
export interface DoublingPair {
  /** the shorter time, s, above 0 to 1e6, counted from the time of appearance */
  readonly timeS: number;
  /** the gradient at `timeS`, above 0 to 1000 */
  readonly gamma: number;
  /** the gradient at twice `timeS`; above `gamma` and below twice `gamma` */
  readonly gammaAtDouble: number;
  /** time of appearance, s, 0 to 1e6; 0 when left out */
  readonly appearanceS?: number | undefined;
}

/**
 * The growth law from two gradients, one at a time and one at twice that time.
 *
 * @param pair - the shorter time and the two gradients; both times are counted from the time of appearance
 * @returns the growth law that goes through both
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range, or the second gradient is not above the first and below
 * twice the first, or gives no usable law
 *
 * @remarks k = ln(γ1/(γ2 − γ1))/t and γ∞ = γ1²/(2γ1 − γ2): the two-time method of the older handbooks of
 * sensitometry (from memory; it follows from the growth law). Two points leave nothing to judge the fit by:
 * an error in γ2 goes into γ∞ several times over.
 *
 * @example
 * ```ts
 * growthFromDoubling({ timeS: 300, gamma: 1.2642, gammaAtDouble: 1.7293 }).gammaInfinity // => 2.0
 * ```
 */
export function growthFromDoubling(pair: DoublingPair): GrowthLaw {
  onlyFields("growthFromDoubling/pair", pair, ["timeS", "gamma", "gammaAtDouble", "appearanceS"]);
  const timeS = positive("growthFromDoubling/pair/timeS", pair.timeS, 1e6, "timeS");
  const gamma = positive("growthFromDoubling/pair/gamma", pair.gamma, 1000);
  const later = positive("growthFromDoubling/pair/gammaAtDouble", pair.gammaAtDouble, 1000);
  const { appearanceS = 0 } = pair;
  inRange("growthFromDoubling/pair/appearanceS", appearanceS, 0, 1e6, "timeS");
  if (!(later > gamma && later < 2 * gamma))
    refuse(
      "growthFromDoubling/pair/gammaAtDouble",
      "between-once-and-twice",
      betweenText,
      { above: gamma },
      later,
    );
  // A law that comes out must be one that may go in.
  return checkedGrowth("growthFromDoubling/pair", {
    gammaInfinity: gamma ** 2 / (2 * gamma - later),
    ratePerS: Math.log(gamma / (later - gamma)) / timeS,
    appearanceS,
  });
}
