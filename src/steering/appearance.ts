import type { TimeEstimate } from "../core/estimate.js";
import { developUntil } from "../drift/developUntil.js";
import { equivalentTime } from "../drift/equivalentTime.js";
import type { TemperatureLog } from "../drift/log.js";
import { appearanceEstimate, type AppearanceSeen } from "../inspection/appearanceEstimate.js";
import type { TemperatureLaw } from "../temperature/law.js";
import { upTo } from "./equivalent.js";
import { inNameOf } from "../core/inNameOf.js";

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
  const steady = inNameOf("steer", () => appearanceEstimate(seen), inAppearance);
  const spread = Math.exp(Math.log(steady.highS / steady.lowS) / 2);
  const work = equivalentTime(upTo(path, seen.appearanceS), referenceC, law) * seen.factor;
  const clock = (equivalentS: number): number =>
    inNameOf(
      "steer",
      () => developUntil({ equivalentS, referenceC, law, temperatureAt: path }),
      () => "/appearance",
    );
  return { timeS: clock(work), lowS: clock(work / spread), highS: clock(work * spread) };
}

/** The place of a field of what was seen, in what steering was given. */
const inAppearance = (path: string): string => `/appearance${path.replace(/^\/seen/, "")}`;
