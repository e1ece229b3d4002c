import { agitationSide, type Agitation, type AgitationLaw } from "../agitation/agitation.js";
import { GIVEN_LOSS_SD } from "../agitation/agitationLogSd.js";
import { inRange, longEnough, plainObject, wrongValue } from "../core/guards.js";
import type { Factor } from "../core/term.js";
import { logConcentration, readDilution, type PowerDilutionLaw } from "../dilution/dilution.js";
import { GIVEN_EXPONENT_SD } from "../dilution/dilutionLogSd.js";
import type { Baseline, Conditions, Knowledge } from "./types.js";

/**
 * How the uncertainties of what was learned from the same runs hang together: the correlation of the numbers
 * behind the causes, row by row. `timeS` is the base time that was learned with them: the base time of
 * another baseline stands apart, and so does a law without `runs`, which was put in the place of a learned
 * one.
 */
export interface JointSpread {
  readonly timeS: number;
  readonly causes: readonly string[];
  readonly correlation: readonly (readonly number[])[];
}

/**
 * The variance of ln(time) with the covariances of what was learned together: to the sum of the factors'
 * variances comes 2·ρ·sd·sd for each pair. A base time and an activation energy that were both learned in the
 * cold are each poorly known, and their sum well. Only what rests on own runs was learned, and of its spread
 * only what the number behind it makes: the scatter of single times about a power of dilution, and what is
 * unknown of stand, were learned by no run and stay in the sum as they are.
 */
export function jointVariance(
  sum: number,
  factors: readonly Factor[],
  knowledge: Knowledge,
  baseline: Baseline,
  conditions: Conditions,
): number {
  const { joint, schema } = knowledge as Knowledge & {
    readonly joint: JointSpread;
    readonly schema?: unknown;
  };
  // All that learn wrote has a joint spread, so that knowledge of a newer version is seen here.
  if (typeof schema === "number" && schema > 1)
    wrongValue("compensate/knowledge/schema", "1 (a newer version wrote it)", schema);
  plainObject("compensate/knowledge/joint", joint);
  const causes = longEnough("compensate/knowledge/joint/causes", joint.causes, 0);
  let variance = sum;
  const before: (readonly [row: number, logSd: number])[] = [];
  for (const factor of factors) {
    const row = causes.indexOf(factor.cause);
    if (row < 0) continue;
    const apart =
      factor.basis !== "own runs" || (factor.cause === "baseline" && baseline.timeS !== joint.timeS);
    const learned = apart ? 0 : learnedLogSd(factor, knowledge, baseline, conditions);
    for (const [column, other] of before)
      variance +=
        2 *
        learned *
        other *
        inRange(
          "compensate/knowledge/joint",
          (joint.correlation as JointSpread["correlation"] | undefined)?.[row]?.[column],
          -1,
          1,
        );
    before.push([row, learned]);
  }
  // A correlation rounded by storage can bring a variance of nearly 0 below it.
  return Math.max(0, variance);
}

/**
 * The spread of a factor that comes from the learned number behind it, with the sign by which ln(time)
 * follows that number.
 */
function learnedLogSd(
  { cause, value, logSd }: Factor,
  { dilution, agitation }: Knowledge,
  from: Baseline,
  to: Conditions,
): number {
  // Where something else spreads as well, the number's part is worked out alone; the terms have checked both
  // sides by name.
  const byNumber = (sd: number, slope: (side: Conditions) => number): number =>
    sd * (slope(to) - slope(from));
  if (cause === "dilution")
    return byNumber(
      (dilution as PowerDilutionLaw).sd ?? GIVEN_EXPONENT_SD,
      (side) => -logConcentration(readDilution("", side.dilution)),
    );
  const law = agitation as AgitationLaw;
  if (cause === "agitation")
    return byNumber(
      law.sdStaleLoss ?? GIVEN_LOSS_SD,
      (side) => agitationSide("", side.agitation as Agitation, law).slope,
    );
  // All of the others is the number's. Which way it acts the factor tells, but for a rate of ageing below 0
  // and an energy of 0: there the ages and temperatures do.
  // An increase by use of 0, which learning leaves none of, is taken for use that grew.
  const cooler =
    cause === "temperature" && typeof to.temperatureC === "number"
      ? from.temperatureC - to.temperatureC
      : value - 1;
  const way = cause === "age" ? (to.ageH as number) - (from.ageH ?? 0) : cooler;
  return way < 0 && cause !== "strength" ? -logSd : logSd;
}
