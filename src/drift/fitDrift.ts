import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import { refuse } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { pooledSd } from "../core/leastSquares.js";
import { fitRelaxation, standardErrors } from "../core/relaxation.js";
import { AMBIENT_C, ambientTemperature } from "./ambient.js";
import { checkedLog, type TemperatureLog, type TemperatureReading } from "./log.js";
import type { NewtonDrift } from "./newtonDrift.js";
import type { InputRules } from "../core/errorRules.js";
import { enoughText } from "../core/text.js";
import { untoldText } from "./refusedText.js";

/** Options of {@link fitDrift}. */
export interface FitDriftOptions {
  /** temperature of the surroundings, °C, −50 to 100; fitted when left out */
  readonly ambientC?: number | undefined;
}

/** What {@link fitDrift} returns: a drift for `newtonDrift`, and how well it is known. */
export interface FittedDrift extends NewtonDrift {
  /** standard error of the time constant, s */
  readonly sdTimeConstantS: number;
  /** scatter of the readings about the curve, °C; not there when there are no more readings than unknowns */
  readonly residualSdC?: number;
  /** how many readings it rests on */
  readonly readings: number;
}

/**
 * How well a reading repeats, °C: half a step of a thermometer read to 0.1 °C, worth two degrees of freedom
 * beside the log's own, an assumption of this package.
 */
const READING = { sd: 0.05, freedom: 2 };

/**
 * Fits Newton's law of cooling to thermometer readings.
 *
 * @param log - readings, times strictly rising: two or more with `ambientC`, three or more without
 * @param options - the temperature of the surroundings, where it is known
 * @returns the drift, from clock time 0, with the standard error of its time constant
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is out of range, readings are too few, or they cannot tell the time
 * constant: they do not bend toward the surroundings, or its standard error is as large as itself
 *
 * @remarks Least squares in °C. The standard error comes from the scatter about the curve, pooled with that
 * of readings good to 0.05 °C, which counts for two degrees of freedom: few readings that happen to lie on a
 * curve do not claim certainty. Without the air's temperature the curve has to bend visibly: a third of the
 * way to the air, or so.
 *
 * @example
 * ```ts
 * const log = [{ timeS: 0, temperatureC: 24 }, { timeS: 600, temperatureC: 22 }];
 * fitDrift(log, { ambientC: 14 }).timeConstantS // => 2688.9
 * ```
 */
export function fitDrift(log: TemperatureLog, options: FitDriftOptions = {}): FittedDrift {
  const readings = checkedLog("fitDrift/log", log);
  const known = onlyFields("fitDrift/options", options, ["ambientC"])["ambientC"];
  const limit = known === undefined ? undefined : ambientTemperature("fitDrift/options", known);
  const unknowns = limit === undefined ? 3 : 2;
  const spare = readings.length - unknowns;
  if (spare < 0)
    refuse("fitDrift/log", "enough-without", enoughText, { least: 3, path: "/ambientC" }, 2, "too-few");
  const fit = fitRelaxation(
    readings.map(({ timeS, temperatureC }) => ({ x: timeS, y: temperatureC, weight: 1 })),
    { limit },
  );
  const untold = (why: InputRules["tells-time-constant"]["why"]): never => {
    return refuse("fitDrift/log", "tells-time-constant", untoldText, { why }, undefined);
  };
  if (fit === undefined) return untold("straight");
  const { rate, step } = fit;
  const firstS = (readings[0] as TemperatureReading).timeS;
  const fall = readings.map(({ timeS }) => Math.exp(-rate * (timeS - firstS)));
  const byRate = readings.map(({ timeS }, i) => -step * (timeS - firstS) * (fall[i] as number));
  const [error] = standardErrors([byRate, fall, ...(limit === undefined ? [fall.map(() => 1)] : [])]) as [
    number,
  ];
  const residualSdC = spare > 0 ? Math.sqrt(fit.squares / spare) : undefined;
  const share = (pooledSd(READING, residualSdC, spare) * error) / rate;
  if (!(share < 1)) untold("uncertain");
  if (!(1 / rate <= LONGEST_CLOCK_S)) untold("too-long");
  const startC = fit.limit + step * Math.exp(rate * firstS);
  const ambientC = fit.limit;
  const { coldest, warmest } = AMBIENT_C;
  if (!(startC >= 0 && startC <= 100 && ambientC >= coldest && ambientC <= warmest)) untold("outside");
  return {
    startC,
    ambientC,
    timeConstantS: 1 / rate,
    sdTimeConstantS: share / rate,
    ...(residualSdC === undefined ? {} : { residualSdC }),
    readings: readings.length,
  };
}
