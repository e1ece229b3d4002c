/*
 * Module: process. What holds for every run, apart from the cautions, so that a real one is seen.
 */
import type { Caution } from "../core/caution.js";
import { caution } from "./caution.js";
import type { StopKind } from "../handbook/process.js";
import type { ProcessBaths } from "./types.js";

/**
 * The standing notes on gloves, air, acid, silver and safety data sheets for the baths that are planned, the
 * stop bath being of a kind. An acid stop of 1 to 2 %, acid into water: common practice.
 */
export function benchNotes({ stop, fix }: ProcessBaths, kind: StopKind): readonly Caution[] {
  const notes = [caution("bench-gloves", "note")];
  if (stop !== undefined || fix !== undefined) notes.push(caution("bench-air", "note"));
  if (stop !== undefined && kind === "acid") notes.push(caution("bench-acid", "note"));
  if (fix !== undefined) notes.push(caution("silver-disposal", "note"));
  return [...notes, caution("safety-data-sheets", "note")];
}
