import type { Conditions } from "../compensate/types.js";
import { gravestFirst, type Caution } from "../core/caution.js";
import { isBoolean, knownEntry, plainObject } from "../core/guards.js";
import { unreadFields } from "../core/pointer.js";
import { agitationInterval } from "../agitation/agitation.js";
import { handbookHabits } from "../handbook/process.js";
import { caution } from "../process/caution.js";
import { planOf } from "../process/planOf.js";
import type { ProcessInput, ProcessPlan } from "../process/types.js";
import { roundEstimate } from "../quantities/roundEstimate.js";
import { compensateRecipe } from "./compensateRecipe.js";
import { placeOf } from "./places.js";
import { recipeBench } from "./recipeBench.js";
import { bathFacts, bathMl, brewCautions, dilutionOf, emulsionIn, recipeCautions } from "./recipeCautions.js";
import { recipeNow } from "./recipeNow.js";
import type { Recipe } from "./types.js";

/** What a recipe does not say of its plan. All but the vessel may be left out. */
export interface RecipePlanOptions extends Pick<
  ProcessInput,
  | "vessel"
  | "movement"
  | "pieces"
  | "startTemperatureC"
  | "volumeMl"
  | "topUpMl"
  | "drainS"
  | "rest"
  | "paperBase"
  | "maxStepC"
  | "stepS"
> {
  /** what is otherwise today than the recipe says */
  readonly conditions?: Conditions | undefined;
  /** true to develop for the time as `roundEstimate` shows it; the other steps stay as they are */
  readonly rounded?: boolean | undefined;
}

const OPTIONS = [
  "vessel",
  "movement",
  "pieces",
  "startTemperatureC",
  "volumeMl",
  "topUpMl",
  "drainS",
  "rest",
  "paperBase",
  "maxStepC",
  "stepS",
] as const;

/**
 * The plan of a recipe, from pouring in to the wetting agent.
 *
 * @param recipe - a recipe that {@link checkRecipe} has passed
 * @param options - the vessel, and perhaps today's conditions, the volume, a step to round to
 * @returns as `planProcess` returns it; its cautions are those of the recipe and of the plan, gravest first,
 * each once, with their paths in the recipe; its standing notes are those of `checkRecipe`
 * @throws TypeError when an argument or a field is of the wrong kind
 * @throws RangeError when a value is out of range, or `vessel` is unknown
 *
 * @remarks A time longer than a plan holds is planned that long, and refused: see {@link planProcess}. The
 * recipe gives what it knows: the time and whether it is refused, the temperature, the agitation
 * that the time was worked out for, the dilution and the volume, area, emulsion, light and kind of the
 * material, whether it is iodide-rich, and the baths. A plate is soft unless the recipe says that it is
 * hardened. Without baths in the recipe they are those of `planProcess`. A drum is turned without pause, and
 * the time is for that, unless the conditions say today's agitation. A bath that drifts is planned at the
 * temperature that it has at pour-in. Local codes and safety data sheets go before this plan.
 *
 * @example
 * ```ts
 * const recipe: Recipe = {
 *   schemaVersion: 2,
 *   material: { name: "sheet film", iodideRich: true },
 *   developer: { kind: "stock", name: "hut stock", dilution: "1+50", volumeMl: 500 },
 *   baseline: { timeS: 660, temperatureC: 20 },
 *   baths: { stop: {}, fix: { clearingS: 45 }, wash: {} },
 * };
 * const plan = planRecipe(recipe, { vessel: "tank" });
 * plan.steps.map((step) => step.name) // => ["develop", "stop", "fix", "wash"]
 * plan.steps[2].durationS // => 135
 * plan.materials[0].waterMl // => 490.196
 * ```
 */
export function planRecipe(recipe: Recipe, options: RecipePlanOptions): ProcessPlan {
  plainObject("planRecipe/recipe", recipe);
  plainObject("planRecipe/options", options);
  const { rounded = false } = options;
  const turned = turnedInDrum(recipe, options);
  const conditions: Conditions = {
    ...options.conditions,
    ...(turned.length > 0 && { agitation: "continuous" }),
  };
  isBoolean("planRecipe/options/rounded", rounded);
  const exact = compensateRecipe(recipe, conditions);
  const answer = rounded ? { ...exact, ...roundEstimate(exact) } : exact;
  const now = recipeNow(recipe, conditions);
  const chosen = Object.fromEntries(
    OPTIONS.flatMap((field) => (options[field] === undefined ? [] : [[field, options[field]] as const])),
  ) as Pick<ProcessInput, (typeof OPTIONS)[number]>;
  const plan = planOf("planRecipe/options", { ...recipeInput(now), ...chosen, answer });
  const own = plan.cautions.map((one) => placedInPlan(recipe, one, conditions, chosen));
  const said = recipeCautions(withVolume(now, chosen.volumeMl), answer, brewCautions(now), true);
  const news = own.filter(({ code, path }) => !said.some((one) => one.code === code && one.path === path));
  const unread = unreadFields("/options", options, [...OPTIONS, "conditions", "rounded"]);
  return {
    ...plan,
    cautions: gravestFirst([...said, ...news, ...turned, ...unread]),
    benchNotes: recipeBench(now),
  };
}

/**
 * Where a drum is to be moved as the recipe says of another vessel, the caution that it is turned without
 * pause; none where today's agitation is said.
 */
function turnedInDrum(recipe: Recipe, { vessel, conditions = {} }: RecipePlanOptions): readonly Caution[] {
  const { lies, burstS } = knownEntry("planRecipe/options/vessel", handbookHabits, vessel);
  if (!lies) return [];
  const { agitation: asked } = plainObject("planRecipe/options/conditions", conditions) as Conditions;
  const known = plainObject("planRecipe/recipe/baseline", recipe.baseline) as unknown as Recipe["baseline"];
  const given = recipe.agitation ?? known.agitation;
  if (given === undefined || (asked ?? recipe.conditions?.agitation) !== undefined) return [];
  const path = recipe.agitation === undefined ? "/baseline/agitation" : "/agitation";
  const everyS = agitationInterval(`planRecipe/recipe${path}`, given);
  if (everyS !== undefined && everyS <= burstS) return [];
  return [caution("drum-turned", "note", { path, data: { agitation: everyS ?? "stand" } })];
}

/** The recipe with the volume of stock bath that the options choose. */
function withVolume(recipe: Recipe, volumeMl: number | undefined): Recipe {
  const { developer } = recipe;
  if (volumeMl === undefined || developer.kind !== "stock") return recipe;
  return { ...recipe, developer: { ...developer, volumeMl } };
}

/** What a recipe knows of its plan. */
function recipeInput(recipe: Recipe): Omit<ProcessInput, "vessel"> {
  const { material, developer, baseline, agitation, conditions = {}, baths } = recipe;
  return {
    temperatureC: conditions.temperatureC ?? baseline.temperatureC,
    agitation: conditions.agitation ?? agitation ?? baseline.agitation,
    dilution: dilutionOf(recipe),
    volumeMl: bathMl(developer),
    developer: bathFacts(recipe),
    areaCm2: material.areaCm2,
    pieces: material.pieces,
    material: material.kind,
    iodideRich: material.iodideRich,
    emulsion: emulsionIn(recipe),
    sensitization: material.sensitization,
    baths,
  };
}

/** Where the fields of a plan are in a recipe. */
const PLACES: Readonly<Record<string, string>> = {
  areaCm2: "/material/areaCm2",
  pieces: "/material/pieces",
  material: "/material/kind",
  iodideRich: "/material/iodideRich",
  emulsion: "/material/emulsion",
  sensitization: "/material/sensitization",
};

function placedInPlan(recipe: Recipe, one: Caution, conditions: Conditions, chosen: object): Caution {
  const [, field = "", inside] = (one.path ?? "").split("/");
  if (one.path === undefined || field === "" || field === "baths") return one;
  if (field in chosen) return { ...one, path: `/options${one.path}` };
  if (field === "volumeMl")
    return { ...one, path: `/developer/${recipe.developer.kind === "brew" ? "brew/" : ""}volumeMl` };
  if (field === "developer")
    return { ...one, path: placeOf(recipe, `/conditions/${inside as string}`, conditions) };
  const place = PLACES[field] ?? placeOf(recipe, `/conditions${one.path}`, conditions);
  return { ...one, path: place };
}
