/*
 * Module: process. A plan that comes back in, from a program's own store perhaps, is checked like any other
 * input.
 */
import { agitationInterval } from "../agitation/agitation.js";
import { arrayOf, inRange, isBoolean, isText, knownEntry, notOneOf, plainObject } from "../core/guards.js";
import { plainData } from "../core/plainData.js";
import { handbookHabits } from "../handbook/process.js";
import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import { checkedPieces, checkedStep } from "./context.js";
import { materialTexts, severityTexts, stepTexts } from "./text.js";
import type { CueAction, Handling, ProcessPlan, ProcessStep } from "./types.js";

/** The water of many washes in a bath of the largest size. */
const LARGEST_ML = 1e9;

/** As many values has a plan that agitates each second for the longest time. */
const MOST_VALUES = 1e7;

/** A moment that is stored twice is rounded alike: what is left is the rounding of sums, s. */
const SUMMED_S = 0.01;

/** Start, end and length may each be stored in whole seconds: the length misses the difference by this, s. */
const WHOLE_S = 1.5;

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

/** Runs a part of a check, and may note what that throws. */
export type Attempt = (part: () => void) => void;

/** Lets the first fault through. */
const atOnce: Attempt = (part) => {
  part();
};

/**
 * Checks what a plan is read for; `where` is the function and the field. Each part goes through `attempt`.
 *
 * @returns a copy of the plan
 */
export function checkedPlan(where: string, plan: ProcessPlan, attempt: Attempt = atOnce): ProcessPlan {
  plainObject(where, plan);
  let endS = 0;
  attempt(() => {
    arrayOf(`${where}/steps`, plan.steps, 1).forEach((one, i) => {
      attempt(() => {
        const at = `${where}/steps/${i}`;
        const step = plainObject(at, one) as unknown as ProcessStep;
        const startsAtS = endS;
        // The next step is to join what this one says of itself.
        endS = Number.isFinite(step.endS) ? step.endS : endS;
        checkedOne(at, step, startsAtS);
      });
    });
  });
  attempt(() => {
    inRange(`${where}/totalS`, plan.totalS, 0, LONGEST_CLOCK_S, "timeS");
    joined(`${where}/totalS`, plan.totalS, endS);
  });
  attempt(() => {
    arrayOf(`${where}/materials`, plan.materials, 0).forEach((material, i) => {
      attempt(() => {
        checkedMaterial(`${where}/materials/${i}`, material);
      });
    });
  });
  for (const field of ["cautions", "benchNotes"] as const)
    attempt(() => {
      arrayOf(`${where}/${field}`, plan[field], 0).forEach((caution, i) => {
        const at = `${where}/${field}/${i}`;
        const { severity, message } = plainObject(at, caution);
        knownEntry(`${at}/severity`, severityTexts, severity);
        isText(`${at}/message`, message);
      });
    });
  attempt(() => {
    isBoolean(`${where}/timeRefused`, plan.timeRefused);
  });
  attempt(() => {
    checkedHandling(`${where}/handling`, plan.handling);
  });
  // What is read is right by now. The rest is passed on, and storage must not lose it.
  let copy = plan;
  attempt(() => {
    copy = plainData(where, plan, MOST_VALUES);
  });
  return copy;
}

/** What a plan that comes back says of its handling. */
function checkedHandling(at: string, handling: Handling): void {
  plainObject(at, handling);
  const { vessel, movement, agitation, drainS, stepS, pieces } = handling;
  const { movements } = knownEntry(`${at}/vessel`, handbookHabits, vessel);
  if (!movements.includes(movement)) notOneOf(`${at}/movement`, movements, movement);
  agitationInterval(`${at}/agitation`, agitation);
  inRange(`${at}/drainS`, drainS, 0, 600, "timeS");
  if (stepS !== undefined) checkedStep(at, stepS);
  if (pieces !== undefined) checkedPieces(at, pieces);
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

/** Refuses a figure that is not the one that follows from its neighbours, but for the rounding of storage. */
function joined(at: string, value: unknown, followsS: number, withinS = SUMMED_S): void {
  inRange(at, value, Math.max(0, followsS - withinS), followsS + withinS, "timeS");
}

/** Checks a step that begins where the one before it ends. */
function checkedOne(at: string, step: ProcessStep, startsAtS: number): void {
  const { name, startS, endS, durationS, temperatureC, cues, sources } = step;
  knownEntry(`${at}/name`, stepTexts, name);
  for (const [field, value] of Object.entries({ startS, endS, durationS }))
    inRange(`${at}/${field}`, value, 0, LONGEST_CLOCK_S, "timeS");
  joined(`${at}/startS`, startS, startsAtS);
  inRange(`${at}/endS`, endS, startS, LONGEST_CLOCK_S, "timeS");
  joined(`${at}/endS`, endS, startS + durationS, WHOLE_S);
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
    inRange(`${at}/cues/${i}/atS`, atS, Math.max(0, startS - SUMMED_S), endS + SUMMED_S, "timeS");
    inRange(`${at}/cues/${i}/durationS`, lengthS, 0, LONGEST_CLOCK_S, "timeS");
    knownEntry(`${at}/cues/${i}/do`, ACTIONS, action);
    isText(`${at}/cues/${i}/text`, said);
  });
}
