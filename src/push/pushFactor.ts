import { inRange } from "../core/guards.js";

/** ln of the time factor of the first stop, and how much each further stop pushed adds to its own step. */
const FIRST_STOP = 0.2;
const GROWTH = 0.022;

/** Spread between films and developers, in ln(time) for each stop. */
const LOG_SD_PER_STOP = 0.09;

/**
 * The factor on development time for a film exposed at more or less than its speed.
 *
 * @param stops - how many stops are pushed, −3 to 5; below 0 is pulled
 * @param perStop - one constant factor for every stop, 1 to 3, where a table of your own says so; published
 * practice when left out
 * @returns the time factor, 1 for 0 stops
 * @throws TypeError or RangeError when an argument is of the wrong kind or out of range
 *
 * @remarks ln(factor) = 0.20·s + 0.022·s² for a push of s stops, 0.20·s for a pull: 1.25, 1.63 and 2.22 for
 * one, two and three stops, each step larger than the one before; 0.82 and 0.67 for one and two stops of
 * pull. The middle of the maker's table of one concentrate on seven films (ILFORD ILFOTEC DD-X 1+4,
 * transcribed 2022), whose first step runs from 1.11 to 1.40. Spread: {@link pushLogSd}.
 *
 * @example
 * ```ts
 * pushFactor(2) // => 1.63
 * ```
 */
export function pushFactor(stops: number, perStop?: number): number {
  const s = checkedStops("pushFactor/stops", stops);
  if (perStop !== undefined) {
    // The lower end keeps a factor for pulling from being taken for one for pushing.
    return inRange("pushFactor/perStop", perStop, 1, 3) ** s;
  }
  return Math.exp(FIRST_STOP * s + (s > 0 ? GROWTH * s * s : 0));
}

/**
 * The standard deviation of ln(pushFactor) when it rests on published practice.
 *
 * @param stops - how many stops are pushed or pulled, −3 to 5
 * @returns the standard deviation in ln(time): 0.09 for each stop
 * @throws TypeError or RangeError when `stops` is of the wrong kind or out of range
 *
 * @remarks One stop over seven films in one developer scatters by 0.085; two stops over several developers
 * run from 1.41 to 2.15.
 *
 * @example
 * ```ts
 * pushLogSd(2) // => 0.18
 * ```
 */
export function pushLogSd(stops: number): number {
  return LOG_SD_PER_STOP * Math.abs(checkedStops("pushLogSd/stops", stops));
}

/** Returns a number of stops from −3 to 5; throws otherwise. */
export function checkedStops(where: string, stops: unknown): number {
  return inRange(where, stops, -3, 5, "stops");
}
