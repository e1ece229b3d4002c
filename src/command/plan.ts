/*
 * darkroom-kinetics plan: a recipe from pour-in to wash.
 */
import {
  compensateRecipe,
  describePlan,
  planProcess,
  roundEstimate,
  type Agitation,
  type ProcessInput,
  type ProcessPlan,
  type Recipe,
  type Vessel,
} from "../index.js";
import { recipeOf, type Document } from "./document.js";
import { fault, placed } from "./fault.js";
import type { Asked } from "./options.js";
import { askedConditions, recipeName } from "./time.js";

/** The plan of a file. */
export interface PlanReport {
  readonly file: string;
  readonly name: string;
  readonly plan: ProcessPlan;
}

const VESSELS: readonly Vessel[] = ["tank", "tray", "drum"];

export function planReport(document: Document, asked: Asked): PlanReport {
  if (document.kind === "day") throw fault("a plan is made of a recipe, and this is a day file.");
  const { recipe } = recipeOf(document);
  const conditions = askedConditions(asked) ?? {};
  const plan = placed([], () => {
    const answer = compensateRecipe(recipe, conditions);
    const refused = answer.refused || answer.cautions.some(({ severity }) => severity === "stop");
    // The plan shows the time that every other answer shows.
    const { timeS, lowS, highS } = roundEstimate(answer);
    return planProcess(inputOf(recipe, asked, { ...answer, refused, timeS, lowS, highS }));
  });
  return { file: document.file, name: recipeName(recipe), plan };
}

function inputOf(recipe: Recipe, asked: Asked, answer: NonNullable<ProcessInput["answer"]>): ProcessInput {
  const { material, developer, baseline, baths } = recipe;
  const { kind, emulsion, iodideRich, areaCm2, sensitization } = material;
  const agitation: Agitation | undefined = recipe.agitation ?? baseline.agitation;
  const [dilution = developer.kind === "stock" ? developer.dilution : undefined] = asked.dilutions;
  return {
    vessel: vesselOf(asked, kind),
    answer,
    temperatureC: asked.temperaturesC[0] ?? recipe.conditions?.temperatureC ?? baseline.temperatureC,
    volumeMl: asked.volumeMl ?? (developer.kind === "brew" ? developer.brew.volumeMl : developer.volumeMl),
    material: kind,
    emulsion,
    iodideRich,
    areaCm2,
    sensitization,
    agitation,
    dilution,
    baths,
  };
}

/** Plates and paper lie in a tray unless it is said otherwise. */
function vesselOf({ vessel }: Asked, kind: Recipe["material"]["kind"]): Vessel {
  if (vessel === undefined) return kind === "plate" || kind === "paper" ? "tray" : "tank";
  const known = VESSELS.find((one) => one === vessel);
  if (known === undefined)
    throw fault(`--vessel ${JSON.stringify(vessel)} is not known; known are ${VESSELS.join(", ")}.`, {
      use: true,
    });
  return known;
}

export function planLines({ name, plan }: PlanReport): readonly string[] {
  return [name, ...describePlan(plan)];
}
