/*
 * Module: process. What holds for every run, apart from the cautions, so that a real one is seen.
 */
import type { Caution } from "../core/caution.js";
import { caution } from "./caution.js";
import type { ProcessBaths } from "./types.js";

/** The standing notes on gloves, air, silver and safety data sheets for the baths that are planned. */
export function benchNotes({ stop, fix }: ProcessBaths): readonly Caution[] {
  const notes = [caution("bench-gloves", "note")];
  if (stop !== undefined || fix !== undefined) notes.push(caution("bench-air", "note"));
  if (fix !== undefined) notes.push(caution("silver-disposal", "note"));
  return [...notes, caution("safety-data-sheets", "note")];
}
