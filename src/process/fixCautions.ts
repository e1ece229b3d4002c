/*
 * Module: process. What is unwise about a fixing bath.
 */
import { isPast, type Caution } from "../core/caution.js";
import { inRange, positive } from "../core/guards.js";
import { handbookFixers, IODIDE_RICH_CAPACITY, SPENT_RATIO } from "../handbook/process.js";
import { caution } from "./caution.js";
import type { BathContext } from "./context.js";
import { fixing } from "./fixing.js";
import type { FixSetting } from "./types.js";

/** The cautions about a fixing bath; `now` is the area of today's material, cm² per litre of the bath. */
export function fixCautions(context: BathContext, fix: FixSetting, now: number): readonly Caution[] {
  const { clearingS, freshS, times, durationS, leastS } = fixing(context, fix);
  const { ceilingS } = handbookFixers[fix.kind ?? "rapid"];
  const path = "/baths/fix";
  const quantity = "timeS";
  const cautions: Caution[] = [];
  const planned = times === undefined ? {} : { times };
  if (fix.durationS === undefined && times !== undefined) {
    if (fix.clearingS === undefined)
      cautions.push(caution("clearing-assumed", "note", { path, quantity, actual: clearingS }));
    if (fix.times === undefined) cautions.push(caution("fixing-split", "note", { path, data: { times } }));
  }
  if (isPast(leastS, durationS))
    cautions.push(
      caution("short-fix", "warn", {
        path: `${path}${fix.durationS === undefined ? "/times" : "/durationS"}`,
        quantity,
        limit: leastS,
        actual: durationS,
        data: times === undefined ? {} : { times: leastS / clearingS },
      }),
    );
  if (ceilingS !== undefined && isPast(durationS, ceilingS))
    cautions.push(
      caution("long-fix", "warn", { path, quantity, limit: ceilingS, actual: durationS, data: planned }),
    );
  // Both at this bath's temperature.
  const spentS = SPENT_RATIO.ratio * freshS;
  if (spentS > 0 && fix.clearingS !== undefined && !isPast(spentS, clearingS))
    cautions.push(
      caution("fixer-spent", "stop", {
        path: `${path}/clearingS`,
        quantity,
        limit: spentS,
        actual: clearingS,
      }),
    );
  return [...cautions, ...capacityCautions(context, fix, now)];
}

/** Past its capacity before this material, or with it. */
function capacityCautions(context: BathContext, fix: FixSetting, now: number): readonly Caution[] {
  const where = `${context.where}/fix`;
  const { kind = "rapid", usedCm2PerL = 0, capacityCm2PerL: own } = fix;
  const used = inRange(`${where}/usedCm2PerL`, usedCm2PerL, 0, 1e6, "cm2PerL");
  const share = context.iodideRich ? IODIDE_RICH_CAPACITY.share : 1;
  const limit =
    own === undefined
      ? handbookFixers[kind].capacityCm2PerL * share
      : positive(`${where}/capacityCm2PerL`, own, 1e6, "cm2PerL");
  const path = "/baths/fix/usedCm2PerL";
  const quantity = "cm2PerL";
  if (isPast(used, limit))
    return [caution("fixer-past-capacity", "stop", { path, quantity, limit, actual: used })];
  if (isPast(used + now, limit))
    return [caution("fixer-capacity-reached", "warn", { path, quantity, limit, actual: used + now })];
  return [];
}
