/*
 * Temperature where the bath drifts: the clock time in which it does the work of a steady bath.
 */
import type { Caution } from "../core/caution.js";
import type { Effect, KnownBath } from "../core/cause.js";
import { clockTime } from "../drift/developUntil.js";
import { integrate } from "../drift/integrate.js";
import { checkedLog, logTemperature, type TemperatureLog } from "../drift/log.js";
import { checkedDrift, driftTemperature, type NewtonDrift } from "../drift/newtonDrift.js";
import { temperatureChangeCautions } from "../temperature/cause.js";
import { temperatureSpread, type ReadyTemperatureLaw } from "../temperature/law.js";
import { rateUnder } from "../temperature/rateFunction.js";

const PATH = "/conditions/temperatureC";

/** A bath that drifts: a log or a forecast. */
export type Drift = TemperatureLog | NewtonDrift;

/**
 * The effect of a bath that drifts, on a development that would take `wantedS` at the known temperature. A log
 * counts from its first reading and its last is held; a forecast counts from 0.
 */
export function driftEffect(
  at: string,
  law: ReadyTemperatureLaw,
  known: KnownBath,
  given: Drift,
  wantedS: number,
): { readonly effect: Effect; readonly cautions: readonly Caution[] } {
  const fromC = known.temperatureC;
  const log = Array.isArray(given) ? checkedLog(at, given) : undefined;
  const temperatureAt = log ? logTemperature(log) : driftTemperature(checkedDrift(at, given));
  const rateAt = rateUnder(law, fromC);
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
  // against each other, except for a table, whose rows err one by one.
  const moved = (timeS: number): number => {
    const c = temperatureAt(timeS);
    const sd = temperatureSpread(law, fromC, c);
    return rateAt(c) * (c < fromC && law.kind !== "table" ? -sd : sd);
  };
  // A time too short for the log's clock to show is one moment. ln(time) falls where the law makes warm baths faster.
  const slope =
    spanS > 0
      ? -integrate(moved, startS, endS, wantedS * 1e-6) / (rate(endS) * spanS)
      : temperatureSpread(law, fromC, temperatureAt(startS));
  const effect = { log: Math.log(spanS / wantedS), exact: spanS / wantedS, slope, sd: 1, beside: 0 };
  return { effect, cautions: cautionsAlong(law, known, log, temperatureAt, startS, endS) };
}

function cautionsAlong(
  law: ReadyTemperatureLaw,
  known: KnownBath,
  log: TemperatureLog | undefined,
  temperatureAt: (timeS: number) => number,
  startS: number,
  endS: number,
): readonly Caution[] {
  // What a log says after the pour-out was no longer the bath of this development.
  const times =
    log?.map((one) => one.timeS).filter((timeS) => timeS < endS) ??
    Array.from({ length: 32 }, (_, i) => startS + ((endS - startS) * i) / 32);
  let coldest = temperatureAt(endS);
  let warmest = coldest;
  for (const timeS of times) {
    const c = temperatureAt(timeS);
    coldest = Math.min(coldest, c);
    warmest = Math.max(warmest, c);
  }
  // What is too cold is worst at the coldest moment, what is too warm at the warmest.
  const below = temperatureChangeCautions(law, known.temperatureC, coldest, known, PATH).filter(
    ({ limit = 0, actual = 0 }) => limit >= actual,
  );
  const above = temperatureChangeCautions(law, known.temperatureC, warmest, known, PATH).filter(
    ({ limit = 0, actual = 0, message }) => limit <= actual && !below.some((one) => one.message === message),
  );
  const cautions = [...below, ...above];
  const last = log?.at(-1);
  if (last && last.timeS < endS)
    cautions.push({
      code: "log-held",
      severity: "warn",
      message: "The log ends before the development: its last reading is held.",
      path: PATH,
      quantity: "timeS",
      limit: last.timeS,
      actual: endS,
    });
  return cautions;
}
