import { inRange, longEnough, plainObject } from "../core/guards.js";
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
 * The variance of ln(time) with the covariances of what was learned together: to the sum of the factors' variances comes 2·ρ·sd·sd for each pair. A
 * base time and an activation energy that were both learned in the cold are each poorly known, and their sum well.
 */
export function jointVariance(sum: number, factors: readonly Factor[], joint: JointSpread, baseline: Baseline, conditions: Conditions): number {
  plainObject("compensate: knowledge.joint", joint);
  const causes = longEnough("compensate: knowledge.joint.causes", joint.causes, 0);
  // The number behind a cause is 0 or more, so its factor tells which way it acts; that of age may be below 0, so there the ages tell.
  const ways: Readonly<Record<string, number>> = {
    baseline: Number(baseline.timeS === joint.timeS),
    age: (conditions.ageH ?? 0) - (baseline.ageH ?? 0),
    strength: 1,
  };
  let variance = sum;
  const before: (readonly [row: number, logSd: number])[] = [];
  for (const { cause, value, logSd } of factors) {
    const row = causes.indexOf(cause);
    if (row < 0) continue;
    const signed = Math.sign(ways[cause] ?? value - 1) * logSd;
    for (const [column, other] of before)
      variance += 2 * signed * other * inRange("compensate: knowledge.joint", (joint.correlation as JointSpread["correlation"] | undefined)?.[row]?.[column], -1, 1, "");
    before.push([row, signed]);
  }
  // A correlation rounded by storage can bring a variance of nearly 0 below it.
  return Math.max(0, variance);
}
