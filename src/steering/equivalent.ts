import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import type { TimeEstimate } from "../core/estimate.js";
import { equivalentTime } from "../drift/equivalentTime.js";
import type { TemperatureLog, TemperatureReading } from "../drift/log.js";
import type { TemperatureLaw } from "../temperature/law.js";
import type { EquivalentWork } from "./types.js";

/** What {@link equivalentOn} is asked. */
export interface EquivalentQuestion {
  /** from pour-in to behind now */
  readonly path: TemperatureLog;
  readonly referenceC: number;
  readonly law: TemperatureLaw;
  /** the clock from pour-in, s */
  readonly nowS: number;
  /** how long a bath takes that stays at the reference, s */
  readonly dueS: number;
  /** how long the bath takes on the clock, s, without what the image says */
  readonly byBathS: number;
  /** the whole time on the clock, s */
  readonly total: TimeEstimate;
}

/** The moments of a run on the scale of a bath that stays at one temperature. */
export function equivalentOn({
  path,
  referenceC,
  law,
  nowS,
  dueS,
  byBathS,
  total,
}: EquivalentQuestion): EquivalentWork {
  const under = (timeS: number): number =>
    timeS > 0 ? equivalentTime(upTo(path, Math.min(timeS, LONGEST_CLOCK_S)), referenceC, law) : 0;
  // A diluted bath depends less on temperature than the law says: by as much the whole work is off.
  const share = dueS / under(byBathS);
  // On a scale that is as long as a clock.
  const work = (timeS: number): number => Math.min(LONGEST_CLOCK_S, share * under(timeS));
  return {
    referenceC,
    nowS: work(nowS),
    dueS,
    timeS: work(total.timeS),
    lowS: work(total.lowS),
    highS: work(total.highS),
  };
}

/** The path up to a moment; behind its end the last temperature holds. */
export function upTo(path: TemperatureLog, timeS: number): TemperatureLog {
  const before = path.filter((one) => one.timeS < timeS);
  const from = before.at(-1) as TemperatureReading;
  const to = path[before.length] ?? { ...from, timeS };
  const share = to.timeS > from.timeS ? (timeS - from.timeS) / (to.timeS - from.timeS) : 1;
  const temperatureC = from.temperatureC + (to.temperatureC - from.temperatureC) * share;
  return [...before, { timeS, temperatureC }];
}
