/*
 * Module: recipe. What holds for every run of a recipe, apart from its cautions, so that a real one is seen.
 */
import type { Caution } from "../core/caution.js";
import { USUAL_BATHS } from "../process/baths.js";
import { brewBench } from "../process/brewNotes.js";
import { benchNotes } from "../process/benchNotes.js";
import { stopKind } from "../process/context.js";
import { carbonateOf, emulsionIn } from "./recipeCautions.js";
import type { Recipe } from "./types.js";

/**
 * Gloves, air, acid, silver and data sheets for a recipe. A brew says gloves and data sheets in its own
 * words, with what holds while it is mixed, so that nothing is said twice.
 */
export function recipeBench(recipe: Recipe): readonly Caution[] {
  const { developer, baths = USUAL_BATHS } = recipe;
  const gelatin = { soft: emulsionIn(recipe) === "soft", carbonate: carbonateOf(developer) };
  const ofBaths = benchNotes(baths, stopKind(gelatin, baths));
  return developer.kind === "brew" ? brewBench(ofBaths) : ofBaths;
}
