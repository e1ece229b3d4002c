import { compensate } from "../compensate/compensate.js";
import type { Compensation, Conditions } from "../compensate/types.js";
import { plainObject } from "../core/guards.js";
import { storedKnowledge, storedModel } from "./stored.js";
import type { LearnedKnowledge, Parameter } from "./types.js";

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
 * @remarks This is `compensate(knowledge.baseline, conditions, knowledge)`, except that a brew's strength is
 * corrected by what the runs, fitted anew, said of earlier brews. The interval is that of the time that would
 * be right, covariances counted; a single development scatters about it.
 *
 * @example
 * ```ts
 * const start = startKnowledge({ timeS: 510, temperatureC: 20 });
 * predict(start, { temperatureC: 20 }).highS // => 708.7
 * predict(learn(start, [{ timeS: 510, temperatureC: 20, outcome: { kind: "good" } }]), { temperatureC: 20 }).highS // => 590.0
 * ```
 */
export function predict(knowledge: LearnedKnowledge, conditions: Conditions): Compensation {
  storedKnowledge("predict/knowledge", knowledge);
  const { strength } = plainObject("predict/conditions", conditions) as Conditions;
  let given = conditions;
  if (strength !== undefined) {
    const { value, sd, runs } = storedModel("predict/knowledge", knowledge).now.parameters[6] as Parameter;
    const { logSd } = strength;
    if (runs > 0)
      given = {
        ...conditions,
        strength: {
          ...strength,
          value: strength.value * Math.exp(value * logSd),
          logSd: sd * logSd,
          basis: "own runs",
          runs,
        },
      };
  }
  return compensate(knowledge.baseline, given, knowledge);
}
