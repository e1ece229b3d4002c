/*
 * Module: process. Each bath around the developer as a step: how long, at which temperature, and what to do.
 */
import { handbookBathS, handbookStops } from "../handbook/process.js";
import { bathTemperatureC, sourcesOf, STEP_OF } from "./baths.js";
import { stopKind, type BathContext } from "./context.js";
import { keptMoving, leftAlone, pouredBath, pourIn } from "./developmentCues.js";
import { fixDraft } from "./fixing.js";
import type { CueDraft, Draft } from "./layOut.js";
import { toNearest } from "./rounding.js";
import type { BathSetting, ProcessBaths, StopSetting } from "./types.js";
import { washDraft } from "./wash.js";

/** A bath whose length is one figure of the handbook; `cues` are made from the length that comes out. */
function plainDraft(
  context: BathContext,
  key: "preSoak" | "stop" | "clearingAid" | "wettingAgent",
  setting: BathSetting,
  usual: { readonly durationS: number; readonly sources: readonly string[] },
  cues: (durationS: number) => readonly CueDraft[],
): Draft {
  const durationS = toNearest(setting.durationS ?? usual.durationS, context.handling.stepS);
  return {
    name: STEP_OF[key],
    durationS,
    temperatureC: bathTemperatureC(context, setting),
    cues: cues(durationS),
    sources: sourcesOf(setting, usual.sources),
  };
}

function preSoakDraft(context: BathContext, setting: BathSetting): Draft {
  const { handling } = context;
  return plainDraft(context, "preSoak", setting, handbookBathS.preSoak, (durationS) =>
    pouredBath(handling, durationS, (pourAtS) => keptMoving(handling, pourAtS, true)),
  );
}

function stopDraft(context: BathContext, setting: StopSetting, baths: ProcessBaths): Draft {
  const { handling } = context;
  const { movement } = handling;
  const kind = stopKind(context, baths);
  return plainDraft(context, "stop", setting, handbookStops[kind], (lengthS) => {
    const cues = pouredBath(handling, lengthS, (durationS) =>
      durationS > 0 ? [{ atS: 0, durationS, do: kind === "water" ? "rinse" : "agitate", movement }] : [],
    );
    // Changed water is not poured in once.
    return kind === "water" ? cues.slice(1) : cues;
  });
}

function clearingAidDraft(context: BathContext, setting: BathSetting): Draft {
  const { handling } = context;
  return plainDraft(context, "clearingAid", setting, handbookBathS.clearingAid, (durationS) => [
    { atS: 0, do: "rinse" },
    ...pouredBath(handling, durationS, (pourAtS) => keptMoving(handling, pourAtS)),
  ]);
}

/** The last second of the wetting agent is for hanging up, so that it lies within the plan. */
function wettingAgentDraft(context: BathContext, setting: BathSetting): Draft {
  const { material } = context;
  return plainDraft(context, "wettingAgent", setting, handbookBathS.wettingAgent, (durationS) => {
    const hangAtS = Math.max(0, durationS - 1);
    const lies = hangAtS > 0 ? [leftAlone(context.handling, 0, hangAtS)] : [];
    const dries: CueDraft = {
      atS: hangAtS,
      do: "hang-up",
      ...(material === "plate" && { data: { material } }),
    };
    return [pourIn(context.handling), ...lies, dries];
  });
}

/** The steps before and after development. */
export function bathDrafts(
  context: BathContext,
  baths: ProcessBaths,
): { readonly before: readonly Draft[]; readonly after: readonly Draft[] } {
  const { preSoak, stop, fix, clearingAid, wash, wettingAgent } = baths;
  const after: Draft[] = [];
  if (stop !== undefined) after.push(stopDraft(context, stop, baths));
  if (fix !== undefined) after.push(fixDraft(context, fix));
  if (clearingAid !== undefined) after.push(clearingAidDraft(context, clearingAid));
  if (wash !== undefined) after.push(washDraft(context, wash, baths));
  if (wettingAgent !== undefined) after.push(wettingAgentDraft(context, wettingAgent));
  return { before: preSoak === undefined ? [] : [preSoakDraft(context, preSoak)], after };
}
