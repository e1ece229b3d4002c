/*
 * Push and pull as a cause: stops of exposure below the film's speed, from a known time at its speed.
 */
import type { Caution } from "../core/caution.js";
import type { Cause, Effect } from "../core/cause.js";
import { makeCaution } from "../core/cautionTexts.js";
import { taughtBetween } from "../core/departures.js";
import { orWrongWay } from "../core/orWrongWay.js";
import { pushCautions } from "./pushCautions.js";
import {
  checkedPushLaw,
  checkedStops,
  DEPARTURE_LOG_SD,
  genericPushLaw,
  GIVEN_STOP_SD,
  type ReadyPushLaw,
} from "./law.js";
import { pushSentences } from "./text.js";

/** Push as a cause. Its parameter is ln of the factor of the first stop. */
export const pushCause: Cause<ReadyPushLaw, number, "push"> = {
  name: "push",
  field: "pushStops",
  law: "push",
  lawFields: ["perStop", "growth", "sdPerStop", "departures"],
  generic: genericPushLaw,
  start: 0,
  relative: true,
  read: checkedStops,
  check: checkedPushLaw,
  effect: pushEffect,
  cautions: (law, from, to, effect) =>
    orWrongWay([...pushCautions(to), ...untaught(law, to)], "push", from - to, effect),
};

/** Where runs taught pushes, but none as far as this. */
function untaught({ departures = [] }: ReadyPushLaw, actual: number): readonly Caution[] {
  const [first, last] = [departures[0], departures.at(-1)];
  if (first === undefined || last === undefined || taughtBetween(departures, actual)) return [];
  const limit = actual > last.at ? last.at : first.at;
  return [makeCaution(pushSentences, "push-untaught", "note", { quantity: "stops", limit, actual })];
}

/** The effect of going from one push to another: each stop pushed has a larger step than the one before. */
export function pushEffect(law: ReadyPushLaw, from: number, to: number): Effect {
  const { perStop, growth = 0, sdPerStop: sd = GIVEN_STOP_SD, walk } = law;
  const bend = (stops: number): number => (stops > 0 ? growth * stops * stops : 0);
  const slope = to - from;
  const log = Math.log(perStop) * slope + bend(to) - bend(from);
  if (walk === undefined) return { log, slope, sd, beside: DEPARTURE_LOG_SD * Math.sqrt(Math.abs(slope)) };
  const departed = walk(from, to);
  return { ...departed, log: log + departed.log, slope, sd };
}
