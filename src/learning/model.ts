/*
 * Room: learning. The model: ln(time) as a sum of seven numbers, each times what a run's conditions make of it. One row of that
 * sum for a run is what the regression stands on.
 */
import { agitationInterval, staleShare } from "../agitation/agitation.js";
import type { Baseline } from "../compensate/types.js";
import { inRange, plainObject, positive } from "../core/guards.js";
import { logConcentration, readDilution } from "../dilution/dilution.js";
import { slowingRootH } from "../exhaustion/ageFactor.js";
import { usePortions } from "../exhaustion/useFactor.js";
import { GAS_CONSTANT_KJ, inverseKelvin } from "../temperature/law.js";
import type { Run } from "./types.js";
import type { LearnableLaws } from "./learnableLaws.js";

/** The causes in the order of the numbers behind them. */
export const CAUSES = ["baseline", "temperature", "dilution", "agitation", "use", "age", "strength"] as const;

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
  const fromLogC = baseline.dilution === undefined ? NaN : logConcentration(readDilution(`${at}.dilution`, baseline.dilution));
  const fromStale = baseline.agitation === undefined ? NaN : agitationInterval(`${at}.agitation`, baseline.agitation);
  const fromAgeH = inRange(at, baseline.ageH ?? 0, 0, 1e6, " h", ".ageH");
  const { staleLoss, staleTimeS } = agitation;
  const stale = (intervalS: number): readonly [log: number, slope: number] => {
    const share = staleShare(intervalS, staleTimeS);
    return [-Math.log(1 - staleLoss * share), share / (1 - staleLoss * share)];
  };
  const used = (at: string, usedCm2PerL: number): readonly [log: number, slope: number] => {
    const portions = usePortions(at, use, usedCm2PerL);
    return use.growth === "linear"
      ? [Math.log1p(use.increase * portions), portions / (1 + use.increase * portions)]
      : [portions * Math.log1p(use.increase), portions / (1 + use.increase)];
  };
  const aged = (ageH: number): readonly [log: number, slope: number] => {
    if (age.kind === "life") return [0, 0];
    if (age.kind === "slowing") return [age.perRootH * slowingRootH(ageH), slowingRootH(ageH)];
    return [(Math.LN2 * ageH) / age.halfLifeH, ageH];
  };
  const fromUse = used(at, baseline.usedCm2PerL ?? 0);
  const fromAge = aged(fromAgeH);
  const fromStaleRow = typeof fromStale === "number" ? stale(fromStale) : undefined;

  return (at, conditions) => {
    const toC = inRange(at, conditions.temperatureC ?? fromC, 0, 100, " °C", ".temperatureC");
    const bySlope = (inverseKelvin(toC) - inverseKelvin(fromC)) / GAS_CONSTANT_KJ;
    let log = temperature.activationEnergyKJPerMol * bySlope;
    let thinner = 0;
    if (conditions.dilution !== undefined) {
      thinner = needed(at, "dilution", fromLogC) - logConcentration(readDilution(`${at}.dilution`, conditions.dilution));
      log += dilution.exponent * thinner;
    }
    let staler = 0;
    if (conditions.agitation !== undefined) {
      needed(at, "agitation", fromStale ?? 0);
      const interval = agitationInterval(`${at}.agitation`, conditions.agitation);
      if ((interval === undefined) !== (fromStaleRow === undefined))
        return "stand development is a mode of its own: it needs knowledge whose baseline stands";
      if (interval !== undefined && fromStaleRow !== undefined) {
        const to = stale(interval);
        log += to[0] - fromStaleRow[0];
        staler = to[1] - fromStaleRow[1];
      }
    }
    const toUse = conditions.usedCm2PerL === undefined ? fromUse : used(at, conditions.usedCm2PerL);
    const toAgeH = conditions.ageH === undefined ? fromAgeH : inRange(at, conditions.ageH, 0, 1e6, " h", ".ageH");
    if (age.kind === "life" && toAgeH > age.lifeH) return `the bath was past its life of ${age.lifeH} h`;
    const toAge = aged(toAgeH);
    let stronger = 0;
    if (conditions.strength !== undefined) {
      const { value, logSd } = plainObject(at, conditions.strength, ".strength");
      log += Math.log(positive(at, value, 1e6, "", ".strength.value"));
      stronger = inRange(at, logSd, 0, 10, "", ".strength.logSd");
    }
    return {
      log: log + toUse[0] - fromUse[0] + toAge[0] - fromAge[0],
      slopes: [1, bySlope, thinner, staler, toUse[1] - fromUse[1], toAge[1] - fromAge[1], stronger],
    };
  };
}

function needed(where: string, name: string, value: number): number {
  if (Number.isNaN(value)) throw new TypeError(`${where}.${name} needs a baseline.${name}: what was it for the known time?`);
  return value;
}
