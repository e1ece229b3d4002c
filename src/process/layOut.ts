/*
 * Room: process. Steps laid end to end.
 */
import type { Cue, Step } from "./types.js";

/** A step before it has its place: its cues count from its own start. */
export interface Draft extends Omit<Step, "startS" | "cues"> {
  readonly cues: readonly Cue[];
}

/** Gives each draft its place: the next starts at the very number at which the one before ends. */
export function layOut(drafts: readonly Draft[]): {
  readonly steps: readonly Step[];
  readonly totalS: number;
} {
  let startS = 0;
  const steps = drafts.map((draft) => {
    const step = { ...draft, startS, cues: draft.cues.map(({ atS, text }) => ({ atS: startS + atS, text })) };
    startS += draft.durationS;
    return step;
  });
  return { steps, totalS: startS };
}
