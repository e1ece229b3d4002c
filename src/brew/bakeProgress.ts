import type { Caution } from "../core/caution.js";
import { inRange, plainObject, positive } from "../core/guards.js";
import { MOST } from "./brew.js";
import { CARBONATE_PER_BICARBONATE } from "./bakeYield.js";
import { say } from "./text.js";

/** What {@link bakeProgress} returns: the fraction converted, 0 to 1, and what is odd about the weights. */
export interface BakeProgress {
  /** how much has turned, 0 to 1 */
  readonly converted: number;
  /** what is unwise about the weights */
  readonly cautions: readonly Caution[];
}

/** Weighing and a kitchen's moisture: a point and a half of a hundred is no news. */
const SLACK = 0.015;

/**
 * How far baking soda has turned into washing soda, from the weight before and after.
 *
 * @param input - `beforeG`, baking soda put in, above 0 to 100000 g; `afterG`, the same tray's content now, 0
 * to 100000 g
 * @returns the fraction converted, 0 to 1, with cautions: `"more-than-complete"` when more was lost than
 * baking can take (it started wet, or was spilt), `"gained-weight"` when it grew heavier, `"not-complete"`
 * while it is still a mixture
 * @throws TypeError when a weight is not a number
 * @throws RangeError when a weight is out of range
 *
 * @remarks x = (before − after) / (0.3692 before). Complete is 36 to 37 % lost and two weighings 15 min apart
 * that agree (common practice), so up to 1.5 % more than all counts as all. A fraction further past an end is
 * reported at that end with its caution. A wet start makes x too high.
 *
 * @example
 * ```ts
 * bakeProgress({ beforeG: 200, afterG: 150 }).converted // => 0.677
 * ```
 */
export function bakeProgress(input: { readonly beforeG: number; readonly afterG: number }): BakeProgress {
  const given = plainObject("bakeProgress/input", input);
  const beforeG = positive("bakeProgress/beforeG", given["beforeG"], MOST, "massG");
  const afterG = inRange("bakeProgress/afterG", given["afterG"], 0, MOST, "massG");
  const raw = (1 - afterG / beforeG) / (1 - CARBONATE_PER_BICARBONATE);
  const complete = beforeG * CARBONATE_PER_BICARBONATE;
  const odd = (limit: number) => ({ path: "/afterG", quantity: "massG", limit, actual: afterG }) as const;
  const cautions = [say("baking-care", "warn")];
  if (raw > 1 + SLACK) cautions.push(say("more-than-complete", "warn", odd(complete)));
  else if (raw < 0) cautions.push(say("gained-weight", "warn", odd(beforeG)));
  else if (raw < 1 - SLACK) cautions.push(say("not-complete", "note", odd(complete)));
  return { converted: Math.min(1, Math.max(0, raw)), cautions };
}
