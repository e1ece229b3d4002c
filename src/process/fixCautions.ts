/*
 * Module: process. What is unwise about a fixing bath.
 */
import { compensateSentences } from "../compensate/text.js";
import { isPast, type Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import { inRange, positive } from "../core/guards.js";
import {
  handbookFixers,
  IODIDE_RICH_CAPACITY,
  SHORTEST_CLEARING_S,
  SPENT_RATIO,
} from "../handbook/process.js";
import { caution } from "./caution.js";
import type { BathContext } from "./context.js";
import { fixing } from "./fixing.js";
import type { FixSetting } from "./types.js";

/** The cautions about a fixing bath; `now` is the area of today's material, cm² per litre of the bath. */
export function fixCautions(context: BathContext, fix: FixSetting, now: number): readonly Caution[] {
  const { clearingS, freshS, times, durationS, leastS, leastTimes, held } = fixing(context, fix);
  const { ceilingS } = handbookFixers[fix.kind ?? "rapid"];
  const path = "/baths/fix";
  const quantity = "timeS";
  const cautions: Caution[] = [];
  const planned = times === undefined ? {} : { times };
  cautions.push(...maybeMinutes(fix, "clearingS"), ...maybeMinutes(fix, "freshClearingS"));
  if (fix.durationS === undefined && times !== undefined) {
    if (fix.clearingS === undefined)
      cautions.push(caution("clearing-assumed", "note", { path, quantity, actual: clearingS }));
    // Of what is longer than either number of clearing times no source disagrees.
    if (fix.times === undefined && held !== true)
      cautions.push(caution("fixing-split", "note", { path, data: { times } }));
  }
  if (isPast(leastS, durationS))
    cautions.push(
      caution("short-fix", "warn", {
        path: `${path}${fix.durationS === undefined ? "/times" : "/durationS"}`,
        quantity,
        limit: leastS,
        actual: durationS,
        data: leastTimes === undefined ? {} : { times: leastTimes },
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

/** A clearing time that was perhaps meant in minutes. */
function maybeMinutes(fix: FixSetting, field: "clearingS" | "freshClearingS"): readonly Caution[] {
  const { [field]: actual = Infinity } = fix;
  if (!isPast(SHORTEST_CLEARING_S, actual)) return [];
  return [
    makeCaution(compensateSentences, "maybe-minutes", "warn", {
      path: `/baths/fix/${field}`,
      quantity: "timeS",
      limit: SHORTEST_CLEARING_S,
      actual,
      data: { of: "clearing" },
    }),
  ];
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
