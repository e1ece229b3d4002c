/*
 * The drift behind the last reading: Newton's law with what is known beforehand of vessel, surroundings and
 * reading, so that two early readings do not swing the end.
 */
import type { Followed } from "./judge.js";
import type { Surroundings } from "./surroundings.js";

/** A vessel that was not told: 3500 s, just short of an hour, by a factor of two (assumed). */
const ANY_VESSEL = { timeConstantS: 3500, logSd: 0.7 };
/** How well surroundings are known that were told, and that were not, °C (assumed). */
const AMBIENT_SD = { told: 1, untold: 5 };
/**
 * How far from its surroundings a bath may start, °C (assumed): so wide that it decides nothing but what no
 * reading tells.
 */
const START_SD_C = 30;
/** Readings fall in weight with their age, by e in 900 s (assumed): the law is not kept for ever. */
const MEMORY_S = 900;
/** Where the prior of the time constant is looked at, in standard deviations. */
const NODES: readonly number[] = [-3, -2.5, -2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2, 2.5, 3];
/** One of the drifts that may be: at the moment of the last reading, and after. */
export interface PossibleDrift {
  /** how likely it is, the sum over all being 1 */
  readonly share: number;
  readonly timeConstantS: number;
  /** at the last reading, °C */
  readonly levelC: number;
  readonly ambientC: number;
  /** variance of the level and of the surroundings, and their covariance, °C² */
  readonly variance: readonly [level: number, ambient: number, both: number];
}

/** What is expected behind the last reading. */
export interface Forecast {
  /** the last reading's clock time, s */
  readonly fromS: number;
  readonly drifts: readonly PossibleDrift[];
}

/**
 * Weighted least squares of level and surroundings at each of 13 time constants, each weighed by its prior
 * and by how well the readings fit it. Only readings since the bath was last changed on purpose are looked
 * at.
 *
 * @param readings - one or more, times strictly rising
 * @param readingSdC - of one of them, °C
 */
export function forecastFrom(
  readings: readonly Followed[],
  { ambientC, vessel = ANY_VESSEL }: Surroundings,
  readingSdC: number,
): Forecast {
  const last = readings.at(-1) as Followed;
  const since: Followed[] = [];
  for (let i = readings.length - 1; i >= 0; i -= 1) {
    const one = readings[i] as Followed;
    since.push(one);
    if (one.changed) break;
  }
  const meanC = since.reduce((sum, one) => sum + one.celsius, 0) / since.length;
  const airC = ambientC ?? meanC;
  const airWeight = (ambientC === undefined ? AMBIENT_SD.untold : AMBIENT_SD.told) ** -2;
  const drifts = NODES.map((z) => {
    const timeConstantS = vessel.timeConstantS * Math.exp(z * vessel.logSd);
    return { z, timeConstantS, ...fitAt(timeConstantS, since, last.timeS, readingSdC, airC, airWeight) };
  });
  const likely = drifts.map(({ z, logLikelihood }) => logLikelihood - (z * z) / 2);
  const most = Math.max(...likely);
  const shares = likely.map((one) => Math.exp(one - most));
  const all = shares.reduce((sum, share) => sum + share, 0);
  return {
    fromS: last.timeS,
    drifts: drifts.map(({ timeConstantS, levelC, ambientC: fittedC, variance }, k) => ({
      share: (shares[k] as number) / all,
      timeConstantS,
      levelC,
      ambientC: fittedC,
      variance,
    })),
  };
}

/**
 * Level and surroundings that fit best at one time constant: T = surroundings + start·g, with g the share of
 * the start that is left, so at most 1.
 */
function fitAt(
  timeConstantS: number,
  readings: readonly Followed[],
  nowS: number,
  sdC: number,
  airC: number,
  airWeight: number,
): Omit<PossibleDrift, "share" | "timeConstantS"> & { readonly logLikelihood: number } {
  const startS = (readings.at(-1) as Followed).timeS;
  let gg = START_SD_C ** -2;
  let g1 = 0;
  let one = airWeight;
  let gy = 0;
  let y1 = 0;
  let yy = 0;
  for (const { timeS, celsius } of readings) {
    const weight = Math.exp((timeS - nowS) / MEMORY_S) / (sdC * sdC);
    const g = Math.exp((startS - timeS) / timeConstantS);
    const y = celsius - airC;
    gg += weight * g * g;
    g1 += weight * g;
    one += weight;
    gy += weight * g * y;
    y1 += weight * y;
    yy += weight * y * y;
  }
  const determinant = gg * one - g1 * g1;
  const start = (one * gy - g1 * y1) / determinant;
  const air = (gg * y1 - g1 * gy) / determinant;
  const left = Math.exp((startS - nowS) / timeConstantS);
  const airVariance = gg / determinant;
  const both = -g1 / determinant;
  return {
    levelC: airC + air + start * left,
    ambientC: airC + air,
    variance: [
      airVariance + (left * left * one) / determinant + 2 * left * both,
      airVariance,
      airVariance + left * both,
    ],
    logLikelihood: -(yy - start * gy - air * y1) / 2 - Math.log(determinant) / 2,
  };
}

/** What is left of the start after a time from the last reading. */
export const remainder = (drift: PossibleDrift, afterS: number): number =>
  Math.exp(-afterS / drift.timeConstantS);

/** The temperature of one drift after a time from the last reading, within 0 to 100 °C. */
export function driftAt(drift: PossibleDrift, afterS: number): number {
  const f = remainder(drift, afterS);
  return Math.min(100, Math.max(0, drift.levelC * f + drift.ambientC * (1 - f)));
}

/** What is expected after a time from the last reading, °C: the mean over the drifts that may be. */
export function expectedAt({ drifts }: Forecast, afterS: number): number {
  let sum = 0;
  for (const drift of drifts) sum += drift.share * driftAt(drift, afterS);
  // The shares sum to 1 but for rounding.
  return Math.min(100, sum);
}
