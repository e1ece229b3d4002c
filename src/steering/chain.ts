/*
 * Which readings agree: the longest chain of readings, each within reach of the one before.
 */
import { farthestDrift, readingReach, type Surroundings } from "./surroundings.js";

/** A reading that has a meaning. */
export interface Link {
  readonly timeS: number;
  readonly celsius: number;
  /** the bath was altered just before */
  readonly changed: boolean;
  /** what it counts in the chain */
  readonly weight: number;
}

/** How far back a link looks for the one before it, in readings. */
const LOOK_BACK = 50;

/** How far a reading may lie from an earlier one of the same bath, °C. */
export function reach(known: Surroundings, from: Pick<Link, "timeS" | "celsius">, toS: number): number {
  return farthestDrift(known, from.celsius, toS - from.timeS) + readingReach(known);
}

/**
 * The longest chain of links in the order of time, by dynamic programming over the last 50. A tie leaves the
 * earlier chain. So a wrong first reading falls out by itself once two others agree.
 */
export function longestChain(links: readonly Link[], known: Surroundings): readonly number[] {
  const best: number[] = [];
  const before: number[] = [];
  let longest = 0;
  let last = -1;
  for (let i = 0; i < links.length; i += 1) {
    const link = links[i] as Link;
    let most = 0;
    let from = -1;
    for (let j = i - 1; j >= Math.max(0, i - LOOK_BACK) && most < longest; j -= 1) {
      const earlier = links[j] as Link;
      const agrees =
        link.changed || Math.abs(link.celsius - earlier.celsius) <= reach(known, earlier, link.timeS);
      if (agrees && (best[j] as number) > most) {
        most = best[j] as number;
        from = j;
      }
    }
    best.push(most + link.weight);
    before.push(from);
    if ((best[i] as number) > longest) {
      longest = best[i] as number;
      last = i;
    }
  }
  const chain: number[] = [];
  for (let i = last; i >= 0; i = before[i] as number) chain.push(i);
  return chain.reverse();
}
