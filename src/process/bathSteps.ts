/*
 * Room: process. Each bath around the developer as a step: how long, at which temperature, and what to do.
 */
import { inRange, knownEntry, plainObject, positive, wrongKind } from "../core/guards.js";
import {
  COLD_WASH,
  handbookBathS,
  handbookFixers,
  handbookFixTimes,
  handbookWash,
  WASH_CHANGE_S,
  WASH_CHANGES,
  type WashMethod,
} from "../handbook/process.js";
import { clearingTimeAt } from "./clearingTimeAt.js";
import { fixingTime } from "./fixingTime.js";
import type { Draft } from "./layOut.js";
import type {
  BathSetting,
  Cue,
  FixSetting,
  ProcessBaths,
  StepName,
  StopSetting,
  WashSetting,
} from "./types.js";

/** The baths of a recipe that does not name any. */
export const USUAL_BATHS: ProcessBaths = { stop: {}, fix: {}, wash: {}, wettingAgent: {} };

const BATHS: Readonly<Record<keyof ProcessBaths, true>> = {
  preSoak: true,
  stop: true,
  fix: true,
  clearingAid: true,
  wash: true,
  wettingAgent: true,
};

/** What the steps of all baths need to know. */
export interface BathContext {
  /** function and field, for the error texts */
  readonly where: string;
  readonly temperatureC: number;
  readonly modernFilm: boolean;
}

/** Checks what the steps of all baths share; `where` is the function and the start of a field. */
export function bathContext(where: string, temperatureC: number, modernFilm: unknown): BathContext {
  if (modernFilm !== undefined && typeof modernFilm !== "boolean")
    wrongKind(`${where}/modernFilm`, "true or false", modernFilm);
  return { where: `${where}/baths`, temperatureC, modernFilm: modernFilm === true };
}

/** What a length rests on: nothing in print, where the input states it. */
const sourcesOf = (setting: BathSetting, sources: readonly string[]): readonly string[] =>
  setting.durationS === undefined ? sources : [];

const cue = (atS: number, text: string): Cue => ({ atS, text });

function lengthOr(where: string, setting: BathSetting, usualS: number): number {
  return setting.durationS === undefined
    ? usualS
    : positive(`${where}/durationS`, setting.durationS, 86400, "timeS");
}

/** The temperature of a bath: its own, or the developer's. */
export function bathTemperatureC(
  context: BathContext,
  name: keyof ProcessBaths,
  setting: BathSetting,
): number {
  const { temperatureC = context.temperatureC } = setting;
  return inRange(`${context.where}/${name}/temperatureC`, temperatureC, 0, 100, "temperatureC");
}

/** What is known of a fixing bath at its own temperature. */
interface Fixing {
  readonly clearingS: number;
  /** clearing time when it was fresh; 0 when it is not known */
  readonly freshS: number;
  readonly times: number;
  readonly durationS: number;
  readonly sources: readonly string[];
}

/** Clearing time, multiple and length of a fixing bath at its own temperature. */
export function fixing(context: BathContext, fix: FixSetting): Fixing {
  const where = `${context.where}/fix`;
  const { kind = "rapid", clearingAtC, freshClearingS } = fix;
  const fixer = knownEntry(`${where}/kind`, handbookFixers, kind);
  const toC = bathTemperatureC(context, "fix", fix);
  const split = handbookFixTimes[context.modernFilm ? "modern" : "conventional"];
  const times = inRange(`${where}/times`, fix.times === undefined ? split.times : fix.times, 1, 10);
  const measuredAtC =
    clearingAtC === undefined ? toC : inRange(`${where}/clearingAtC`, clearingAtC, 0, 40, "temperatureC");
  const freshS =
    freshClearingS === undefined ? 0 : positive(`${where}/freshClearingS`, freshClearingS, 7200, "timeS");
  const clearing = (clearingS: number, fromC: number): number => clearingTimeAt({ clearingS, fromC, toC });
  const handbookS = clearing(fixer.clearingS, 20);
  // The handbook's figure is for 20 °C, and no bath clears sooner than it did when fresh; a measured one is
  // for this bath unless it says otherwise.
  const clearingS =
    fix.clearingS === undefined
      ? Math.max(freshS, handbookS)
      : clearing(positive(`${where}/clearingS`, fix.clearingS, 7200, "timeS"), measuredAtC);
  return {
    clearingS,
    freshS,
    times,
    durationS: lengthOr(where, fix, fixingTime({ clearingS, times })),
    sources: [
      ...(fix.times === undefined ? sourcesOf(fix, split.sources) : []),
      ...(fix.clearingS === undefined && freshS < handbookS ? fixer.sources : []),
    ],
  };
}

/** How many times longer a wash takes in cold water. */
export function coldWashFactor(temperatureC: number): number {
  return 2 ** (Math.max(0, COLD_WASH.belowC - temperatureC) / COLD_WASH.doublingC);
}

function washDraft(context: BathContext, wash: WashSetting, afterAid: boolean): Draft {
  const where = `${context.where}/wash`;
  const temperatureC = bathTemperatureC(context, "wash", wash);
  const cold = coldWashFactor(temperatureC);
  const { method = "running" } = wash;
  const { durationS: plainS, afterAidS, sources } = knownEntry(`${where}/method`, handbookWash, method);
  const usualS = (afterAid ? afterAidS : plainS) * cold;
  const durationS = lengthOr(where, wash, usualS);
  // The other methods are changes of water, which are the handbook's in a wash of any length.
  const own = method === "running" ? sourcesOf(wash, sources) : sources;
  return {
    name: "wash",
    durationS,
    temperatureC,
    cues: washCues(method, durationS, durationS / plainS),
    sources: own,
  };
}

/** What is done in a wash; `stretch` is its length against that of the handbook. */
function washCues(method: WashMethod, durationS: number, stretch: number): readonly Cue[] {
  if (method === "running") return [cue(0, "Wash in running water.")];
  const cues: Cue[] = [];
  if (method === "soak") {
    for (let i = 0; i * WASH_CHANGE_S < durationS; i++)
      cues.push(cue(i * WASH_CHANGE_S, i > 0 ? "Change the water." : "Fill with fresh water and leave it."));
    return cues;
  }
  const { inversions, inversionS, pourS } = WASH_CHANGES;
  let atS = 0;
  for (const count of inversions) {
    cues.push(
      cue(
        atS,
        `Fill with fresh water, invert ${count} times, let it stand for the rest of the time, pour out.`,
      ),
    );
    atS += (count * inversionS + pourS) * stretch;
  }
  return cues;
}

/** A bath whose length is one figure of the handbook. */
function plainDraft(
  context: BathContext,
  key: "preSoak" | "clearingAid" | "wettingAgent",
  name: StepName,
  setting: BathSetting,
  text: string,
): Draft {
  const { durationS: usualS, sources } = handbookBathS[key];
  const durationS = lengthOr(`${context.where}/${key}`, setting, usualS);
  return {
    name,
    durationS,
    temperatureC: bathTemperatureC(context, key, setting),
    cues: [cue(0, text)],
    sources: sourcesOf(setting, sources),
  };
}

function stopDraft(context: BathContext, stop: StopSetting): Draft {
  const where = `${context.where}/stop`;
  const { kind = "acid" } = stop;
  const usual = knownEntry(
    `${where}/kind`,
    { acid: handbookBathS.acidStop, water: handbookBathS.waterStop },
    kind,
  );
  const text =
    kind === "water"
      ? "Rinse in changed water, moving without pause."
      : "Pour in the stop bath and move without pause.";
  return {
    name: "stop",
    durationS: lengthOr(where, stop, usual.durationS),
    temperatureC: bathTemperatureC(context, "stop", stop),
    cues: [cue(0, text)],
    sources: sourcesOf(stop, usual.sources),
  };
}

function fixDraft(context: BathContext, fix: FixSetting): Draft {
  const { durationS, sources, clearingS } = fixing(context, fix);
  const cues = [cue(0, "Pour in the fixing bath and move for the first 15 s, then at times.")];
  if (clearingS < durationS)
    cues.push(cue(clearingS, "It should be clear by now: if not, fix for as many more clearing times."));
  return { name: "fix", durationS, temperatureC: bathTemperatureC(context, "fix", fix), cues, sources };
}

/** The checked baths of an input. */
export function checkedBaths(where: string, given: ProcessBaths | undefined): ProcessBaths {
  if (given === undefined) return USUAL_BATHS;
  plainObject(where, given);
  for (const [name, setting] of Object.entries(given) as [string, unknown][]) {
    knownEntry(where, BATHS, name);
    if (setting !== undefined && (typeof setting !== "object" || setting === null || Array.isArray(setting)))
      wrongKind(`${where}/${name}`, "an object", setting);
  }
  return given;
}

/** The steps before and after development. */
export function bathDrafts(
  context: BathContext,
  baths: ProcessBaths,
): { readonly before: readonly Draft[]; readonly after: readonly Draft[] } {
  const { preSoak, stop, fix, clearingAid, wash, wettingAgent } = baths;
  const before =
    preSoak === undefined
      ? []
      : [
          plainDraft(
            context,
            "preSoak",
            "pre-soak",
            preSoak,
            "Pour in plain water, tap out the bubbles, pour out at the end.",
          ),
        ];
  const after: Draft[] = [];
  if (stop !== undefined) after.push(stopDraft(context, stop));
  if (fix !== undefined) after.push(fixDraft(context, fix));
  if (clearingAid !== undefined)
    after.push(
      plainDraft(
        context,
        "clearingAid",
        "clearing-aid",
        clearingAid,
        "Rinse, pour in the clearing aid and move at times.",
      ),
    );
  if (wash !== undefined) after.push(washDraft(context, wash, clearingAid !== undefined));
  if (wettingAgent !== undefined)
    after.push(
      plainDraft(
        context,
        "wettingAgent",
        "wetting-agent",
        wettingAgent,
        "Let it lie in the wetting agent, then hang it up without rinsing.",
      ),
    );
  return { before, after };
}
