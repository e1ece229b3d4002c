/*
 * Room: compensate. The term of temperature where the bath drifts: the rooms of temperature and drift do the
 * arithmetic.
 */
import { clockTime } from "../drift/developUntil.js";
import { integrate } from "../drift/integrate.js";
import {
  checkedLog,
  logTemperature,
  type TemperatureForecast,
  type TemperatureReading,
} from "../drift/log.js";
import { genericTemperatureLaw } from "../temperature/genericTemperatureLaw.js";
import { rateFunction } from "../temperature/rateFunction.js";
import { temperatureLogSd } from "../temperature/temperatureLogSd.js";
import { cautionsAt, caution, choose, row } from "./terms.js";
import type { Baseline, Conditions, Knowledge, WorkedTerm } from "./types.js";

/**
 * The term of temperature for a bath that drifts: the clock time in which it does the work of `wantedS` at
 * the baseline's temperature. A log counts from its first reading and its last is held; a forecast counts
 * from 0.
 */
export function driftTerm(
  baseline: Baseline,
  given: Conditions["temperatureC"],
  knowledge: Knowledge,
  wantedS: number,
): WorkedTerm {
  const from = baseline.temperatureC;
  const [law, basis] = choose("temperature", knowledge.temperature, genericTemperatureLaw);
  const log = typeof given === "object" ? checkedLog("compensate/conditions/temperatureC", given) : undefined;
  const temperatureAt = log ? logTemperature(log) : (given as TemperatureForecast);
  const rateAt = rateFunction(law, from);
  const rate = (timeS: number): number => rateAt(temperatureAt(timeS));
  const startS = log?.[0]?.timeS ?? 0;
  const endS = clockTime(
    rate,
    wantedS,
    startS,
    log?.map((one) => one.timeS),
  );
  const spanS = endS - startS;
  // The law is moved by its standard deviation: colder and warmer stretches of a log around the baseline work
  // against each other,
  // except for a table, whose rows err one by one.
  const moved = (timeS: number): number => {
    const c = temperatureAt(timeS);
    const sd = temperatureLogSd(law, from, c);
    return rateAt(c) * (c < from && law.kind !== "table" ? -sd : sd);
  };
  // A time too short for the log's clock to show is one moment.
  const logSd =
    spanS > 0
      ? Math.abs(integrate(moved, startS, endS, wantedS * 1e-6)) / (rate(endS) * spanS)
      : temperatureLogSd(law, from, temperatureAt(startS));
  // What a log says after the pour-out was no longer the bath of this development.
  const times =
    log?.map((one) => one.timeS).filter((timeS) => timeS < endS) ??
    Array.from({ length: 32 }, (_, i) => startS + (spanS * i) / 32);
  const seen = [...times, endS].map(temperatureAt);
  // What is too cold is worst at the coldest moment, what is too warm at the warmest.
  const cautions = [1, -1].flatMap((sign) =>
    cautionsAt(baseline, sign * Math.min(...seen.map((c) => sign * c)), law).filter(
      ({ limit = 0, actual = 0 }) => sign * (limit - actual) >= 0,
    ),
  );
  if (log && (log.at(-1) as TemperatureReading).timeS < endS)
    cautions.push(
      caution(
        "log-held",
        "warn",
        "temperatureC",
        "The log ends before the development: its last reading is held.",
      ),
    );
  // What holds for both moments is said once.
  const once = new Map(cautions.map((one) => [one.message, one]));
  return { factor: row("temperature", spanS / wantedS, logSd, law, basis), cautions: [...once.values()] };
}
