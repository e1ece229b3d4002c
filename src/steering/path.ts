/*
 * The path of the bath: the readings that are followed, straight between them, and the forecast behind the
 * last.
 */
import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import type { TemperatureLog, TemperatureReading } from "../drift/log.js";
import { driftAt, expectedAt, forecastFrom, remainder, type Forecast } from "./forecast.js";
import type { Followed } from "./judge.js";
import { farthestDrift, type Surroundings } from "./surroundings.js";

/** The forecast is handed on as this many further readings. */
const STEPS = 32;

/** A path, ready for `compensate`. */
export interface Path {
  /** from pour-in to behind the end, times strictly rising */
  readonly log: TemperatureLog;
  readonly forecast: Forecast;
}

/** What the path is made of, and for. */
export interface PathInput {
  /** one or more, times strictly rising */
  readonly followed: readonly Followed[];
  readonly known: Surroundings;
  /** of one reading, °C */
  readonly readingSdC: number;
  /** the relative rate of development at a temperature, 1 at that of the known time */
  readonly rate: (temperatureC: number) => number;
  /** the time that is due at the temperature of the known time, s */
  readonly wantedS: number;
  /** the path has to reach this clock time at least, s */
  readonly untilS: number;
}

/** A log holds no more than 100,000 readings: of a longer path every second one, or every third, is kept. */
const MOST_FOLLOWED = 90_000;

function thinned(followed: readonly Followed[]): readonly Followed[] {
  const stride = Math.ceil(followed.length / MOST_FOLLOWED);
  return stride === 1
    ? followed
    : followed.filter(({ changed }, i) => changed || (followed.length - 1 - i) % stride === 0);
}

/** Makes the path. */
export function pathOf(input: PathInput): Path {
  const { known, readingSdC } = input;
  const followed = thinned(input.followed);
  const forecast = forecastFrom(followed, known, readingSdC);
  const log: TemperatureReading[] = [];
  const first = followed[0] as Followed;
  // A first reading that came late: back to pour-in along the drift.
  if (first.timeS > 0) log.push({ timeS: 0, temperatureC: backTo(first, followed, input) });
  let since = 0;
  followed.forEach((one, i) => {
    if (one.changed && i > 0) {
      for (const each of upToChange(followed.slice(since, i), one, input)) log.push(each);
      since = i;
    }
    log.push({ timeS: one.timeS, temperatureC: one.celsius });
  });
  const spanS = aheadS(log, forecast, input);
  for (let i = 1; i <= STEPS; i += 1) {
    // Close together where the drift is fast: right behind the last reading.
    const afterS = spanS * (i / STEPS) ** 2;
    const timeS = forecast.fromS + afterS;
    if (timeS > (log.at(-1) as TemperatureReading).timeS)
      log.push({ timeS, temperatureC: expectedAt(forecast, afterS) });
  }
  return { log, forecast };
}

/** A log holds two readings: the second of a single one comes so much later, s. */
const HELD_S = 1;

/** The readings that are followed, the last one held: the bath without what is expected of it. */
export function heldPath(followed: readonly Followed[]): TemperatureLog {
  const log = thinned(followed).map(({ timeS, celsius }) => ({ timeS, temperatureC: celsius }));
  const { timeS, temperatureC } = log[0] as TemperatureReading;
  if (timeS > 0) return [{ timeS: 0, temperatureC }, ...log];
  return log.length > 1 ? log : [...log, { timeS: HELD_S, temperatureC }];
}

/** The bath at pour-in, from a first reading that came later. */
function backTo(first: Followed, followed: readonly Followed[], { known, readingSdC }: PathInput): number {
  const until = followed.findIndex((one, i) => i > 0 && one.changed);
  // The drift on a clock that runs back from the first reading: readings before the first change alone.
  const early = until < 0 ? followed : followed.slice(0, until);
  const { fromS, drifts } = forecastFrom(early, known, readingSdC);
  let moved = 0;
  for (const drift of drifts) {
    const excess = drift.levelC - drift.ambientC;
    moved +=
      drift.share *
      excess *
      (Math.exp(Math.min(5, fromS / drift.timeConstantS)) -
        Math.exp(Math.min(5, (fromS - first.timeS) / drift.timeConstantS)));
  }
  // No farther than the bath could have come by the first reading.
  const farthest = farthestDrift(known, first.celsius, first.timeS);
  return within(first.celsius + Math.min(farthest, Math.max(-farthest, moved)));
}

/** A bath that was changed on purpose drifted on until then. */
function upToChange(before: readonly Followed[], changed: Followed, input: PathInput): TemperatureLog {
  const last = before.at(-1) as Followed;
  const timeS = changed.timeS - Math.min(1, (changed.timeS - last.timeS) / 2);
  // Two readings of one moment leave no time to drift.
  if (!(timeS > last.timeS && timeS < changed.timeS)) return [];
  const drift = forecastFrom(before, input.known, input.readingSdC);
  return [{ timeS, temperatureC: expectedAt(drift, timeS - last.timeS) }];
}

const within = (temperatureC: number): number => Math.min(100, Math.max(0, temperatureC));

/** How far ahead of the last reading the end lies, by steps of the forecast, with a quarter to spare. */
function aheadS(log: TemperatureLog, forecast: Forecast, { rate, wantedS, untilS }: PathInput): number {
  let left = wantedS;
  for (let i = 1; i < log.length; i += 1) {
    const from = log[i - 1] as TemperatureReading;
    const to = log[i] as TemperatureReading;
    left -= ((to.timeS - from.timeS) * (rate(from.temperatureC) + rate(to.temperatureC))) / 2;
  }
  let afterS = 0;
  const step = left / 16;
  while (left > 0 && forecast.fromS + afterS < LONGEST_CLOCK_S) {
    afterS += step / rate(expectedAt(forecast, afterS));
    left -= step;
  }
  const spanS = Math.max(60, 1.25 * afterS, untilS - forecast.fromS + 1);
  return Math.min(spanS, LONGEST_CLOCK_S - forecast.fromS);
}

/**
 * The standard deviation of the end that comes from the path itself, s: the noise of the readings, and what
 * is not known of the drift behind the last one. To first order in the rate.
 *
 * @param endS - where development ends on the path, s
 */
export function pathSdS(
  { log, forecast }: Path,
  endS: number,
  { rate: rateAt, readingSdC }: PathInput,
): number {
  const slopeAt = (c: number): number => {
    const low = Math.max(0, c - 0.05);
    const high = Math.min(100, c + 0.05);
    return (rateAt(high) - rateAt(low)) / (high - low);
  };
  const { fromS, drifts } = forecast;
  let variance = 0;
  for (let i = 0; i < log.length; i += 1) {
    const { timeS, temperatureC } = log[i] as TemperatureReading;
    if (timeS > fromS || timeS > endS) break;
    const beforeS = log[i - 1]?.timeS ?? timeS;
    const afterS = Math.min(fromS, (log[Math.min(i + 1, log.length - 1)] as TemperatureReading).timeS);
    variance += (slopeAt(temperatureC) * readingSdC * ((afterS - beforeS) / 2)) ** 2;
  }
  const aheadS = endS - fromS;
  if (aheadS > 0) {
    const expected = STEP_SHARES.map((share) => rateAt(expectedAt(forecast, aheadS * share)));
    for (const drift of drifts) {
      let moved = 0;
      let level = 0;
      let ambient = 0;
      STEP_SHARES.forEach((share, i) => {
        const afterS = aheadS * share;
        const c = driftAt(drift, afterS);
        const f = remainder(drift, afterS);
        const slope = slopeAt(c);
        moved += rateAt(c) - (expected[i] as number);
        level += slope * f;
        ambient += slope * (1 - f);
      });
      const [ofLevel, ofAmbient, both] = drift.variance;
      const each = aheadS / STEP_SHARES.length;
      variance +=
        drift.share *
        each *
        each *
        (moved * moved +
          level * level * ofLevel +
          ambient * ambient * ofAmbient +
          2 * level * ambient * both);
    }
  }
  const end = expectedAt(forecast, Math.max(0, aheadS));
  return Math.sqrt(variance) / rateAt(end);
}

/** The middles of sixteen equal steps, as shares of the whole. */
const STEP_SHARES: readonly number[] = Array.from({ length: 16 }, (_, i) => (i + 0.5) / 16);
