/* What the package says of a bath, in the language and the unit of the sheet. */
import {
  describePlan,
  describeSteering,
  type PlanCue,
  type ProcessPlan,
  type StepName,
  type SteerAnswer,
} from "darkroom-kinetics";
import { de } from "darkroom-kinetics/texts/de";
import { bathWordsOf } from "../bathWords.js";
import type { Sheet } from "../sheet.js";

/** The sentence of a cue; one that begins the next bath is that bath's. */
export function cueText(cue: PlanCue, step: StepName, plan: ProcessPlan, { language, unit }: Sheet): string {
  if (language === "en") return cue.text;
  const own = plan.steps.find(({ startS, endS }) => startS <= cue.atS && cue.atS < endS)?.name ?? step;
  return de.plan.cue(cue, { step: own, vessel: plan.handling.vessel }, unit);
}

/** What to have ready: the line of the plan that says so. */
export const readyText = (plan: ProcessPlan, { language, unit }: Sheet): string =>
  describePlan(plan, language === "de" ? de.plan : undefined, { unit }).find((line) =>
    line.startsWith(`${bathWordsOf(language).ready}: `),
  ) ?? "";

/** When to pour out, and why that moved. */
export const steeringWhy = (
  answer: SteerAnswer,
  plan: ProcessPlan,
  stepS: number | undefined,
  { language, unit }: Sheet,
): string =>
  describeSteering(answer, language === "de" ? de.steering : undefined, {
    vessel: plan.handling.vessel,
    unit,
    stepS,
  }).join(" ");
