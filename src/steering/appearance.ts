import type { TimeEstimate } from "../core/estimate.js";
import { developUntil } from "../drift/developUntil.js";
import { equivalentTime } from "../drift/equivalentTime.js";
import type { TemperatureLog, TemperatureReading } from "../drift/log.js";
import { appearanceEstimate, type AppearanceSeen } from "../inspection/appearanceEstimate.js";
import type { TemperatureLaw } from "../temperature/law.js";
import { named } from "./named.js";

/**
 * What the image's appearance asks for, on the clock of a bath that drifts: the work done until then, times
 * the factor, carried along the path. Temperature moves the appearance and the end alike.
 *
 * @param path - from pour-in to behind the end
 */
export function appearanceOnPath(
  seen: AppearanceSeen,
  path: TemperatureLog,
  referenceC: number,
  law: TemperatureLaw,
): TimeEstimate {
  const steady = named("steer", () => appearanceEstimate(seen), inAppearance);
  const spread = Math.exp(Math.log(steady.highS / steady.lowS) / 2);
  const work = equivalentTime(upTo(path, seen.appearanceS), referenceC, law) * seen.factor;
  const clock = (equivalentS: number): number =>
    developUntil({ equivalentS, referenceC, law, temperatureAt: path });
  return { timeS: clock(work), lowS: clock(work / spread), highS: clock(work * spread) };
}

/** The place of a field of what was seen, in what steering was given. */
const inAppearance = (path: string): string => `/appearance${path.replace(/^\/seen/, "")}`;

/** The path up to a moment within it. */
function upTo(path: TemperatureLog, timeS: number): TemperatureLog {
  const before = path.filter((one) => one.timeS < timeS);
  const from = before.at(-1) as TemperatureReading;
  const to = path[before.length] as TemperatureReading;
  const share = (timeS - from.timeS) / (to.timeS - from.timeS);
  const temperatureC = from.temperatureC + (to.temperatureC - from.temperatureC) * share;
  return [...before, { timeS, temperatureC }];
}
