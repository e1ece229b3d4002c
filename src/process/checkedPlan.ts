/*
 * Module: process. A plan that comes back in, from a program's own store perhaps, is checked like any other
 * input.
 */
import { arrayOf, inRange, isBoolean, isText, knownEntry, plainObject } from "../core/guards.js";
import { plainData } from "../core/plainData.js";
import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import { materialTexts, severityTexts, stepTexts } from "./text.js";
import type { CueAction, ProcessPlan, ProcessStep } from "./types.js";

/** The water of many washes in a bath of the largest size. */
const LARGEST_ML = 1e9;

/** As many values has a plan that agitates each second for the longest time. */
const MOST_VALUES = 1e7;

/** Everything that a cue may ask for. */
export const ACTIONS: Readonly<Record<CueAction, true>> = {
  "pour-in": true,
  "tap": true,
  "agitate": true,
  "stand": true,
  "pour-out": true,
  "rinse": true,
  "check-clear": true,
  "fill": true,
  "run-water": true,
  "change-water": true,
  "hang-up": true,
  "light-off": true,
  "light-on": true,
  "top-up": true,
  "temper": true,
};

/** Checks what a plan is read for; `where` is the function and the field. */
export function checkedPlan(where: string, plan: ProcessPlan): ProcessPlan {
  plainObject(where, plan);
  inRange(`${where}/totalS`, plan.totalS, 0, LONGEST_CLOCK_S, "timeS");
  let before: ProcessStep | undefined;
  arrayOf(`${where}/steps`, plan.steps, 0).forEach((one, i) => {
    const step = checkedStep(`${where}/steps/${i}`, one);
    inTurn(`${where}/steps/${i}`, step, before);
    before = step;
  });
  arrayOf(`${where}/materials`, plan.materials, 0).forEach((material, i) => {
    checkedMaterial(`${where}/materials/${i}`, material);
  });
  for (const field of ["cautions", "benchNotes"] as const)
    arrayOf(`${where}/${field}`, plan[field], 0).forEach((caution, i) => {
      const at = `${where}/${field}/${i}`;
      const { severity, message } = plainObject(at, caution);
      knownEntry(`${at}/severity`, severityTexts, severity);
      isText(`${at}/message`, message);
    });
  isBoolean(`${where}/timeRefused`, plan.timeRefused);
  plainObject(`${where}/handling`, plan.handling);
  // What is read is right by now. The rest is passed on, and storage must not lose it.
  return plainData(where, plan, MOST_VALUES);
}

function checkedMaterial(at: string, material: unknown): void {
  const {
    name,
    volumeMl = 0,
    dilution = "",
    stockMl = 0,
    waterMl = 0,
    stocksMl = [],
  } = plainObject(at, material);
  knownEntry(`${at}/name`, materialTexts, name);
  isText(`${at}/dilution`, dilution);
  for (const [field, value] of Object.entries({ volumeMl, stockMl, waterMl }))
    inRange(`${at}/${field}`, value, 0, LARGEST_ML, "volumeMl");
  arrayOf(`${at}/stocksMl`, stocksMl, 0).forEach((value, k) =>
    inRange(`${at}/stocksMl/${k}`, value, 0, LARGEST_ML, "volumeMl"),
  );
}

/** Refuses a step that ends before it starts, or starts before the one ahead of it has ended. */
function inTurn(at: string, { startS, endS }: ProcessStep, before: ProcessStep | undefined): void {
  inRange(`${at}/endS`, endS, startS, LONGEST_CLOCK_S, "timeS");
  inRange(`${at}/startS`, startS, before?.endS ?? 0, LONGEST_CLOCK_S, "timeS");
}

function checkedStep(at: string, step: unknown): ProcessStep {
  const { name, startS, endS, durationS, temperatureC, cues, sources } = plainObject(at, step);
  knownEntry(`${at}/name`, stepTexts, name);
  for (const [field, value] of Object.entries({ startS, endS, durationS }))
    inRange(`${at}/${field}`, value, 0, LONGEST_CLOCK_S, "timeS");
  inRange(`${at}/temperatureC`, temperatureC, 0, 100, "temperatureC");
  arrayOf(`${at}/sources`, sources, 0);
  arrayOf(`${at}/cues`, cues, 0).forEach((cue, i) => {
    const {
      atS,
      durationS: lengthS = 0,
      do: action,
      text: said,
      movement,
      count,
      data = {},
    } = plainObject(`${at}/cues/${i}`, cue);
    plainObject(`${at}/cues/${i}/data`, data);
    if (movement !== undefined) isText(`${at}/cues/${i}/movement`, movement);
    if (count !== undefined) inRange(`${at}/cues/${i}/count`, count, 0, 1e6, "count");
    inRange(`${at}/cues/${i}/atS`, atS, 0, LONGEST_CLOCK_S, "timeS");
    inRange(`${at}/cues/${i}/durationS`, lengthS, 0, LONGEST_CLOCK_S, "timeS");
    knownEntry(`${at}/cues/${i}/do`, ACTIONS, action);
    isText(`${at}/cues/${i}/text`, said);
  });
  return step as ProcessStep;
}
