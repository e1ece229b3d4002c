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
import { fixing, type Fixing } from "./fixing.js";
import type { FixSetting } from "./types.js";

/** The cautions about a fixing bath; `now` is the area of today's material, cm² per litre of the bath. */
export function fixCautions(context: BathContext, fix: FixSetting, now: number): readonly Caution[] {
  const found = fixing(context, fix);
  const { clearingS, times, durationS, leastS, leastTimes, held } = found;
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
  cautions.push(...spentCautions(found, fix));
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

/**
 * A bath that clears twice as slowly as fresh. Where it was not measured fresh, the handbook's time is no
 * more than a reason to measure it.
 */
function spentCautions({ clearingS, freshS, usualFreshS }: Fixing, fix: FixSetting): readonly Caution[] {
  if (fix.clearingS === undefined) return [];
  const measured = freshS > 0;
  // Both at this bath's temperature, or both at that of the measurement.
  const limit = SPENT_RATIO.ratio * (measured ? freshS : usualFreshS);
  const actual = measured ? clearingS : fix.clearingS;
  if (isPast(limit, actual)) return [];
  const path = "/baths/fix/clearingS";
  const data = measured ? {} : ({ assumed: true } as const);
  return [
    caution("fixer-spent", measured ? "stop" : "warn", { path, quantity: "timeS", limit, actual, data }),
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
