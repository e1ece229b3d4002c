import { REPEAT_LOG_SD } from "../core/estimate.js";
import { notOneOf, plainObject } from "../core/guards.js";
import { inNameOf } from "../core/inNameOf.js";
import { learn, type LearnOptions } from "../learning/learn.js";
import { startKnowledge, type StartOptions } from "../learning/startKnowledge.js";
import { ownFields } from "../learning/stored.js";
import type { DevelopmentRun, LearnedKnowledge } from "../learning/types.js";
import { placeOf } from "./places.js";
import { recipeInputs } from "./recipeTime.js";
import { RECIPE_VERSION, type Recipe } from "./types.js";

/**
 * A recipe that has learned from runs.
 *
 * @param recipe - a recipe that {@link checkRecipe} has passed; what it has learned before stays
 * @param runs - developments by this recipe and how they came out, as `learn` and `readRunNotes` have them
 * @param options - `today`, to refuse runs dated later
 * @returns the recipe with learned `knowledge`, for {@link compensateRecipe}, {@link planRecipe} and
 * `formatRecipe`; the recipe that was given is not changed
 * @throws TypeError or RangeError as `learn` does, and as {@link compensateRecipe} does for a recipe that was
 * not checked
 *
 * @remarks The known time has the dilution and agitation of the recipe where it names none of its own. It is
 * taken as known to 4 %, as {@link compensateRecipe} takes it; one that was printed by a maker is not, and
 * `baseline.logSd` says so (0.2 for a maker's time). Runs that contradict it widen that. Where the known time
 * of a recipe was changed since it learned, all its runs are fitted anew from that.
 *
 * @example
 * ```ts
 * const recipe: Recipe = {
 *   schemaVersion: 2,
 *   material: { name: "plate" },
 *   developer: { kind: "stock", name: "hut stock", dilution: "1+9" },
 *   baseline: { timeS: 510, temperatureC: 20, logSd: 0.2 },
 * };
 * const run: DevelopmentRun = { timeS: 600, temperatureC: 20, outcome: { kind: "good" } };
 * compensateRecipe(learnRecipe(recipe, [run])).timeS // => 567.7
 * ```
 */
export function learnRecipe(
  recipe: Recipe,
  runs: readonly DevelopmentRun[],
  options: LearnOptions = {},
): Recipe {
  plainObject("learnRecipe/recipe", recipe);
  if ((recipe.schemaVersion as unknown) !== RECIPE_VERSION)
    notOneOf("learnRecipe/recipe/schemaVersion", [RECIPE_VERSION], recipe.schemaVersion);
  for (const part of ["developer", "material", "baseline"] as const)
    plainObject(`learnRecipe/recipe/${part}`, recipe[part]);
  const start = known(recipe);
  return { ...recipe, knowledge: inNameOf("learnRecipe", () => learn(start, runs, options), inRecipe) };
}

/** What the recipe has learned, where that is of its known time; else what its runs say from there. */
function known(recipe: Recipe): LearnedKnowledge {
  const { learned, otherBaseline } = recipeInputs("learnRecipe/recipe", recipe);
  if (learned === undefined) return startOf(recipe);
  if (otherBaseline === undefined) return learned;
  const { laws, noise } = learned.prior;
  const own = ownFields("learnRecipe/recipe/knowledge", learned);
  return learn(startOf({ ...recipe, knowledge: { ...laws, ...own } }, { noise }), learned.runs);
}

/** Knowledge before the first run. */
function startOf(recipe: Recipe, options: StartOptions = {}): LearnedKnowledge {
  const { baseline, knowledge: laws } = recipeInputs("learnRecipe/recipe", recipe);
  const { logSd: baseLogSd = REPEAT_LOG_SD } = baseline;
  const own = ownFields("learnRecipe/recipe/knowledge", recipe.knowledge ?? {});
  const start = inNameOf(
    "learnRecipe/recipe",
    () => startKnowledge(baseline, { ...options, baseLogSd, laws }),
    (path) =>
      placeOf(
        recipe,
        path.replace("/options/baseLogSd", "/baseline/logSd").replace("/options/laws", "/knowledge"),
      ),
  );
  return { ...start, ...own };
}

/** Where `learn` finds what the recipe and the caller have. */
const inRecipe = (path: string): string => path.replace(/^\/knowledge/, "/recipe/knowledge");
