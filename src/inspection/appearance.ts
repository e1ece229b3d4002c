/*
 * Module: inspection. The image as the clock: its time of appearance times a factor is the whole time of
 * development (A. Watkins).
 */
import { inRange, positive } from "../core/guards.js";

/** Returns a time of appearance above 0 and at most 1e5 s; throws otherwise. */
export function checkedAppearance(where: string, appearanceS: unknown): number {
  return positive(where, appearanceS, 1e5, "timeS", "/appearanceS");
}

/** Returns a factor from 1 to 1000; throws otherwise. */
export function checkedFactor(where: string, factor: unknown, field = "/factor"): number {
  return inRange(where, factor, 1, 1000, undefined, field);
}
