/*
 * Room: learning. The model: ln(time) as a sum of seven numbers, each times what a run's conditions make of it. One row of that
 * sum for a run is what the regression stands on.
 */
import { agitationInterval, checkedAgitationLaw, genericAgitationLaw, staleShare, type AgitationLaw } from "../agitation/agitation.js";
import type { Baseline, Knowledge } from "../compensate/types.js";
import { inRange, plainObject, positive } from "../core/guards.js";
import type { LawOrigin } from "../core/term.js";
import { logConcentration, logTimeByConcentration, readDilution, type PowerDilutionLaw } from "../dilution/dilution.js";
import { GIVEN_EXPONENT_SD } from "../dilution/dilutionLogSd.js";
import { fitDilutionLaw } from "../dilution/fitDilutionLaw.js";
import { genericDilutionLaw } from "../dilution/genericDilutionLaw.js";
import { slowingRootH, type AgeLaw } from "../exhaustion/ageFactor.js";
import { ageLogSd } from "../exhaustion/ageLogSd.js";
import { genericUseLaw, usePortions, type UseLaw } from "../exhaustion/useFactor.js";
import { asArrheniusLaw } from "../temperature/asArrheniusLaw.js";
import { genericTemperatureLaw } from "../temperature/genericTemperatureLaw.js";
import { GAS_CONSTANT_KJ, inverseKelvin, lawSlope, type ArrheniusLaw } from "../temperature/law.js";
import { GIVEN_LAW_SD_KJ } from "../temperature/temperatureLogSd.js";
import type { Run } from "./types.js";

/** The causes in the order of the numbers behind them. */
export const CAUSES = ["baseline", "temperature", "dilution", "agitation", "use", "age", "strength"] as const;

/**
 * The age law that stands in when none is given: no change expected, and the spread that `compensate` gives to a bath of which nothing
 * is known, as one unknown that the runs share.
 */
const GENERIC_AGE = {
  kind: "slowing",
  perRootH: 0,
  sdPerRootH: 0.1,
  sources: ["no law of age: taken as unchanged, with a wide spread"],
} as const satisfies AgeLaw;

/** The laws in the form in which they can be learned: one number each. */
export interface LearnableLaws {
  readonly temperature: ArrheniusLaw;
  readonly dilution: PowerDilutionLaw;
  readonly agitation: AgitationLaw;
  readonly use: UseLaw;
  readonly age: AgeLaw;
}

/**
 * Brings any laws to the form that can be learned. A coefficient or a table of temperatures becomes the Arrhenius law that agrees with it 5 °C
 * either side of the baseline's temperature; a table of dilutions the power fitted to it.
 */
export function learnableLaws(where: string, laws: Knowledge, baseC: number): LearnableLaws {
  plainObject(where, laws, " laws");
  const fromC = inRange(where, baseC, 0, 100, " °C", " baseline.temperatureC");
  const { temperature = genericTemperatureLaw, dilution = genericDilutionLaw } = laws;
  const { agitation = genericAgitationLaw, use = genericUseLaw, age = GENERIC_AGE } = laws;
  // Each room refuses what is no law of its own; table and coefficient laws are checked on the way as well.
  lawSlope(where, temperature);
  logTimeByConcentration(where, dilution);
  usePortions(where, use, 0);
  ageLogSd(age, 0, 0);
  return {
    temperature:
      temperature.kind === "arrhenius"
        ? temperature
        : { ...asArrheniusLaw(temperature, Math.max(0, fromC - 5), Math.min(100, fromC + 5)), ...origin(temperature) },
    dilution: dilution.kind === "table" ? { ...fitDilutionLaw(dilution.rows).law, ...origin(dilution) } : dilution,
    agitation: checkedAgitationLaw(where, agitation),
    use,
    age,
  };
}

function origin({ sources }: LawOrigin): LawOrigin {
  return sources === undefined ? {} : { sources };
}

/** Value and standard deviation of each number under the laws: ln(base time) as a difference, and the strength as its own unit. */
export function priorNumbers(laws: LearnableLaws, baseLogSd: number): readonly (readonly [value: number, sd: number])[] {
  const { temperature, dilution, agitation, use, age } = laws;
  return [
    [0, baseLogSd],
    [temperature.activationEnergyKJPerMol, temperature.sdKJPerMol ?? GIVEN_LAW_SD_KJ],
    [dilution.exponent, dilution.sd ?? GIVEN_EXPONENT_SD],
    [agitation.staleLoss, agitation.sdStaleLoss ?? 0.25],
    [use.increase, use.sdIncrease ?? use.increase / 4],
    agePrior(age),
    [0, 1],
  ];
}

function agePrior(age: AgeLaw): readonly [number, number] {
  if (age.kind === "slowing") return [age.perRootH, age.sdPerRootH ?? 0.1];
  if (age.kind === "life") return [0, 0];
  return [Math.LN2 / age.halfLifeH, ((age.sdLog ?? 0.3) * Math.LN2) / age.halfLifeH];
}

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
