import { inRange, plainObject, wrongValue, notOneOf } from "../core/guards.js";
import type { LawOrigin } from "../core/term.js";

/**
 * A published rule for more time as a bath is used: `increase` (0.10 is 10 %) for every `perCm2PerL` square
 * centimetres developed in a litre, added up (`"linear"`) or multiplied (`"compound"`).
 */
export interface UseLaw extends LawOrigin {
  readonly increase: number;
  readonly perCm2PerL: number;
  readonly growth: "linear" | "compound";
  /** standard deviation of `increase`; a quarter of it when left out */
  readonly sdIncrease?: number;
  /** of an increase that was learned: the increase of the rule whose curve it scales in ln(time), 0 to 10 */
  readonly shape?: number;
  /** published or own capacity, cm² per litre */
  readonly capacityCm2PerL?: number;
}

/**
 * The use rule taken when none is given: 8 % for each roll of 516 cm² in a litre, linear, known to a factor
 * of two or so.
 *
 * @remarks Printed rules run from 2.4 to 14 % a roll in a litre.
 */
export const genericUseLaw: UseLaw = {
  increase: 0.08,
  perCm2PerL: 516.128,
  growth: "linear",
  sdIncrease: 0.04,
  sources: ["generic rule over published ones, 2.4 to 14 % a roll in a litre"],
};

/**
 * The factor on development time for what a bath has developed.
 *
 * @param fromCm2PerL - area developed in a litre of the bath when the time was known, 0 to 1e6 cm²/l; 0 is a
 * fresh bath
 * @param toCm2PerL - area developed in a litre of the bath that is asked about, 0 to 1e6 cm²/l
 * @param law - the rule: `increase` from 0 to 10, `perCm2PerL` from 0.001 to 1e6 cm²/l, `growth` `"linear"`
 * or `"compound"`, and `shape` where the increase was learned; {@link genericUseLaw} when left out
 * @returns the time under `to` divided by the time under `from`
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is out of range, or a bath would take more than 1000 times as long as a
 * fresh one
 *
 * @remarks Against a fresh bath, linear: 1 + increase × used/per; compound: (1 + increase)^(used/per); with
 * `shape` that of the rule whose increase is the shape, to the power increase/shape. Both are in print: "10 %
 * for each film" is added by the maker who wrote it and multiplied by many who read it; at ten films they are
 * 2.0 and 2.6. Bromide released by the films slows the bath as much as spent agent does, so the rule holds for
 * the developer it was printed for.
 *
 * @example
 * ```ts
 * useFactor(0, 1548.384, { increase: 0.1, perCm2PerL: 516.128, growth: "linear" }) // => 1.3
 * ```
 */
export function useFactor(fromCm2PerL: number, toCm2PerL: number, law: UseLaw = genericUseLaw): number {
  const from = useSlope("useFactor", law, fromCm2PerL, "/fromCm2PerL") * law.increase;
  const to = useSlope("useFactor", law, toCm2PerL, "/toCm2PerL") * law.increase;
  if (!(from < LONGEST_LOG)) tooLong("useFactor/fromCm2PerL", fromCm2PerL);
  if (!(to < LONGEST_LOG)) tooLong("useFactor/toCm2PerL", toCm2PerL);
  return Math.exp(to - from);
}

/** ln of the longest factor, 1000 times, with room for the rounding of the logarithm. */
const LONGEST_LOG = Math.log(1000.001);

function tooLong(at: string, usedCm2PerL: number): never {
  return wrongValue(at, "such that time grows at most 1000 times", usedCm2PerL);
}

/** The standard deviation of the increase of a checked rule. */
export function increaseSd({ increase, sdIncrease }: UseLaw): number {
  return sdIncrease ?? increase / 4;
}

/** How ln of the factor moves with the increase of a rule, which is checked. */
export function useSlope(where: string, law: UseLaw, usedCm2PerL: number, field = "/usedCm2PerL"): number {
  plainObject(where, law, "/law");
  const { increase, shape = increase } = law;
  inRange(where, increase, 0, 10, undefined, "/law/increase");
  inRange(where, shape, 0, 10, undefined, "/law/shape");
  inRange(where, law.sdIncrease ?? 0, 0, 10, undefined, "/law/sdIncrease");
  const per = inRange(where, law.perCm2PerL, 0.001, 1e6, "cm2PerL", "/law/perCm2PerL");
  const growth: unknown = law.growth;
  if (growth !== "linear" && growth !== "compound")
    notOneOf(`${where}/law/growth`, ["linear", "compound"], growth);
  const portions = inRange(where, usedCm2PerL, 0, 1e6, "cm2PerL", field) / per;
  // A curve of nothing is the portions themselves.
  const curve = shape || 1e-20;
  return (growth === "linear" ? Math.log1p(curve * portions) : portions * Math.log1p(curve)) / curve;
}
