/*
 * darkroom-kinetics plan: a recipe from pour-in to wash.
 */
import {
  describePlan,
  planRecipe,
  usualVessel,
  vessels,
  type ProcessPlan,
  type Recipe,
  type ProcessVessel,
} from "../index.js";
import { recipeOf, type Document } from "./document.js";
import { fault, placed } from "./fault.js";
import { notKnown, type Asked } from "./options.js";
import { askedConditions, recipeName } from "./time.js";
import { wordsOf, type Words } from "./words.js";

/** The plan of a file. */
export interface PlanReport {
  readonly file: string;
  readonly name: string;
  readonly plan: ProcessPlan;
}

export function planReport(document: Document, asked: Asked): PlanReport {
  if (document.kind === "day")
    throw fault({
      en:
        "a plan is made of a recipe, and this is a day file: " +
        "write its known time and one bath as a recipe, such as that of docs/command.md.",
      de:
        "ein Plan entsteht aus einem Rezept, und das ist die Datei eines Tages: " +
        "nötig ist ein Rezept mit der bekannten Zeit und einem Bad, wie das in docs/command.md.",
    });
  const { recipe } = recipeOf(document);
  const conditions = askedConditions(asked) ?? {};
  const { volumeMl } = asked;
  const vessel = vesselOf(asked, recipe.material.kind);
  // The plan shows the time that every other answer shows; in a drum that of turning without pause.
  const plan = placed([], () => planRecipe(recipe, { vessel, conditions, volumeMl, rounded: true }));
  return { file: document.file, name: recipeName(recipe, wordsOf(asked)), plan };
}

/** Plates and paper lie in a tray unless it is said otherwise. */
function vesselOf({ vessel }: Asked, kind: Recipe["material"]["kind"]): ProcessVessel {
  if (vessel === undefined) return usualVessel(kind);
  const named = vessel === "dish" ? "tray" : vessel;
  const known = vessels.find((one) => one === named);
  if (known === undefined) throw fault(notKnown("--vessel", vessel, vessels), { use: true });
  return known;
}

export function planLines({ name, plan }: PlanReport, words: Words): readonly string[] {
  return [name, ...describePlan(plan, words.texts?.plan, words)];
}
