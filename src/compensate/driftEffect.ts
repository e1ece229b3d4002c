/*
 * Temperature where the bath drifts: the clock time in which it does the work of a steady bath.
 */
import { isPast, type Caution } from "../core/caution.js";
import type { Effect, KnownBath } from "../core/cause.js";
import type { ReadyWalk } from "../core/departures.js";
import { makeCaution } from "../core/cautionTexts.js";
import { inRange } from "../core/guards.js";
import { clockTime } from "../drift/developUntil.js";
import { integrate } from "../drift/integrate.js";
import { checkedLog, logTemperature, type TemperatureLog } from "../drift/log.js";
import { checkedDrift, driftTemperature, type NewtonDrift } from "../drift/newtonDrift.js";
import { temperatureChangeCautions, temperatureEffect } from "../temperature/cause.js";
import { temperatureSpread, type ReadyTemperatureLaw } from "../temperature/law.js";
import { FAHRENHEIT_ABOVE_C, fahrenheitCautions } from "../temperature/temperatureCautions.js";
import { rateUnder } from "../temperature/rateFunction.js";
import { compensateSentences } from "./text.js";

const PATH = "/conditions/temperatureC";

/** A bath that drifts: a log or a forecast. */
export type Drift = TemperatureLog | NewtonDrift;

/** What a bath that drifts does to the time. */
export interface DriftEffect {
  readonly effect: Effect;
  readonly cautions: readonly Caution[];
  /** what ln(time) moves by when at each temperature it would move by so much, which has to be little */
  readonly along: (logAt: (temperatureC: number) => number) => number;
}

/**
 * The effect of a bath that drifts, on a development that would take `wantedS` at the known temperature. A
 * log counts from its first reading and its last is held; a forecast counts from 0.
 */
export function driftEffect(
  at: string,
  law: ReadyTemperatureLaw,
  known: KnownBath,
  given: Drift,
  wantedS: number,
): DriftEffect {
  const fromC = known.temperatureC;
  const log = Array.isArray(given) ? checkedLog(at, given) : undefined;
  const drift = log ? undefined : checkedDrift(at, given);
  const temperatureAt = log ? logTemperature(log) : driftTemperature(drift as NewtonDrift);
  const rateAt = rateUnder(law, fromC);
  // A bath in air below 0 °C may freeze before it is done: the drift is what is wrong then.
  const rate = (timeS: number): number => rateAt(inRange(at, temperatureAt(timeS), 0, 100, "temperatureC"));
  const startS = log?.[0]?.timeS ?? 0;
  const endS = clockTime(
    rate,
    wantedS,
    startS,
    log?.map((one) => one.timeS),
    { course: at, work: at },
  );
  const spanS = endS - startS;
  // A time too short for the log's clock to show is one moment.
  const along = (logAt: (temperatureC: number) => number): number =>
    spanS > 0
      ? integrate((timeS) => rate(timeS) * logAt(temperatureAt(timeS)), startS, endS, wantedS * 1e-6) /
        (rate(endS) * spanS)
      : logAt(temperatureAt(startS));
  // The law is moved by its standard deviation: colder and warmer stretches of a log around the baseline work
  // against each other, but not what its rows say of a table, which err one by one.
  const ratio = { log: Math.log(spanS / wantedS), exact: spanS / wantedS };
  const effect =
    law.kind !== "coefficient" && law.walk !== undefined
      ? { ...ratio, ...walkAlong(law, law.walk, fromC, along) }
      : law.kind === "table"
        ? {
            ...ratio,
            ...slopeAlong(law, fromC, along),
            beside: along((c) => temperatureEffect(law, fromC, c).beside),
          }
        : {
            ...ratio,
            slope: along((c) => Math.sign(fromC - c) * temperatureSpread(law, fromC, c)),
            sd: 1,
            beside: 0,
          };
  const around = drift === undefined ? [] : fahrenheitCautions(drift.ambientC, `${PATH}/ambientC`);
  const cautions = [...around, ...cautionsAlong(law, known, log, temperatureAt, startS, endS)];
  return { effect, along, cautions };
}

/** The own number of a law, moved by its standard deviation along the way. */
function slopeAlong(
  law: ReadyTemperatureLaw,
  fromC: number,
  along: DriftEffect["along"],
): Pick<Effect, "slope" | "sd"> {
  return {
    slope: along((c) => temperatureEffect(law, fromC, c).slope),
    sd: temperatureEffect(law, fromC, fromC).sd,
  };
}

/** The numbers of a law that departs from its energy, each moved by its standard deviation along the way. */
function walkAlong(
  law: ReadyTemperatureLaw,
  walk: ReadyWalk,
  fromC: number,
  along: DriftEffect["along"],
): Pick<Effect, "slope" | "sd" | "beside" | "further"> {
  return {
    ...slopeAlong(law, fromC, along),
    beside: Math.abs(along((c) => Math.sign(fromC - c) * walk(fromC, c).beside)),
    further: walk.numbers.map((parameter) => ({
      parameter,
      slope: along((c) => walk(fromC, c).further?.find((one) => one.parameter === parameter)?.slope ?? 0),
    })),
  };
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
  // The line at the end may lead to a reading that no bath has: the reading is doubted, not a moment before.
  const leadsTo = log?.find((one) => one.timeS >= endS)?.temperatureC ?? warmest;
  if (isPast(leadsTo, FAHRENHEIT_ABOVE_C)) warmest = Math.max(warmest, leadsTo);
  // What is too cold is worst at the coldest moment, what is too warm at the warmest.
  const below = temperatureChangeCautions(law, known.temperatureC, coldest, known, PATH).filter(
    ({ limit = 0, actual = 0 }) => limit >= actual,
  );
  const above = temperatureChangeCautions(law, known.temperatureC, warmest, known, PATH).filter(
    ({ code, limit = 0, actual = 0 }) =>
      limit <= actual && !below.some((one) => one.code === code && (one.limit ?? 0) === limit),
  );
  const cautions = [...below, ...above];
  const last = log?.at(-1);
  if (last && last.timeS < endS)
    cautions.push(
      makeCaution(compensateSentences, "log-held", "warn", {
        path: PATH,
        quantity: "timeS",
        limit: last.timeS,
        actual: endS,
      }),
    );
  return cautions;
}
