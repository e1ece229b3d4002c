import { gravestFirst, type Caution } from "../core/caution.js";
import { unreadFields } from "../core/pointer.js";
import { inRange, knownEntry, plainObject, positive, wrongKind } from "../core/guards.js";
import { agitationInterval, type Agitation } from "../agitation/agitation.js";
import { readDilution } from "../dilution/dilution.js";
import { mixVolumes } from "../dilution/mixVolumes.js";
import {
  handbookBathS,
  handbookVessels,
  RUNNING_CHANGE_S,
  WASH_CHANGE_S,
  WASH_CHANGES,
} from "../handbook/process.js";
import { checkMaterial, temperatureCautions } from "../temperature/temperatureCautions.js";
import { bathsJudged } from "./bathCautions.js";
import { bathContext, bathDrafts, checkedBaths } from "./bathSteps.js";
import { developmentCues, drainTooLong } from "./developmentCues.js";
import { layOut, type Draft } from "./layOut.js";
import type { BathSetting, Material, ProcessBaths, ProcessInput, ProcessPlan, Step } from "./types.js";

const WHERE = "planProcess/input";

const FIELDS = [
  "vessel",
  "timeS",
  "temperatureC",
  "volumeMl",
  "agitation",
  "drainS",
  "rest",
  "dilution",
  "areaCm2",
  "modernFilm",
  "emulsion",
  "baths",
  "maxStepC",
];

/**
 * The plan of a run, from the rest of the fresh bath to the wetting agent.
 *
 * @param input - vessel, development time in s, temperature in °C, volume of a bath in ml; agitation, baths
 * and the rest as they are known
 * @returns steps laid end to end, each with its cues (`atS` counts from the start of the plan, like
 * `startS`), the total time in s, what to have ready in ml, and cautions, gravest first
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range, or the development would hold more than 90000 agitations
 *
 * @remarks The development time runs from pouring in to the moment when the material is drained: pouring out
 * begins `drainS` before its end. An agitation that pouring out would cut short is left out. A time shorter
 * than the draining is planned as long as the draining, with a `"stop"` caution. Every figure that the input
 * leaves out is a published one or common practice, named in the step's `sources`: agitation from US Navy,
 * Photography (Basic), NAVEDTRA 14209, p. 10-16; stop and wash from US Army, subcourse SS05098, p. 24; fixing
 * as {@link fixingTime} and {@link clearingTimeAt} say. Fixer carries silver: local codes say where it goes,
 * and the safety data sheets of all chemicals go before this plan.
 *
 * @example
 * ```ts
 * const plan = planProcess({ vessel: "tank", timeS: 510, temperatureC: 20, volumeMl: 500 });
 * plan.steps.map((step) => step.durationS) // => [510, 30, 120, 1800, 60]
 * plan.steps[0].cues.at(-1).atS // => 500
 * plan.totalS // => 2520
 * ```
 */
export function planProcess(input: ProcessInput): ProcessPlan {
  plainObject(WHERE, input);
  const { vessel, rest, modernFilm, emulsion } = input;
  checkMaterial(WHERE, { emulsion });
  const habit = knownEntry(`${WHERE}/vessel`, handbookVessels, vessel);
  const usual: Agitation = habit.everyS === 0 ? "continuous" : { everyS: habit.everyS };
  // Only what is left out gets the habit; null, which is what JSON makes of NaN, is refused.
  const { agitation = usual, drainS = habit.drainS } = input;
  const timeS = positive(`${WHERE}/timeS`, input.timeS, 1e6, "timeS");
  const temperatureC = inRange(`${WHERE}/temperatureC`, input.temperatureC, 0, 100, "temperatureC");
  positive(`${WHERE}/volumeMl`, input.volumeMl, 1e6, "volumeMl");
  agitationInterval(`${WHERE}/agitation`, agitation);
  inRange(`${WHERE}/drainS`, drainS, 0, 600, "timeS");
  const handling = { vessel, agitation, drainS };
  const baths = checkedBaths(`${WHERE}/baths`, input.baths);
  const context = bathContext(WHERE, temperatureC, modernFilm);
  const { before, after } = bathDrafts(context, baths);
  const durationS = Math.max(timeS, drainS);
  const develop: Draft = {
    name: "develop",
    durationS,
    temperatureC,
    cues: developmentCues(`${WHERE}/agitation`, handling, durationS - drainS),
    sources: habit.sources,
  };
  const { steps, totalS } = layOut([...restDraft(rest, temperatureC), ...before, develop, ...after]);
  const cautions: Caution[] = [];
  if (drainS > timeS) cautions.push(drainTooLong(timeS, drainS));
  cautions.push(
    ...temperatureCautions(temperatureC, { emulsion, path: "/temperatureC" }),
    ...unreadFields("", input, FIELDS),
    ...bathsJudged(WHERE, { ...input, baths }),
  );
  return {
    steps,
    totalS,
    materials: materialsFor(input, baths, steps),
    cautions: gravestFirst(cautions),
    handling,
  };
}

/** The rest of the fresh developer, when it is asked for. */
function restDraft(rest: unknown, temperatureC: number): readonly Draft[] {
  if (rest === undefined || rest === false || rest === 0) return [];
  const { durationS: usualS, sources } = handbookBathS.rest;
  if (rest !== true && typeof rest !== "number")
    wrongKind(`${WHERE}/rest`, "true, false or a number of seconds", rest);
  const durationS = rest === true ? usualS : inRange(`${WHERE}/rest`, rest, 0, 86400, "timeS");
  const cues = [{ atS: 0, text: "Let the fresh developer stand until its bubbles are gone." }];
  return [{ name: "rest", durationS, temperatureC, cues, sources: rest === true ? sources : [] }];
}

const NAMES: Readonly<Record<Exclude<keyof ProcessBaths, "wash">, string>> = {
  preSoak: "pre-soak water",
  stop: "stop bath",
  fix: "fixing bath",
  clearingAid: "clearing aid",
  wettingAgent: "wetting agent",
};

function materialsFor(input: ProcessInput, baths: ProcessBaths, steps: readonly Step[]): readonly Material[] {
  const { volumeMl } = input;
  const one = (name: string, where: string, dilution: BathSetting["dilution"]): Material =>
    dilution === undefined
      ? { name, volumeMl }
      : { name, volumeMl, ...mixVolumes(readDilution(`${where}/dilution`, dilution), volumeMl) };
  const materials = [one("developer", WHERE, input.dilution)];
  for (const [key, name] of Object.entries(NAMES) as [keyof typeof NAMES, string][]) {
    const setting = baths[key];
    if (setting !== undefined) materials.push(one(name, `${WHERE}/baths/${key}`, setting.dilution));
  }
  const wash = steps.find((step) => step.name === "wash");
  if (wash === undefined) return materials;
  const method = baths.wash?.method ?? "running";
  const changeS = method === "running" ? RUNNING_CHANGE_S : WASH_CHANGE_S;
  const fillings =
    method === "changes" ? WASH_CHANGES.inversions.length : Math.ceil(wash.durationS / changeS);
  return [...materials, { name: "wash water", volumeMl: volumeMl * fillings }];
}
