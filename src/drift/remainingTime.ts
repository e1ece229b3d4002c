import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import { gravestFirst, type Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import { positive } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { inNameOf } from "../core/inNameOf.js";
import { genericTemperatureLaw } from "../temperature/genericTemperatureLaw.js";
import type { TemperatureLaw } from "../temperature/law.js";
import { fahrenheitCautions, temperatureCautions } from "../temperature/temperatureCautions.js";
import { rateFunction } from "../temperature/rateFunction.js";
import { clockTime } from "./developUntil.js";
import { equivalentTime } from "./equivalentTime.js";
import { courseOf, type TemperatureCourse } from "./course.js";
import type { TemperatureLog, TemperatureReading } from "./log.js";
import { logCautions } from "./logCautions.js";
import { loadOf, type OwnUse } from "./ownUse.js";
import { driftSentences } from "./text.js";

/** What {@link remainingTime} needs. */
export interface RemainingTimeOptions {
  /** the time that would be right at `referenceC`, s, above 0 to 1e7 */
  readonly targetS: number;
  /** °C, 0 to 100 */
  readonly referenceC: number;
  /** the temperature law of developer and material; the generic one when left out */
  readonly law?: TemperatureLaw | undefined;
  /** the readings so far; the first is the pour-in, the last is now */
  readonly log: TemperatureLog;
  /**
   * what is expected from now on, on the log's clock: steady in °C, a log, or a drift (its `startC` is that
   * of clock time 0); the last reading is held when left out
   */
  readonly temperatureAt?: TemperatureCourse | undefined;
  /** how this development wears out its own bath; left out: not at all */
  readonly ownUse?: OwnUse | undefined;
}

const OPTIONS: readonly (keyof RemainingTimeOptions)[] = [
  "targetS",
  "referenceC",
  "law",
  "log",
  "temperatureAt",
  "ownUse",
];

/** What is left of a development. */
export interface RemainingTime {
  /** clock time still to go, s; 0 once the work is done */
  readonly remainingS: number;
  /** what has been done, as time at the reference temperature, s */
  readonly doneS: number;
  /** doneS / targetS; above 1 when the negative has had too much */
  readonly fraction: number;
  /** what is unwise about the readings and the time */
  readonly cautions: readonly Caution[];
}

/**
 * How long is still to go, from the readings so far and a forecast.
 *
 * @param options - the target, the law, the readings from pour-in to now, and the temperature to be expected
 * @returns the clock time left in s, what is done in s at the reference temperature, its fraction of the
 * target, and cautions
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError as {@link equivalentTime} and {@link developUntil} do
 *
 * @remarks What the readings have done is {@link equivalentTime}; the rest is {@link developUntil} from the
 * last reading on. A target passed is told by the fraction and a caution, never by a time below 0. Cautions
 * are those of {@link logCautions}, and those to stop about the forecast until then, without a path: one in
 * °F, or one that leaves 4 to 32 °C. Surroundings of a drift that are in °F have their path.
 *
 * @example
 * ```ts
 * const law: TemperatureLaw = { kind: "coefficient", ratio: 2, intervalC: 10 };
 * const log = [{ timeS: 0, temperatureC: 20 }, { timeS: 180, temperatureC: 18 }];
 * remainingTime({ targetS: 480, referenceC: 20, law, log, temperatureAt: 17 }).remainingS // => 384.02
 * ```
 */
export function remainingTime(options: RemainingTimeOptions): RemainingTime {
  const {
    log,
    law = genericTemperatureLaw,
    referenceC,
    temperatureAt,
    ownUse,
  } = onlyFields("remainingTime/options", options, OPTIONS) as unknown as RemainingTimeOptions;
  const targetS = positive("remainingTime/options/targetS", options.targetS, LONGEST_CLOCK_S, "timeS");
  const workedS = inNameOf("remainingTime/options", () => equivalentTime(log, referenceC, law));
  const load = ownUse === undefined ? undefined : loadOf("remainingTime/options/ownUse", ownUse);
  const doneS = load ? targetS * load.share(workedS / targetS) : workedS;
  const fraction = doneS / targetS;
  const past = { quantity: "timeS", limit: targetS, actual: doneS } as const;
  const cautions =
    fraction > 1
      ? [makeCaution(driftSentences, "target-passed", "stop", past), ...logCautions(log)]
      : logCautions(log);
  if (fraction >= 1) return { remainingS: 0, doneS, fraction, cautions };
  const { timeS: nowS, temperatureC: nowC } = log[log.length - 1] as TemperatureReading;
  const { at: forecast, corners } = courseOf(
    "remainingTime/options/temperatureAt",
    temperatureAt === undefined ? nowC : temperatureAt,
  );
  const rateAt = rateFunction(referenceC, law);
  const left = (load ? targetS * load.whole : targetS) - workedS;
  const untilS = clockTime((timeS) => rateAt(forecast(timeS)), left, nowS, corners, {
    course: "remainingTime/options/temperatureAt",
    work: "remainingTime/options/targetS",
  });
  const ahead =
    temperatureAt === undefined
      ? []
      : [...ambientCautions(temperatureAt, "/temperatureAt"), ...stopsAhead(forecast, nowS, untilS)];
  return { remainingS: untilS - nowS, doneS, fraction, cautions: gravestFirst([...cautions, ...ahead]) };
}

/** What is unwise about the surroundings of a forecast, where it is a drift. */
const ambientCautions = (course: TemperatureCourse, path: string): readonly Caution[] =>
  typeof course === "object" && "ambientC" in course
    ? fahrenheitCautions(course.ambientC, `${path}/ambientC`)
    : [];

/** What there is to stop for in a forecast, at its warmest and its coldest. */
function stopsAhead(forecast: (timeS: number) => number, fromS: number, untilS: number): readonly Caution[] {
  const seen = Array.from({ length: 33 }, (_, i) =>
    forecast(Math.min(untilS, fromS + ((untilS - fromS) * i) / 32)),
  );
  const ends = new Set([Math.max(...seen), Math.min(...seen)]);
  return [...ends].flatMap((c) => temperatureCautions(c)).filter(({ severity }) => severity === "stop");
}
