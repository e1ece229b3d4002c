import { inRange } from "../core/guards.js";

/**
 * A number of spoons as a person counts them: quarters below ten, whole ones from ten on.
 *
 * @param spoons - how many spoons, 0 to 1e9
 * @returns the number to be said; the figure that was given stays the one to reckon with
 * @throws TypeError when it is not a number
 * @throws RangeError when it is out of range
 *
 * @remarks Common practice: nobody counts thirty spoons to a quarter. Half a spoon of thirty is 2 %, far
 * inside what a spoon holds more or less.
 *
 * @example
 * ```ts
 * roundSpoons(7.3) // => 7.25
 * roundSpoons(29.75) // => 30
 * ```
 */
export function roundSpoons(spoons: number): number {
  return countedSpoons(inRange("roundSpoons/spoons", spoons, 0, 1e9));
}

/** The same for a sentence, which throws nothing. */
export function countedSpoons(spoons: number): number {
  const quarters = Math.round(4 * spoons) / 4;
  // Less than an eighth is said as it is: none would be wrong.
  if (quarters === 0) return spoons;
  return quarters < 10 ? quarters : Math.round(spoons);
}
