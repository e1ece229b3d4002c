import { compensate } from "../compensate/compensate.js";
import type { Compensation, Conditions } from "../compensate/types.js";
import { inRange, plainObject } from "../core/guards.js";
import { storedKnowledge } from "./notebook.js";
import type { LearnedKnowledge, Parameter } from "./types.js";

/**
 * The development time under today's conditions, from the learned base time and the learned laws.
 *
 * @param knowledge - from `startKnowledge` or `learn`
 * @param conditions - today's conditions; what is left out is as in the baseline
 * @returns as `compensate` returns: the median time and its 90 % interval in s, unrounded, the rows with the runs behind them, cautions
 * @throws TypeError or RangeError as `compensate` does, and a RangeError for knowledge that a newer version wrote
 *
 * @remarks This is `compensate(knowledge.baseline, conditions, knowledge)`, except that a brew's strength is corrected by what the runs
 * said of earlier brews. The interval is that of the time that would be right, covariances counted; a single development scatters about it.
 *
 * @example
 * ```ts
 * const start = startKnowledge({ timeS: 510, temperatureC: 20 });
 * predict(start, { temperatureC: 20 }).highS // => 708.7
 * predict(learn(start, [{ timeS: 510, temperatureC: 20, outcome: { kind: "good" } }]), { temperatureC: 20 }).highS // => 590.0
 * ```
 */
export function predict(knowledge: LearnedKnowledge, conditions: Conditions): Compensation {
  storedKnowledge("predict: knowledge", knowledge);
  plainObject("predict: conditions", conditions);
  const { strength } = conditions;
  const learned = (knowledge.parameters as readonly Parameter[] | undefined)?.[6];
  if (strength === undefined || learned === undefined || learned.runs === 0) return compensate(knowledge.baseline, conditions, knowledge);
  const { value, logSd } = strength;
  inRange("predict: knowledge.parameters[6].value", learned.value, -1e3, 1e3, "");
  inRange("predict: knowledge.parameters[6].runs", learned.runs, 0, 1e9, "");
  inRange("predict: knowledge.parameters[6].sd", learned.sd, 0, 1e3, "");
  const corrected = {
    ...strength,
    value: value * Math.exp(learned.value * logSd),
    logSd: learned.sd * logSd,
    basis: "own runs",
    runs: learned.runs,
  } as const;
  return compensate(knowledge.baseline, { ...conditions, strength: corrected }, knowledge);
}
