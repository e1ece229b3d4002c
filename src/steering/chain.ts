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
  /** given in the other unit, and converted */
  readonly converted: boolean;
  /** what it counts in the chain */
  readonly weight: number;
  /** by how much more the next may lie from it than a reading, °C */
  readonly withinC?: number;
}

/** How far back a link looks for the one before it, in readings. */
const LOOK_BACK = 50;

/**
 * How far a reading may lie from an earlier one of the same bath, °C.
 *
 * @param converted - whether one of the two was converted from the other unit
 */
export function reach(
  known: Surroundings,
  from: Pick<Link, "timeS" | "celsius">,
  toS: number,
  converted: boolean,
): number {
  return farthestDrift(known, from.celsius, toS - from.timeS, converted) + readingReach(known);
}

/**
 * The longest chain of links in the order of time, by dynamic programming over the last 50. A tie leaves the
 * earlier chain. So a wrong first reading falls out by itself once two others agree. A converted reading that
 * both its neighbours contradict is dropped.
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
      const converted = link.converted || earlier.converted;
      const agrees =
        link.changed ||
        Math.abs(link.celsius - earlier.celsius) <=
          reach(known, earlier, link.timeS, converted) + (earlier.withinC ?? 0);
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
  return withoutContradicted(chain.reverse(), links, readingReach(known));
}

/**
 * Drops each converted reading that lies outside both neighbours that were given in °C: between them a bath
 * that was not changed is as warm as one of the two, or between them.
 *
 * @param chain - the places of its links, in the order of time
 * @param apartC - by how much two readings of one bath can differ, °C
 */
function withoutContradicted(
  chain: readonly number[],
  links: readonly Link[],
  apartC: number,
): readonly number[] {
  const after: (number | undefined)[] = [];
  let near: number | undefined;
  for (let i = chain.length - 1; i >= 0; i -= 1) {
    const { celsius, converted, changed } = links[chain[i] as number] as Link;
    after[i] = near;
    if (!converted) near = celsius;
    if (changed) near = undefined;
  }
  near = undefined;
  return chain.filter((place, i) => {
    const { celsius, converted, changed } = links[place] as Link;
    if (changed) near = undefined;
    if (!converted) {
      near = celsius;
      return true;
    }
    const next = after[i];
    if (near === undefined || next === undefined) return true;
    return celsius >= Math.min(near, next) - apartC && celsius <= Math.max(near, next) + apartC;
  });
}
