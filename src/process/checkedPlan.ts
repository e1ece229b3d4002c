/*
 * Room: process. A plan that comes back in, from a program's own store perhaps, is checked like any other
 * input.
 */
import { arrayOf, inRange, plainObject, wrongKind } from "../core/guards.js";
import type { ProcessPlan } from "./types.js";

const LONGEST_S = 1e7;
/** The water of many washes in a bath of the largest size. */
const LARGEST_ML = 1e9;

/** Checks what a plan is read for; `where` is the function and the field. */
export function checkedPlan(where: string, plan: ProcessPlan): ProcessPlan {
  plainObject(where, plan);
  inRange(`${where}/totalS`, plan.totalS, 0, LONGEST_S, "timeS");
  arrayOf(`${where}/steps`, plan.steps, 0).forEach((step, i) => {
    checkedStep(`${where}/steps/${i}`, step);
  });
  arrayOf(`${where}/materials`, plan.materials, 0).forEach((material, i) => {
    const at = `${where}/materials/${i}`;
    const { name, volumeMl, stockMl = 0, waterMl = 0, stocksMl = [] } = plainObject(at, material);
    text(`${at}/name`, name);
    for (const [field, value] of Object.entries({ volumeMl, stockMl, waterMl }))
      inRange(`${at}/${field}`, value, 0, LARGEST_ML, "volumeMl");
    arrayOf(`${at}/stocksMl`, stocksMl, 0).forEach((value, k) =>
      inRange(`${at}/stocksMl/${k}`, value, 0, LARGEST_ML, "volumeMl"),
    );
  });
  arrayOf(`${where}/cautions`, plan.cautions, 0).forEach((caution, i) => {
    const { severity, message } = plainObject(`${where}/cautions/${i}`, caution);
    for (const [field, value] of Object.entries({ severity, message }))
      text(`${where}/cautions/${i}/${field}`, value);
  });
  plainObject(`${where}/handling`, plan.handling);
  return plan;
}

function checkedStep(at: string, step: unknown): void {
  const { name, startS, durationS, temperatureC, cues, sources } = plainObject(at, step);
  text(`${at}/name`, name);
  inRange(`${at}/startS`, startS, 0, LONGEST_S, "timeS");
  inRange(`${at}/durationS`, durationS, 0, LONGEST_S, "timeS");
  inRange(`${at}/temperatureC`, temperatureC, 0, 100, "temperatureC");
  arrayOf(`${at}/sources`, sources, 0);
  arrayOf(`${at}/cues`, cues, 0).forEach((cue, i) => {
    const { atS, text: said } = plainObject(`${at}/cues/${i}`, cue);
    inRange(`${at}/cues/${i}/atS`, atS, 0, LONGEST_S, "timeS");
    text(`${at}/cues/${i}/text`, said);
  });
}

function text(where: string, value: unknown): void {
  if (typeof value !== "string") wrongKind(where, "text", value);
}
