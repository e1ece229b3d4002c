/*
 * Module: recipe. What holds for every run of a recipe, apart from its cautions, so that a real one is seen.
 */
import { standingNotes } from "../brew/checkBrew.js";
import type { Caution } from "../core/caution.js";
import { USUAL_BATHS } from "../process/baths.js";
import { benchNotes } from "../process/benchNotes.js";
import type { Recipe } from "./types.js";

/**
 * Gloves, air, silver and data sheets for a recipe. A brew says gloves and data sheets in its own words, with
 * what holds while it is mixed, so that nothing is said twice.
 */
export function recipeBench({ developer, baths = USUAL_BATHS }: Recipe): readonly Caution[] {
  const ofBaths = benchNotes(baths);
  if (developer.kind !== "brew") return ofBaths;
  const said = ["bench-gloves", "safety-data-sheets"];
  return [...standingNotes(), ...ofBaths.filter(({ code }) => !said.includes(code))];
}
