/*
 * Module: process. Steps laid end to end.
 */
import { cueText } from "./text.js";
import type { ProcessVessel } from "../handbook/process.js";
import type { PlanCue, ProcessStep } from "./types.js";

/** A cue before it has its place and its sentence: it counts from the start of its step. */
export type CueDraft = Omit<PlanCue, "text">;

/** A step before it has its place. */
export interface Draft extends Pick<ProcessStep, "name" | "durationS" | "temperatureC" | "sources"> {
  readonly cues: readonly CueDraft[];
}

/** Gives each draft its place: the next starts at the very number at which the one before ends. */
export function layOut(
  drafts: readonly Draft[],
  vessel: ProcessVessel,
): { readonly steps: readonly ProcessStep[]; readonly totalS: number } {
  let startS = 0;
  const steps = drafts.map(({ name, durationS, temperatureC, cues, sources }) => {
    const from = startS;
    startS += durationS;
    return {
      name,
      startS: from,
      endS: startS,
      durationS,
      temperatureC,
      cues: cues.map(({ atS, data, ...cue }) => ({
        atS: from + atS,
        ...cue,
        text: cueText(data === undefined ? { ...cue } : { ...cue, data }, { step: name, vessel }),
        ...(data === undefined ? {} : { data }),
      })),
      sources,
    };
  });
  return { steps, totalS: startS };
}
