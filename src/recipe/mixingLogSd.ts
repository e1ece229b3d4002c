import type { DeveloperBrew } from "../brew/brew.js";
import { BATCH } from "../compensate/marks.js";
import { Z90 } from "../core/estimate.js";

/** Time goes with about the third root of an amount: `brewStrength` gives coffee, soda and vitamin C so. */
const ROOT = 3;

/** Half of a spoon's variance is the same in each mixing: the spoon and the hand (assumed). */
const ANEW = 0.5;

/**
 * How far one mixing of a brew lies from the usual in ln(time): as bottles of one developer do, and more
 * where amounts are known as ranges, as spoons give them.
 */
export function mixingLogSd(brew: DeveloperBrew): number {
  // A recipe that is compensated may never have been checked: what is no range says nothing here.
  const { ingredients } = (brew as DeveloperBrew | null) ?? {};
  const parts: readonly unknown[] = Array.isArray(ingredients) ? ingredients : [];
  let variance = 0;
  for (const part of parts) {
    const { lowG, highG } = (part ?? {}) as Readonly<Record<string, unknown>>;
    if (typeof lowG !== "number" || typeof highG !== "number") continue;
    const sd = Math.log(highG / lowG) / (2 * Z90 * ROOT);
    if (sd > 0 && sd < 1) variance += ANEW * sd * sd;
  }
  return Math.max(BATCH.logSd, Math.sqrt(variance));
}
