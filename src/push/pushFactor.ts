import { factorOf } from "../core/cause.js";
import { pushEffect } from "./cause.js";
import { checkedPushLaw, checkedStops, genericPushLaw, type PushLaw } from "./law.js";

/**
 * The factor on development time for a film exposed at more or less than its speed.
 *
 * @param stops - how many stops are pushed, −3 to 5; below 0 is pulled
 * @param law - the law of push; published practice when left out
 * @returns the time factor, 1 for 0 stops
 * @throws TypeError or RangeError when an argument is of the wrong kind or out of range
 *
 * @remarks perStop^s · e^(growth·s²) for a push, perStop^s for a pull. Published practice gives 1.25, 1.63
 * and 2.22 for one, two and three stops, each step larger than the one before; 0.82 and 0.67 for one and two
 * stops of pull. See {@link genericPushLaw}.
 *
 * @example
 * ```ts
 * pushFactor(2) // => 1.63
 * pushFactor(2, { perStop: 1.25 }) // => 1.5625
 * ```
 */
export function pushFactor(stops: number, law: PushLaw = genericPushLaw): number {
  const ready = checkedPushLaw("pushFactor/law", law);
  return factorOf(pushEffect(ready, 0, checkedStops("pushFactor/stops", stops)));
}
