/*
 * Room: learning. The model: ln(time) as a sum of seven numbers, each times what a run's conditions make of
 * it. One row of that sum for a run is what the regression stands on.
 */
import { inputError } from "../core/errors.js";
import { agitationSide } from "../agitation/agitation.js";
import type { Baseline } from "../compensate/types.js";
import { WIDEST_LOG_SD } from "../core/estimate.js";
import { inRange, plainObject, positive } from "../core/guards.js";
import type { Factor } from "../core/term.js";
import { logConcentration, readDilution } from "../dilution/dilution.js";
import { ageLine } from "../age/ageLine.js";
import type { Line } from "../core/line.js";
import { useLine } from "../use/useLine.js";
import { GAS_CONSTANT_KJ, inverseKelvin } from "../temperature/law.js";
import type { Run } from "./types.js";
import type { LearnableLaws } from "./learnableLaws.js";

/** The causes in the order of the numbers behind them. */
export const CAUSES = ["baseline", "temperature", "dilution", "agitation", "use", "age", "strength"] as const;

/**
 * Why a run has no row when the laws make of it a time that no clock shows, or one of which nothing is known.
 */
export const TOO_FAR = "too far from the baseline for the laws";

/**
 * A run's row: ln(time) is ln(base time) + `log` under the laws, and `slopes` is how it moves with each
 * number.
 */
export interface ModelRow {
  readonly log: number;
  readonly slopes: readonly number[];
}

/** The conditions that the model reads. */
export type ModelConditions = Partial<Omit<Run, "outcome" | "timeS" | "strength">> & {
  readonly strength?: Pick<Factor, "value" | "logSd">;
};

/**
 * Makes the function from conditions to a row, or to the reason why the model has none.
 *
 * @param where - for the texts: the function and the knowledge's baseline
 */
export function rowMaker(
  where: string,
  baseline: Baseline,
  laws: LearnableLaws,
): (where: string, conditions: ModelConditions) => ModelRow | string {
  const { usedCm2PerL = 0, ageH = 0 } = baseline;
  const before = lines(`${where}/baseline`, laws, {
    ...baseline,
    usedCm2PerL,
    ageH,
    strength: { value: 1, logSd: 0 },
  });
  const { age } = laws;

  return (at, conditions) => {
    const after = lines(at, laws, conditions);
    const toC = conditions.temperatureC ?? baseline.temperatureC;
    // No plate is developed in a hotter bath: `compensate` asks there whether °F was meant, and from such a
    // run nothing is learned.
    if (toC > 45) return `at ${toC} °C: is it in °F?`;
    if (age.kind === "life" && (conditions.ageH ?? ageH) > age.lifeH)
      return `past the bath's life of ${age.lifeH} h`;
    let log = 0;
    const slopes = [1];
    after.forEach((to, i) => {
      const from = before[i];
      const cause = CAUSES[i + 1] as string;
      if (to && !from)
        throw inputError(
          TypeError,
          `${at}/${cause}`,
          "needs-counterpart",
          { path: `/baseline/${cause}` },
          undefined,
          `needs a baseline.${cause}: what was it for the known time?`,
        );
      log += to && from ? to[0] - from[0] : 0;
      slopes.push(to && from ? to[1] - from[1] : 0);
    });
    if (conditions.agitation && (conditions.agitation === "stand") !== (baseline.agitation === "stand"))
      return "stand needs a baseline that stands";
    return Math.abs(log) < WIDEST_LOG_SD ? { log, slopes } : TOO_FAR;
  };
}

/**
 * ln(time) by each cause after the base time, and its slope in the cause's number; nothing for what the
 * conditions leave out.
 */
function lines(
  at: string,
  laws: LearnableLaws,
  { temperatureC, dilution, agitation, usedCm2PerL, ageH, strength }: ModelConditions,
): readonly (Line | undefined)[] {
  const found: (Line | undefined)[] = [undefined, undefined, undefined, undefined, undefined, undefined];
  if (temperatureC !== undefined) {
    const slope =
      inverseKelvin(inRange(at, temperatureC, 0, 100, "temperatureC", "/temperatureC")) / GAS_CONSTANT_KJ;
    found[0] = [laws.temperature.activationEnergyKJPerMol * slope, slope];
  }
  if (dilution !== undefined) {
    const slope = -logConcentration(readDilution(`${at}/dilution`, dilution));
    found[1] = [laws.dilution.exponent * slope, slope];
  }
  if (agitation !== undefined) {
    const { rate, slope } = agitationSide(`${at}/agitation`, agitation, laws.agitation);
    found[2] = [-Math.log(rate), slope];
  }
  if (usedCm2PerL !== undefined) found[3] = useLine(at, laws.use, usedCm2PerL);
  if (ageH !== undefined) found[4] = ageLine(laws.age, inRange(at, ageH, 0, 1e6, "ageH", "/ageH"));
  if (strength !== undefined) {
    const { value, logSd } = plainObject(at, strength, "/strength");
    found[5] = [
      Math.log(positive(at, value, 1e6, undefined, "/strength/value")),
      inRange(at, logSd, 0, 10, undefined, "/strength/logSd"),
    ];
  }
  return found;
}
