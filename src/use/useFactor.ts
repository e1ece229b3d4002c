import { frozen } from "../core/frozen.js";
import { readDilution, type Dilution } from "../dilution/dilution.js";
import { inRange, notOneOf, positive, refuse } from "../core/guards.js";
import { ROLL_CM2 } from "../handbook/roll.js";
import { checkedOrigin, type LawOrigin } from "../core/term.js";
import { MOST_SLOWED, slowingText } from "../core/text.js";

/**
 * A published rule for more time as a bath is used: `increase` (0.10 is 10 %) for every `perCm2PerL` square
 * centimetres developed in a litre, added up (`"linear"`) or multiplied (`"compound"`).
 */
export interface UseLaw extends LawOrigin {
  /** longer time for each `perCm2PerL` developed, as a fraction, 0 to 10 */
  readonly increase: number;
  /** the area in a litre that the increase is for, cm²/l */
  readonly perCm2PerL: number;
  /** how the increases of several areas add up */
  readonly growth: "linear" | "compound";
  /** standard deviation of `increase`; a quarter of it when left out */
  readonly sdIncrease?: number | undefined;
  /** of an increase that was learned: the increase of the rule whose curve it scales in ln(time), 0 to 10 */
  readonly shape?: number | undefined;
  /** published or own capacity, cm² per litre */
  readonly capacityCm2PerL?: number | undefined;
  /**
   * the dilution for which the rule was printed, as text or parts: in a bath with half the stock in a litre,
   * an area counts twice; left out, the rule is for the bath as it is
   */
  readonly dilution?: Dilution | string | undefined;
}

/**
 * The use rule that is used when none is given: 8 ± 4 % for each roll of 516 cm² in a litre, linear.
 *
 * @remarks Printed rules run from 2.4 to 14 % a roll in a litre (from memory).
 */
export const genericUseLaw: UseLaw = /* @__PURE__ */ frozen({
  increase: 0.08,
  perCm2PerL: ROLL_CM2,
  growth: "linear",
  sdIncrease: 0.04,
  sources: ["generic rule over published ones, 2.4 to 14 % a roll in a litre"],
  runs: 0,
});

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
 * 2.0 and 2.6. Bromide released by the films slows the bath as much as spent agent does, so the rule holds
 * for the developer it was printed for.
 *
 * @example
 * ```ts
 * useFactor(0, 1548.384, { increase: 0.1, perCm2PerL: 516.128, growth: "linear" }) // => 1.3
 * ```
 */
export function useFactor(fromCm2PerL: number, toCm2PerL: number, law: UseLaw = genericUseLaw): number {
  const ready = checkedUseLaw("useFactor/law", law);
  const from = usedArea("useFactor/fromCm2PerL", fromCm2PerL);
  const to = usedArea("useFactor/toCm2PerL", toCm2PerL);
  notTooSlow("useFactor/fromCm2PerL", ready, from);
  notTooSlow("useFactor/toCm2PerL", ready, to);
  return Math.exp((useSlope(ready, to) - useSlope(ready, from)) * ready.increase);
}

/** ln of the longest factor, a little above it, since the logarithm is rounded. */
const LONGEST_LOG = Math.log(MOST_SLOWED * 1.000001);

/** Refuses a use under which a bath would be dead. */
export function notTooSlow(at: string, law: UseLaw, usedCm2PerL: number): void {
  // ln(1 + x) is at most x: far from the limit no logarithm is needed.
  if (usedCm2PerL * law.increase < 6 * law.perCm2PerL) return;
  if (!(useSlope(law, usedCm2PerL) * law.increase < LONGEST_LOG))
    refuse(at, "slowing-at-most", slowingText, { max: MOST_SLOWED }, usedCm2PerL);
}

/** Returns an area in cm² per litre from 0 to 1e6; throws otherwise. */
export function usedArea(at: string, usedCm2PerL: unknown): number {
  return inRange(at, usedCm2PerL, 0, 1e6, "cm2PerL");
}

/** The standard deviation of the increase of a checked rule. */
export function increaseSd({ increase, sdIncrease }: UseLaw): number {
  return sdIncrease ?? increase / 4;
}

/** Checks a use rule and returns it. */
export function checkedUseLaw(at: string, given: unknown): UseLaw {
  const law = checkedOrigin(at, given as UseLaw);
  const { increase, shape = increase } = law;
  inRange(at, increase, 0, 10, undefined, "/increase");
  inRange(at, shape, 0, 10, undefined, "/shape");
  inRange(at, law.sdIncrease ?? 0, 0, 10, undefined, "/sdIncrease");
  inRange(at, law.perCm2PerL, 0.001, 1e6, "cm2PerL", "/perCm2PerL");
  const growth: unknown = law.growth;
  if (growth !== "linear" && growth !== "compound") notOneOf(`${at}/growth`, ["linear", "compound"], growth);
  if (law.capacityCm2PerL !== undefined)
    positive(at, law.capacityCm2PerL, 1e6, "cm2PerL", "/capacityCm2PerL");
  if (law.dilution !== undefined) readDilution(`${at}/dilution`, law.dilution);
  return law;
}

/** How ln of the factor against a fresh bath moves with the increase of a checked rule. */
export function useSlope(
  { increase, shape = increase, perCm2PerL, growth }: UseLaw,
  usedCm2PerL: number,
): number {
  const portions = usedCm2PerL / perCm2PerL;
  // A curve of nothing is the portions themselves.
  const curve = Math.max(shape, 1e-20);
  return (growth === "linear" ? Math.log1p(curve * portions) : portions * Math.log1p(curve)) / curve;
}
