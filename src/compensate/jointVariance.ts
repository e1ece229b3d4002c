import { arrayOf, inRange, plainObject } from "../core/guards.js";
import type { Factor } from "../core/term.js";
import type { Baseline, Conditions } from "./types.js";

/**
 * How the uncertainties of what was learned from the same runs hang together: the correlation of the numbers behind the causes, row
 * by row. `timeS` is the base time that was learned with them: the base time of another baseline stands apart.
 */
export interface JointSpread {
  readonly timeS: number;
  readonly causes: readonly string[];
  readonly correlation: readonly (readonly number[])[];
}

/**
 * The variance of ln(time) with the covariances of what was learned together: the sum of the factors' variances and 2·ρ·sd·sd for each pair. A
 * base time and an activation energy that were both learned in the cold are each poorly known, and their sum well.
 */
export function jointVariance(sum: number, factors: readonly Factor[], joint: JointSpread, baseline: Baseline, conditions: Conditions): number {
  const { timeS, causes, correlation } = plainObject("compensate: knowledge", joint, ".joint") as unknown as JointSpread;
  arrayOf("compensate: knowledge.joint.causes", causes, 1);
  arrayOf("compensate: knowledge.joint.correlation", correlation, causes.length);
  // The number behind each cause is 0 or more, so the factor tells in which direction it acts; for age, the ages do.
  const direction = ({ cause, value }: Factor): number => {
    if (cause === "baseline") return baseline.timeS === timeS ? 1 : 0;
    if (cause === "strength") return 1;
    return cause === "age" ? (conditions.ageH ?? 0) - (baseline.ageH ?? 0) : value - 1;
  };
  const known = factors.flatMap((factor) => {
    const row = causes.indexOf(factor.cause);
    return row < 0 ? [] : [{ row, logSd: Math.sign(direction(factor)) * factor.logSd }];
  });
  let variance = sum;
  known.forEach((one, i) => {
    for (const other of known.slice(0, i)) {
      const rho = (correlation[one.row] as readonly unknown[] | undefined)?.[other.row];
      variance += 2 * inRange("compensate: knowledge.joint.correlation", rho, -1, 1, "") * one.logSd * other.logSd;
    }
  });
  // A correlation rounded by storage can bring a variance of nearly 0 below it.
  return Math.max(0, variance);
}
