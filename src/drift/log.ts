/*
 * Module: drift. A bath that does not hold its temperature: what a log of thermometer readings is, and how
 * one is checked.
 */
import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import { inRange, longEnough, plainObject, refuse } from "../core/guards.js";
import { risingText } from "../core/text.js";

/** One reading of the thermometer. */
export interface TemperatureReading {
  /** clock time, counted from pour-in, s, 0 to 1e7 */
  readonly timeS: number;
  /** the bath, °C, 0 to 100 */
  readonly temperatureC: number;
  /** the bath was altered on purpose just before, as by warm water; heeded by `steer` alone */
  readonly changed?: true | undefined;
}

/**
 * Two or more readings, times strictly rising; between readings the temperature is taken as linear in time.
 */
export type TemperatureLog = readonly TemperatureReading[];

/** The bath's temperature in °C as a function of clock time in s: a forecast. */
export type TemperatureForecast = (timeS: number) => number;

/** Checks a log of two or more readings; throws otherwise, naming the first reading that is wrong. */
export function checkedLog(where: string, log: unknown): TemperatureLog {
  const readings = longEnough(where, log, 2) as TemperatureLog;
  // The first reading may stand at 0, later ones must be later.
  let before = -Number.MIN_VALUE;
  for (let i = 0; i < readings.length; i += 1) {
    const { timeS, temperatureC } = (readings[i] ?? {}) as TemperatureReading;
    const numbers = typeof timeS === "number" && typeof temperatureC === "number";
    // One plain test for the usual case, so that a long log costs no text; what is wrong is worked out only
    // when something is.
    if (!(numbers && timeS > before && timeS <= LONGEST_CLOCK_S && temperatureC >= 0 && temperatureC <= 100))
      refuseReading(`${where}/${i}`, readings[i], before);
    before = timeS;
  }
  return readings;
}

function refuseReading(where: string, reading: unknown, before: number): never {
  const { timeS, temperatureC } = plainObject(where, reading);
  inRange(where, timeS, 0, LONGEST_CLOCK_S, "timeS", "/timeS");
  inRange(where, temperatureC, 0, 100, "temperatureC", "/temperatureC");
  refuse(`${where}/timeS`, "rising", risingText, { above: before, quantity: "timeS" }, timeS);
}

/**
 * The temperature of a checked log as a function of time: linear between readings, the first and last held
 * outside them.
 */
export function logTemperature(log: TemperatureLog): TemperatureForecast {
  let i = 1;
  return (timeS) => {
    // A search that starts where the last one ended: callers walk along the clock.
    while (i > 1 && timeS < (log[i - 1] as TemperatureReading).timeS) i -= 1;
    while (i < log.length - 1 && timeS > (log[i] as TemperatureReading).timeS) i += 1;
    const from = log[i - 1] as TemperatureReading;
    const to = log[i] as TemperatureReading;
    const share = Math.min(1, Math.max(0, (timeS - from.timeS) / (to.timeS - from.timeS)));
    return from.temperatureC + (to.temperatureC - from.temperatureC) * share;
  };
}
