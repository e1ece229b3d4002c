import { inRange, plainObject } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { inNameOf } from "../core/inNameOf.js";
import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import { roundEstimate, type RoundedEstimate } from "../quantities/roundEstimate.js";
import { toStep } from "../quantities/toStep.js";
import type { SteerAnswer } from "./types.js";

/**
 * The step of a clock that somebody follows in the bath, s: a goal moves by such steps, and clock and work
 * differ from it on.
 */
export const followedStepS: number = 5;

/** How {@link steeringGoal} rounds. */
export interface SteeringGoalOptions {
  /**
   * the step that the time was shown to before it was poured in, s, 1 to 300, as {@link roundEstimate} gave
   * it; that of the development's own interval when left out
   */
  readonly stepS?: number | undefined;
}

/**
 * The goal of a development in progress as it is shown: it begins as the time that was shown before, and
 * moves with the bath.
 *
 * @param answer - what {@link steer} returned
 * @param options - `stepS`: the step that the time was shown to before
 * @returns from pour-in to drained, and its interval. The time is that of a bath that stays as it was stated,
 * rounded to `stepS`, and by how much the bath and the image move it, to 5 s; the interval is rounded to
 * `stepS` at most
 * @throws TypeError when an argument or a field is of the wrong kind
 * @throws RangeError when a time or the step is out of range
 *
 * @remarks So one development has one time: rounded anew, 15:15 before the pour-in could be 15:20 after it.
 *
 * @example
 * ```ts
 * const baseline = { timeS: 600, temperatureC: 20 };
 * const conditions = { temperatureC: 18 };
 * const { timeS: shownS, stepS } = roundEstimate(compensate(baseline, conditions));
 * const start = steer({ baseline, conditions, log: [{ timeS: 0, temperatureC: 18 }] });
 * shownS // => 710
 * steeringGoal(start, { stepS }).timeS // => 710
 * const log = [{ timeS: 0, temperatureC: 18 }, { timeS: 240, temperatureC: 17 }];
 * steeringGoal(steer({ baseline, conditions, log }), { stepS }).timeS // => 800
 * ```
 */
export function steeringGoal(answer: SteerAnswer, options: SteeringGoalOptions = {}): RoundedEstimate {
  const at = "steeringGoal/answer";
  const { total, equivalent } = plainObject(at, answer) as unknown as SteerAnswer;
  const { dueS } = plainObject(`${at}/equivalent`, equivalent) as unknown as SteerAnswer["equivalent"];
  inRange(`${at}/equivalent/dueS`, dueS, 0, LONGEST_CLOCK_S, "timeS");
  const { stepS } = onlyFields("steeringGoal/options", options, ["stepS"]) as SteeringGoalOptions;
  const rounded = inNameOf("steeringGoal", () => roundEstimate(total, { mostS: stepS }));
  const shownS = stepS ?? rounded.stepS;
  const timeS = toStep(dueS, shownS) + movedS(total.timeS - dueS, shownS);
  return { ...rounded, timeS: Math.max(0, timeS) };
}

/** By how much bath and image move it, s: in steps that a clock is followed by. */
function movedS(byS: number, stepS: number): number {
  return Math.sign(byS) * toStep(Math.abs(byS), Math.min(stepS, followedStepS));
}
