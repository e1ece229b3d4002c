/*
 * darkroom-kinetics plan: a recipe, or the evening of a day, from pour-in to wash.
 */
import { describePlan, planRecipe, usualVessel, type Caution, type ProcessPlan } from "../index.js";
import { bathOf, refuseBath } from "./askedBath.js";
import { readDay } from "./day.js";
import { recipeOf, type Document } from "./document.js";
import { eveningLines, eveningReport, plateCautions, type EveningReport } from "./evening.js";
import { fault, placed } from "./fault.js";
import { knownOf } from "./knownDay.js";
import type { Asked } from "./options.js";
import { askedConditions, recipeName } from "./time.js";
import { wordsOf, type Words } from "./words.js";

/** The plan of a recipe. */
interface RecipeReport {
  readonly file: string;
  readonly name: string;
  readonly plan: ProcessPlan;
}

export type PlanReport = RecipeReport | EveningReport;

export function planReport(document: Document, asked: Asked): PlanReport {
  return document.kind === "day" ? ofDay(document, asked) : ofRecipe(document, asked);
}

function ofDay(document: Document, asked: Asked): EveningReport {
  const read = readDay(document.value, wordsOf(asked));
  const { evening, baths, eveningDeveloper } = read;
  if (evening === undefined)
    throw fault({
      en:
        "this day has no evening to plan: it needs a part of that name, with its plates, vessel and " +
        "volume. A single film is planned from a recipe. Both are in docs/command.md.",
      de:
        "an diesem Tag gibt es nichts zu planen: nötig ist ein Teil namens evening mit Platten, Gefäß " +
        "und Volumen. Ein einzelner Film wird nach einem Rezept geplant. Beides steht in docs/command.md.",
    });
  const ofEvening = eveningDeveloper === undefined ? {} : { developer: eveningDeveloper };
  const day = knownOf({ ...read, ...ofEvening }, document.notes);
  return eveningReport(document.file, { ...day, evening }, bathOf(baths, asked.bath), asked);
}

function ofRecipe(document: Document, asked: Asked): RecipeReport {
  refuseBath(asked);
  const recipe = recipeOf(document);
  const conditions = askedConditions(asked) ?? {};
  // Plates and paper lie in a tray unless it is said otherwise.
  const { vessel = usualVessel(recipe.material.kind), volumeMl } = asked;
  // The plan shows the time that every other answer shows; in a drum that of turning without pause.
  const plan = placed([], () => planRecipe(recipe, { vessel, conditions, volumeMl, rounded: true }));
  return { file: document.file, name: recipeName(recipe, wordsOf(asked)), plan };
}

/** What is unwise about a plan. */
export function planCautions(report: PlanReport): readonly Caution[] {
  if ("plan" in report) return report.plan.cautions;
  return [...report.cautions, ...plateCautions(report)];
}

export function planLines(report: PlanReport, words: Words): readonly string[] {
  if ("evening" in report) return eveningLines(report, words);
  return [report.name, ...describePlan(report.plan, words.texts?.plan, words)];
}
