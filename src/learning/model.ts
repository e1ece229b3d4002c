/*
 * Room: learning. The model: ln(time) as a sum of seven numbers, each times what a run's conditions make of it. One row of that
 * sum for a run is what the regression stands on.
 */
import { agitationSide, type AgitationSide } from "../agitation/agitation.js";
import type { Baseline } from "../compensate/types.js";
import { WIDEST_LOG_SD } from "../core/estimate.js";
import { inRange, plainObject, positive } from "../core/guards.js";
import { logConcentration, readDilution } from "../dilution/dilution.js";
import { ageTangent, useTangent } from "../exhaustion/tangents.js";
import { GAS_CONSTANT_KJ, inverseKelvin } from "../temperature/law.js";
import type { Run } from "./types.js";
import type { LearnableLaws } from "./learnableLaws.js";

/** The causes in the order of the numbers behind them. */
export const CAUSES = ["baseline", "temperature", "dilution", "agitation", "use", "age", "strength"] as const;

/** Why a run has no row when the laws make of it a time that no clock shows, or one of which nothing is known. */
export const TOO_FAR = "it lies too far from the baseline for the laws";

/** A run's row: ln(time) is ln(base time) + `log` under the laws, and `slopes` is how it moves with each number. */
export interface ModelRow {
  readonly log: number;
  readonly slopes: readonly number[];
}

/** The conditions that the model reads. */
export type ModelConditions = Partial<Omit<Run, "outcome" | "timeS">>;

/**
 * Makes the function from conditions to a row, or to the reason why the model has none. The slopes are taken at the laws given: exact for
 * temperature, dilution, age and strength, a tangent for agitation and use.
 *
 * @param where - for the texts: the function and the knowledge's baseline
 */
export function rowMaker(
  where: string,
  baseline: Baseline,
  { temperature, dilution, agitation, use, age }: LearnableLaws,
): (where: string, conditions: ModelConditions) => ModelRow | string {
  const at = `${where} baseline`;
  const fromC = baseline.temperatureC;
  const fromAgeH = inRange(at, baseline.ageH ?? 0, 0, 1e6, " h", ".ageH");
  const diluted = (at: string, { dilution }: ModelConditions): number | undefined =>
    dilution === undefined ? dilution : logConcentration(readDilution(`${at}.dilution`, dilution));
  const stirred = (at: string, { agitation: given }: ModelConditions): AgitationSide | undefined =>
    given === undefined ? given : agitationSide(`${at}.agitation`, given, agitation);
  const fromLogC = diluted(at, baseline);
  const fromAgitation = stirred(at, baseline);
  const fromUse = useTangent(at, use, baseline.usedCm2PerL ?? 0);
  const fromAge = ageTangent(age, fromAgeH);

  return (at, conditions) => {
    const toC = inRange(at, conditions.temperatureC ?? fromC, 0, 100, " °C", ".temperatureC");
    const bySlope = (inverseKelvin(toC) - inverseKelvin(fromC)) / GAS_CONSTANT_KJ;
    // No plate is developed in a hotter bath: `compensate` asks there whether °F was meant, and from such a run nothing is learned.
    if (toC > 45) return `at ${toC} °C: is it in °F?`;
    let log = temperature.activationEnergyKJPerMol * bySlope;
    const slopes = [1, bySlope, 0, 0, 0, 0, 0];
    const toLogC = diluted(at, conditions);
    if (toLogC !== undefined) {
      slopes[2] = needed(at, "dilution", fromLogC) - toLogC;
      log += dilution.exponent * slopes[2];
    }
    const to = stirred(at, conditions);
    if (to) {
      const from = needed(at, "agitation", fromAgitation);
      if ((to.intervalS === undefined) !== (from.intervalS === undefined))
        return "stand development is a mode of its own: it needs knowledge whose baseline stands";
      log += Math.log(from.rate) - Math.log(to.rate);
      slopes[3] = to.stale / to.rate - from.stale / from.rate;
    }
    const toUse = conditions.usedCm2PerL === undefined ? fromUse : useTangent(at, use, conditions.usedCm2PerL);
    const toAgeH = conditions.ageH === undefined ? fromAgeH : inRange(at, conditions.ageH, 0, 1e6, " h", ".ageH");
    if (age.kind === "life" && toAgeH > age.lifeH) return `the bath was past its life of ${age.lifeH} h`;
    const toAge = ageTangent(age, toAgeH);
    if (conditions.strength !== undefined) {
      const { value, logSd } = plainObject(at, conditions.strength, ".strength");
      log += Math.log(positive(at, value, 1e6, "", ".strength.value"));
      slopes[6] = inRange(at, logSd, 0, 10, "", ".strength.logSd");
    }
    slopes[4] = toUse[1] - fromUse[1];
    slopes[5] = toAge[1] - fromAge[1];
    log += toUse[0] - fromUse[0] + toAge[0] - fromAge[0];
    return Math.abs(log) < WIDEST_LOG_SD ? { log, slopes } : TOO_FAR;
  };
}

function needed<T>(where: string, name: string, value: T | undefined): T {
  if (value === undefined) throw new TypeError(`${where}.${name} needs a baseline.${name}: what was it for the known time?`);
  return value;
}
