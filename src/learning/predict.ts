import { causes } from "../causes.js";
import { prepared } from "../compensate/loop.js";
import type { Compensation, Conditions } from "../compensate/types.js";
import { gravestFirst } from "../core/caution.js";
import { doubtsOf } from "./doubts.js";
import { derived } from "./stored.js";
import type { LearnedKnowledge } from "./types.js";

/**
 * The development time under today's conditions, from the learned base time and the learned laws.
 *
 * @param knowledge - from `startKnowledge` or `learn`
 * @param conditions - today's conditions; what is left out is as in the baseline
 * @returns as `compensate` returns: the median time and its 90 % interval in s, unrounded, the rows with the
 * runs behind them, cautions
 * @throws TypeError or RangeError as `compensate` does, and a RangeError for knowledge that a newer version
 * wrote
 *
 * @remarks This is `compensate(knowledge.baseline, conditions, knowledge)`, and beside it the advice of
 * `learn` that bears on the answer: runs that it doubts, runs that teach nothing, where the notebook does not
 * say why, many copies of runs, numbers far from what is known, a trend, and scatter. The interval is that of
 * the time that would be right, covariances counted; a single development scatters about it.
 *
 * @example
 * ```ts
 * const start = startKnowledge({ timeS: 510, temperatureC: 20 });
 * predict(start, { temperatureC: 20 }).highS // => 708.7
 * const known = learn(start, [{ timeS: 510, temperatureC: 20, outcome: { kind: "good" } }]);
 * predict(known, { temperatureC: 20 }).highS // => 617.8
 * ```
 */
export function predict(knowledge: LearnedKnowledge, conditions: Conditions): Compensation {
  const { now, cautions } = derived("predict/knowledge", knowledge);
  const answer = prepared("predict", causes, now.baseline, now).answer(conditions);
  const doubts = doubtsOf(now);
  return cautions.length + doubts.length === 0
    ? answer
    : { ...answer, cautions: gravestFirst([...cautions, ...doubts, ...answer.cautions]) };
}
