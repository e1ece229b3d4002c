/*
 * Module: process. A run is planned: the checked input, the steps and what is unwise about them.
 */
import { gravestFirst, refuses, type Caution } from "../core/caution.js";
import { checkedEstimate, LONGEST_ANSWER_S } from "../core/estimate.js";
import { unreadFields } from "../core/pointer.js";
import { arrayOf, inRange, notOneOf, plainObject, positive, refuse, wrongKind } from "../core/guards.js";
import { agitationInterval } from "../agitation/agitation.js";
import {
  handbookBathS,
  handbookDrain,
  handbookHabits,
  SHUFFLED,
  type StopKind,
} from "../handbook/process.js";
import { sensitizations, type Sensitization } from "../inspection/safelightCautions.js";
import { emulsionOf } from "../temperature/emulsionOf.js";
import { temperatureCautions } from "../temperature/temperatureCautions.js";
import { asAnswered } from "./asAnswered.js";
import { bathsJudged } from "./bathCautions.js";
import { checkedBaths } from "./baths.js";
import { bathDrafts } from "./bathSteps.js";
import { carbonateIn } from "./carbonateIn.js";
import { caution } from "./caution.js";
import { benchNotes } from "./benchNotes.js";
import { bathContext, handlingOf, stopKind, type BathContext } from "./context.js";
import { developmentCues, drainTooLong, LONGEST_S, longestPlannedS } from "./developmentCues.js";
import { enoughDeveloper } from "./enoughDeveloper.js";
import { layOut, type CueDraft, type Draft } from "./layOut.js";
import { materialsFor } from "./materials.js";
import { movedByStep, toNearest } from "./rounding.js";
import type { ProcessBaths, ProcessInput, ProcessPlan } from "./types.js";
import { leftOutText } from "./text.js";

const FIELDS: Readonly<Record<keyof ProcessInput, true>> = {
  vessel: true,
  movement: true,
  pieces: true,
  timeS: true,
  answer: true,
  temperatureC: true,
  startTemperatureC: true,
  volumeMl: true,
  topUpMl: true,
  agitation: true,
  drainS: true,
  rest: true,
  dilution: true,
  developer: true,
  sensitization: true,
  baths: true,
  maxStepC: true,
  stepS: true,
  material: true,
  paperBase: true,
  iodideRich: true,
  emulsion: true,
  carbonate: true,
  areaCm2: true,
};

/** The plan of `planProcess`; `where` is the function that was called and its argument, for errors. */
export function planOf(where: string, asked: ProcessInput): ProcessPlan {
  plainObject(where, asked);
  const { input, cautions: differing } = asAnswered(where, asked);
  const { timeS: askedS, refused, said } = developmentTime(where, input);
  const temperatureC = inRange(`${where}/temperatureC`, input.temperatureC, 0, 100, "temperatureC");
  const { volumeMl, sensitization } = input;
  if (volumeMl !== undefined) positive(`${where}/volumeMl`, volumeMl, 1e6, "volumeMl");
  if (sensitization !== undefined) knownSensitization(where, sensitization);
  const handling = handlingOf(where, input);
  const everyS = agitationInterval(`${where}/agitation`, handling.agitation);
  const longestS = input.answer === undefined ? askedS : longestPlannedS(`${where}/agitation`, handling);
  const timeS = Math.min(askedS, longestS);
  const stated = bathContext(where, temperatureC, input, handling, sensitization);
  const context = { ...stated, carbonate: carbonateOf(where, input) };
  const baths = checkedBaths(`${where}/baths`, input.baths);
  const { before, after } = bathDrafts(context, baths);
  const drafts = withFirstCues(where, input, [
    ...restDraft(where, input.rest, context),
    ...before,
    developDraft(where, timeS, context),
    ...after,
  ]);
  const { steps, totalS } = layOut(drafts, handling.vessel);
  const stop = stopKind(context, baths);
  const materials = materialsFor(where, volumeMl, input.dilution, stop, baths, steps);
  const ofBaths = bathsJudged(where, context, baths, input);
  const cautions: Caution[] = [...differing, ...movedByStep(timeS, handling.stepS)];
  if (askedS > timeS)
    cautions.push(caution("plan-cut-short", "stop", { quantity: "timeS", limit: timeS, actual: askedS }));
  if (handling.drainS > timeS) cautions.push(drainTooLong(timeS, handling.drainS));
  const { lies, burstS } = handbookHabits[handling.vessel];
  if (lies && !(everyS !== undefined && everyS <= burstS))
    cautions.push(caution("drum-not-turned", "warn", { path: "/agitation" }));
  cautions.push(
    ...temperatureCautions(temperatureC, {
      emulsion: emulsionOf(input.material, input.emulsion),
      path: "/temperatureC",
    }).filter(({ code }) => !said.includes(code)),
    ...unreadFields("", input, Object.keys(FIELDS)),
    ...enoughDeveloper(where, input, handling).filter(({ code }) => !said.includes(code)),
    ...ofBaths,
    ...stopGas(context, baths, stop),
  );
  return {
    steps,
    totalS,
    materials,
    cautions: gravestFirst(cautions),
    benchNotes: benchNotes(baths, stop),
    timeRefused: refused || askedS > timeS,
    handling,
  };
}

/** Acid makes gas of carbonate, and a closed vessel holds it (common practice). */
function stopGas(
  { carbonate, handling }: BathContext,
  baths: ProcessBaths,
  kind: StopKind,
): readonly Caution[] {
  const gas = baths.stop !== undefined && kind === "acid" && carbonate === true;
  return gas && handling.vessel !== "tray" ? [caution("stop-gas", "note", { path: "/baths/stop" })] : [];
}

/** Whether the developer holds carbonate: what a brew holds counts, whatever else is stated. */
function carbonateOf(where: string, { developer, carbonate }: ProcessInput): boolean | undefined {
  if (developer === undefined) return carbonate;
  const { brew } = plainObject(`${where}/developer`, developer);
  if (brew === undefined) return carbonate;
  return carbonateIn(`${where}/developer/brew`, brew) || carbonate === true;
}

/** The development time, unrounded; whether its answer is refused, and the codes that the answer has said. */
function developmentTime(
  where: string,
  { timeS, answer }: ProcessInput,
): {
  readonly timeS: number;
  readonly refused: boolean;
  readonly said: readonly string[];
} {
  if (answer === undefined)
    return { timeS: positive(`${where}/timeS`, timeS, LONGEST_S, "timeS"), refused: false, said: [] };
  if (timeS !== undefined)
    refuse(`${where}/timeS`, "left-out-beside", leftOutText, { path: "/answer" }, timeS);
  const { timeS: answeredS } = checkedEstimate(`${where}/answer`, answer, LONGEST_ANSWER_S);
  const { cautions } = answer;
  const list = arrayOf(`${where}/answer/cautions`, cautions, 0).map((one, i) =>
    plainObject(`${where}/answer/cautions/${i}`, one),
  );
  return {
    timeS: answeredS,
    refused: refuses(list as unknown as readonly Caution[]),
    said: list.map(({ code }) => String(code)),
  };
}

function knownSensitization(where: string, sensitization: unknown): void {
  if (!sensitizations.includes(sensitization as Sensitization))
    notOneOf(`${where}/sensitization`, sensitizations, sensitization);
}

/** The rest of the fresh developer, when it is asked for. */
function restDraft(where: string, rest: unknown, { temperatureC, handling }: BathContext): readonly Draft[] {
  if (rest === undefined || rest === false || rest === 0) return [];
  const { durationS: usualS, sources } = handbookBathS.rest;
  if (rest !== true && typeof rest !== "number") wrongKind(`${where}/rest`, ["boolean", "number"], rest);
  const lengthS = rest === true ? usualS : inRange(`${where}/rest`, rest, 0, 86400, "timeS");
  const durationS = toNearest(lengthS, handling.stepS);
  const cues: readonly CueDraft[] = [{ atS: 0, durationS, do: "stand" }];
  return [{ name: "rest", durationS, temperatureC, cues, sources: rest === true ? sources : [] }];
}

function developDraft(where: string, timeS: number, { temperatureC, handling }: BathContext): Draft {
  const { vessel, movement, drainS, stepS } = handling;
  const durationS = Math.max(toNearest(timeS, stepS), drainS);
  return {
    name: "develop",
    durationS,
    temperatureC,
    cues: developmentCues(`${where}/agitation`, handling, durationS - drainS),
    sources: [
      ...handbookHabits[vessel].sources,
      ...(movement === "shuffle" ? SHUFFLED.sources : []),
      ...handbookDrain[movement].sources,
    ],
  };
}

/** What is open lies in some light: where it is not said what light that may be, that is said. */
function lightOff(
  vessel: ProcessInput["vessel"],
  material: ProcessInput["material"],
  sensitization: Sensitization | undefined,
): readonly CueDraft[] {
  if (sensitization !== undefined) return [{ atS: 0, do: "light-off", data: { sensitization } }];
  if (vessel !== "tray") return [];
  return [{ atS: 0, do: "light-off", ...(material === "paper" && { data: { material } }) }];
}

/** What comes before the first bath: fresh developer, its temperature, and the light. */
function withFirstCues(
  where: string,
  { topUpMl, startTemperatureC, volumeMl, sensitization, vessel, material }: ProcessInput,
  drafts: readonly Draft[],
): readonly Draft[] {
  const first: CueDraft[] = [];
  if (topUpMl !== undefined) {
    positive(`${where}/topUpMl`, topUpMl, volumeMl ?? 1e6, "volumeMl");
    first.push({ atS: 0, do: "top-up", data: { volumeMl: topUpMl } });
  }
  if (startTemperatureC !== undefined) {
    const temperatureC = inRange(`${where}/startTemperatureC`, startTemperatureC, 0, 100, "temperatureC");
    first.push({ atS: 0, do: "temper", data: { temperatureC } });
  }
  const dark = lightOff(vessel, material, sensitization);
  // The material comes out of its wrapping for the first wet bath.
  const wetAt = drafts.findIndex(({ name }) => name !== "rest");
  return drafts.map((draft, i) => ({
    ...draft,
    cues: [...(i === 0 ? first : []), ...(i === wetAt ? dark : []), ...draft.cues],
  }));
}
