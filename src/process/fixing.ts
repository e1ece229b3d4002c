/*
 * Module: process. The fixing bath: clearing time, multiple and length at its own temperature.
 */
import { isPast } from "../core/caution.js";
import { inRange, positive } from "../core/guards.js";
import {
  COLD_FIX,
  handbookFixers,
  handbookFixTimes,
  handbookHabits,
  handbookLeastFix,
  handbookPaperFix,
  SLOW_CLEARING,
} from "../handbook/process.js";
import { bathTemperatureC, sourcesOf } from "./baths.js";
import { clearingTimeAt } from "./clearingTimeAt.js";
import type { BathContext } from "./context.js";
import { keptMoving, pouredBath } from "./developmentCues.js";
import { fixingTime } from "./fixingTime.js";
import type { CueDraft, Draft } from "./layOut.js";
import { toUpper, upByLength } from "./rounding.js";
import { bySafelight } from "./text.js";
import type { FixSetting } from "./types.js";

/** What is known of a fixing bath at its own temperature. */
export interface Fixing {
  readonly clearingS: number;
  /** clearing time when it was fresh; 0 when it is not known */
  readonly freshS: number;
  /** that of the handbook, at the temperature at which the clearing time was measured */
  readonly usualFreshS: number;
  /** clearing times that are planned; none of paper, which nobody sees clear */
  readonly times?: number;
  readonly durationS: number;
  /** a shorter one leaves silver in the material */
  readonly leastS: number;
  /** `leastS` in clearing times; none where it is the least for the material */
  readonly leastTimes?: number;
  /** true where the clearing times that are planned are shorter than the least for the material */
  readonly held?: boolean;
  readonly sources: readonly string[];
}

/** Fewer clearing times than this are too few for any material. */
const LEAST_TIMES = 2;

/** Clearing time, multiple and length of a fixing bath at its own temperature, unrounded. */
export function fixing(context: BathContext, fix: FixSetting): Fixing {
  const where = `${context.where}/fix`;
  const { kind = "rapid", clearingAtC, freshClearingS } = fix;
  const fixer = handbookFixers[kind];
  const toC = bathTemperatureC(context, fix);
  const assumed = fix.clearingS === undefined;
  const plate = context.material === "plate";
  const split =
    handbookFixTimes[context.iodideRich ? "iodideRich" : plate || assumed ? "careful" : "conventional"];
  const times = inRange(`${where}/times`, fix.times === undefined ? split.times : fix.times, 1, 10);
  // Film may do with two where three are planned for want of a measurement.
  const leastTimes = plate || context.iodideRich ? times : (fix.times ?? handbookFixTimes.conventional.times);
  const measuredAtC =
    clearingAtC === undefined ? toC : inRange(`${where}/clearingAtC`, clearingAtC, 0, 40, "temperatureC");
  const freshS =
    freshClearingS === undefined ? 0 : positive(`${where}/freshClearingS`, freshClearingS, 7200, "timeS");
  const clearing = (clearingS: number, fromC: number): number => clearingTimeAt({ clearingS, fromC, toC });
  const handbookS = clearing(fixer.clearingS, 20);
  // Of paper it is that of a scrap of film.
  const slow = plate || (context.iodideRich && context.material === "film") ? SLOW_CLEARING.times : 1;
  const usualFreshS = clearingTimeAt({ clearingS: slow * fixer.filmS, fromC: 20, toC: measuredAtC });
  // The handbook's figure is for 20 °C, and no bath clears sooner than it did when fresh; a measured one is
  // for this bath unless it says otherwise.
  const clearingS =
    fix.clearingS === undefined
      ? Math.max(freshS, handbookS)
      : clearing(positive(`${where}/clearingS`, fix.clearingS, 7200, "timeS"), measuredAtC);
  // Next to nothing, carried to a warmer bath, is nothing.
  positive(`${where}/clearingS`, clearingS, 1e6, "timeS");
  const cold = toC < COLD_FIX.belowC;
  if (context.material === "paper") {
    const paper = handbookPaperFix[kind];
    return {
      clearingS,
      freshS,
      usualFreshS,
      durationS: fix.durationS ?? clearing(paper.durationS, 20),
      leastS: clearing(paper.leastS, 20),
      sources: sourcesOf(fix, cold ? [...paper.sources, ...COLD_FIX.sources] : paper.sources),
    };
  }
  const byHandbook = assumed && freshS < handbookS;
  const carried = assumed ? byHandbook && cold : measuredAtC !== toC;
  const byTimesS = fixingTime({ clearingS, times });
  const least = handbookLeastFix[kind];
  const held = isPast(least.leastS, byTimesS);
  const due = Math.max(LEAST_TIMES, leastTimes);
  return {
    clearingS,
    freshS,
    usualFreshS,
    times,
    durationS: fix.durationS ?? Math.max(byTimesS, least.leastS),
    leastS: Math.max(due * clearingS, least.leastS),
    ...(isPast(least.leastS, due * clearingS) ? undefined : { leastTimes: due }),
    held,
    sources: [
      ...(held
        ? sourcesOf(fix, least.sources)
        : fix.times === undefined
          ? sourcesOf(fix, split.sources)
          : []),
      ...(byHandbook ? fixer.sources : []),
      ...(carried ? COLD_FIX.sources : []),
    ],
  };
}

/** The step of the fixing bath. */
export function fixDraft(context: BathContext, fix: FixSetting): Draft {
  const { handling } = context;
  const found = fixing(context, fix);
  const { stepS } = handling;
  const durationS =
    fix.durationS === undefined ? upByLength(found.durationS, stepS) : toUpper(fix.durationS, stepS);
  const bath = pouredBath(handling, durationS, (pourAtS) => keptMoving(handling, pourAtS));
  const looks = lookCues(context, found, durationS);
  const cues = [...bath.slice(0, -1), ...whenStill(looks, bath, durationS), ...bath.slice(-1)];
  return {
    name: "fix",
    durationS,
    temperatureC: bathTemperatureC(context, fix),
    // Stable: what begins at one moment stays in the order in which it was named.
    cues: cues.sort((a, b) => a.atS - b.atS),
    sources: found.sources,
  };
}

/** The look when the bath is next still: nobody inverts an open tank. Where it never is, it stays. */
function whenStill(
  looks: readonly CueDraft[],
  bath: readonly CueDraft[],
  lengthS: number,
): readonly CueDraft[] {
  return looks.map((look) => {
    const moved = bath.find(
      ({ do: action, atS, durationS = 0 }) =>
        action === "agitate" && atS <= look.atS && look.atS < atS + durationS,
    );
    const stillS = moved === undefined ? look.atS : moved.atS + (moved.durationS as number);
    return stillS < lengthS ? { ...look, atS: stillS } : look;
  });
}

/**
 * White light, and the look for clearing, once it is clear and half of the fixing is over (common practice).
 * By a safelight the look comes first; where it is dark, the light is what one looks by. What lies is opened
 * when it is drained, in the last second of the step: fixer would run out.
 */
function lookCues(
  { handling, sensitization, material }: BathContext,
  { clearingS, durationS: plannedS }: Fixing,
  durationS: number,
): readonly CueDraft[] {
  const { vessel, drainS, stepS } = handling;
  const paper = material === "paper";
  const clearS = upByLength(Math.max(paper ? 0 : clearingS, plannedS / 2), stepS);
  const { lies } = handbookHabits[vessel];
  if (clearS >= durationS - (lies ? 0 : drainS)) return [];
  const atS = lies ? Math.max(durationS - drainS, durationS - 1) : clearS;
  const seen = sensitization === undefined ? undefined : { sensitization };
  const lit: CueDraft = { atS, do: "light-on", ...(seen && { data: seen }) };
  if (paper) return [lit];
  const look: CueDraft = { atS, do: "check-clear", data: { clearingS, ...seen } };
  return bySafelight(vessel, sensitization) ? [look, lit] : [lit, look];
}
