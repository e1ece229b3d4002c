import { inRange, notOneOf, plainObject, positive, refuse } from "../core/guards.js";
import { MOST_SLOWED, slowingText } from "../core/text.js";

/**
 * How one development wears out its own bath: a published use rule (`increase`, 0.10 is 10 % more time, for
 * every `perCm2PerL` square centimetres developed in a litre) and today's load. A linear rule with a `shape`
 * is taken by its increase alone: for a light load they are the same.
 */
export interface OwnUse {
  /** 0 to 10 */
  readonly increase: number;
  /** cm² per litre, 0.001 to 1e6 */
  readonly perCm2PerL: number;
  /** how the increases of several areas add up */
  readonly growth: "linear" | "compound";
  /** of an increase that was learned: the increase of the rule whose curve it scales in ln(time), 0 to 10 */
  readonly shape?: number | undefined;
  /** what is being developed, cm², 0 to 1e6 */
  readonly areaCm2: number;
  /** volume of the working bath, ml, above 0 to 1e6 */
  readonly volumeMl: number;
}

/**
 * How much longer one development takes because it wears out its own bath.
 *
 * @param use - the use rule and today's load
 * @returns the time factor against a bath so large that it does not change, 1 or more
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range, or the bath would end more than 1000 times slower
 *
 * @remarks The bath is used in step with the development, so at a share s of it the time goes 1 + p·s times
 * slower (linear), or (1 + increase)^(p·s), p the load in portions of the rule. The mean over s from 0 to 1
 * is 1 + increase·p/2, or (q^p − 1)/(p ln q). A time that is known for the same film in the same volume has
 * this in it already: take the ratio of two such factors.
 *
 * @example
 * ```ts
 * const rule = { increase: 0.1, perCm2PerL: 516.128, growth: "linear" } as const;
 * ownUseFactor({ ...rule, areaCm2: 516.128, volumeMl: 250 }) // => 1.2
 * ```
 */
export function ownUseFactor(use: OwnUse): number {
  return loadOf("ownUseFactor/use", use).whole;
}

/**
 * What a bath of this load needs for the whole development, in units of the target, and what share of it is
 * done once so much is worked.
 */
interface Load {
  readonly whole: number;
  readonly share: (worked: number) => number;
}

/** Works out the load; `where` is its place, for errors. */
export function loadOf(where: string, use: OwnUse): Load {
  plainObject(where, use);
  const { growth } = use;
  const { increase, shape = increase } = use;
  inRange(where, increase, 0, 10, undefined, "/increase");
  const curve = inRange(where, shape, 0, 10, undefined, "/shape") || 1e-20;
  const per = inRange(where, use.perCm2PerL, 0.001, 1e6, "cm2PerL", "/perCm2PerL");
  const area = inRange(where, use.areaCm2, 0, 1e6, "areaCm2", "/areaCm2");
  const portions = area / ((positive(where, use.volumeMl, 1e6, "volumeMl", "/volumeMl") / 1000) * per);
  const kind: unknown = growth;
  if (kind !== "linear" && kind !== "compound") notOneOf(`${where}/growth`, ["linear", "compound"], kind);
  const slower =
    growth === "linear" ? portions * increase : (portions * increase * Math.log1p(curve)) / curve;
  const last = growth === "linear" ? 1 + slower : Math.exp(slower);
  if (!(last <= MOST_SLOWED))
    refuse(`${where}/areaCm2`, "slowing-at-most", slowingText, { max: MOST_SLOWED }, area);
  if (growth === "linear" || slower === 0)
    return {
      whole: 1 + slower / 2,
      // The root of share + slower·share²/2 = worked in the form that holds for a bath that does not slow at
      // all.
      share: (worked) => (2 * worked) / (1 + Math.sqrt(1 + 2 * slower * worked)),
    };
  return {
    whole: Math.expm1(slower) / slower,
    share: (worked) => Math.log1p(slower * worked) / slower,
  };
}
