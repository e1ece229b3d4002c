/*
 * Module: process. The fixing bath: clearing time, multiple and length at its own temperature.
 */
import { inRange, positive } from "../core/guards.js";
import { COLD_FIX, handbookFixers, handbookFixTimes } from "../handbook/process.js";
import { bathTemperatureC, sourcesOf } from "./baths.js";
import { clearingTimeAt } from "./clearingTimeAt.js";
import type { BathContext } from "./context.js";
import { keptMoving } from "./developmentCues.js";
import { fixingTime } from "./fixingTime.js";
import type { CueDraft, Draft } from "./layOut.js";
import { toUpper } from "./rounding.js";
import type { FixSetting } from "./types.js";

/** What is known of a fixing bath at its own temperature. */
interface Fixing {
  readonly clearingS: number;
  /** clearing time when it was fresh; 0 when it is not known */
  readonly freshS: number;
  readonly times: number;
  readonly durationS: number;
  readonly sources: readonly string[];
}

/** Clearing time, multiple and length of a fixing bath at its own temperature, unrounded. */
export function fixing(context: BathContext, fix: FixSetting): Fixing {
  const where = `${context.where}/fix`;
  const { kind = "rapid", clearingAtC, freshClearingS } = fix;
  const fixer = handbookFixers[kind];
  const toC = bathTemperatureC(context, fix);
  const split = handbookFixTimes[context.iodideRich ? "iodideRich" : "conventional"];
  const times = inRange(`${where}/times`, fix.times === undefined ? split.times : fix.times, 1, 10);
  const measuredAtC =
    clearingAtC === undefined ? toC : inRange(`${where}/clearingAtC`, clearingAtC, 0, 40, "temperatureC");
  const freshS =
    freshClearingS === undefined ? 0 : positive(`${where}/freshClearingS`, freshClearingS, 7200, "timeS");
  const clearing = (clearingS: number, fromC: number): number => clearingTimeAt({ clearingS, fromC, toC });
  const handbookS = clearing(fixer.clearingS, 20);
  // The handbook's figure is for 20 °C, and no bath clears sooner than it did when fresh; a measured one is
  // for this bath unless it says otherwise.
  const assumed = fix.clearingS === undefined;
  const clearingS =
    fix.clearingS === undefined
      ? Math.max(freshS, handbookS)
      : clearing(positive(`${where}/clearingS`, fix.clearingS, 7200, "timeS"), measuredAtC);
  // Next to nothing, carried to a warmer bath, is nothing.
  positive(`${where}/clearingS`, clearingS, 1e6, "timeS");
  const byHandbook = assumed && freshS < handbookS;
  const carried = assumed ? byHandbook && toC < COLD_FIX.belowC : measuredAtC !== toC;
  return {
    clearingS,
    freshS,
    times,
    durationS: fix.durationS ?? fixingTime({ clearingS, times }),
    sources: [
      ...(fix.times === undefined ? sourcesOf(fix, split.sources) : []),
      ...(byHandbook ? fixer.sources : []),
      ...(carried ? COLD_FIX.sources : []),
    ],
  };
}

/** The step of the fixing bath. */
export function fixDraft(context: BathContext, fix: FixSetting): Draft {
  const { handling, sensitization } = context;
  const { durationS: lengthS, sources, clearingS } = fixing(context, fix);
  const durationS = toUpper(lengthS, handling.stepS);
  const checkS = toUpper(clearingS, handling.stepS);
  const cues: CueDraft[] = [{ atS: 0, do: "pour-in" }, ...keptMoving(handling, durationS)];
  if (checkS < durationS) {
    cues.push({ atS: checkS, do: "check-clear", data: { clearingS } });
    if (sensitization !== undefined) cues.push({ atS: checkS, do: "light-on", data: { sensitization } });
  }
  // Stable: what begins at one moment stays in the order in which it was named.
  cues.sort((a, b) => a.atS - b.atS);
  return { name: "fix", durationS, temperatureC: bathTemperatureC(context, fix), cues, sources };
}
