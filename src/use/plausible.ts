/*
 * What a rule of use can plausibly be: for the caution `law-unusual`, which warns and refuses nothing.
 */
import { ROLL_CM2 } from "../handbook/roll.js";
import type { UseLaw } from "./useFactor.js";

/**
 * The published increases of time for one roll of 516 cm² in a litre: 2.4 to 14.2 %. A half and twice as much
 * is still taken without a word.
 */
export const USUAL_INCREASE_PER_ROLL: readonly [low: number, high: number] = [0.012, 0.284];

/** What is unusual about a rule of use. */
export interface UnusualUseLaw {
  /**
   * `"increase"`: the increase for a roll in a litre lies outside what was published; `"maybe-percent"`: 1 or
   * more, where a share was asked for
   */
  readonly reason: "increase" | "maybe-percent";
  /** the field of the law that is unusual, as a JSON Pointer into the law */
  readonly path: "/increase";
  /** increase for a roll of 516 cm² in a litre, a share; for `"maybe-percent"` the increase itself */
  readonly limit: number;
  /** increase for a roll of 516 cm² in a litre, a share; for `"maybe-percent"` the increase itself */
  readonly actual: number;
}

/** What is unusual about a checked rule, or `undefined`. A rule that was learned is not judged. */
export function unusualUseLaw(law: UseLaw): UnusualUseLaw | undefined {
  const { increase, perCm2PerL, growth, shape } = law;
  if (shape !== undefined) return undefined;
  if (increase >= 1) return { reason: "maybe-percent", path: "/increase", limit: 1, actual: increase };
  const rolls = ROLL_CM2 / perCm2PerL;
  const perRoll = growth === "linear" ? increase * rolls : Math.expm1(rolls * Math.log1p(increase));
  const [low, high] = USUAL_INCREASE_PER_ROLL;
  if (perRoll >= low && perRoll <= high) return undefined;
  return { reason: "increase", path: "/increase", limit: perRoll < low ? low : high, actual: perRoll };
}
