/*
 * What the laws make of a recipe: its time, before anything is said of the bath itself.
 */
import { lifeCautions, lifeOfBrew } from "../bath/lifeOfBrew.js";
import { causes } from "../causes.js";
import { sameBaseline } from "../compensate/joint.js";
import { prepared } from "../compensate/loop.js";
import { meantCautions } from "../compensate/meantCautions.js";
import type { Baseline, Compensation, Conditions, Knowledge } from "../compensate/types.js";
import { gravestFirst, refuses, type Caution } from "../core/caution.js";
import type { AnyCause } from "../core/cause.js";
import { plainObject, positive } from "../core/guards.js";
import { present } from "../core/ordered.js";
import { doubtsOf } from "../learning/doubts.js";
import { derived } from "../learning/stored.js";
import type { LearnedKnowledge } from "../learning/types.js";
import { covering } from "../age/ownAge.js";
import { mixingLogSd } from "./mixingLogSd.js";
import { placed } from "./places.js";
import { emulsionIn, useIn } from "./recipeCautions.js";
import type { Recipe } from "./types.js";

/** What `compensate` is asked for a recipe. */
export interface RecipeInputs {
  readonly baseline: Baseline;
  readonly conditions: Conditions;
  readonly knowledge: Knowledge;
  /** what was learned, worked out from its prior and its runs */
  readonly learned?: LearnedKnowledge;
  /** where stored knowledge does not follow from its runs */
  readonly cautions: readonly Caution[];
  /** what was doubted when the known time was learned */
  readonly doubts?: readonly Caution[];
  /** the known time is not the one that was learned */
  readonly otherBaseline?: true;
}

/** Whether knowledge holds a prior and runs, from which it is worked out. */
export function isLearned(knowledge: Knowledge | undefined): knowledge is LearnedKnowledge {
  return (
    typeof knowledge === "object" &&
    (knowledge as unknown) !== null &&
    "prior" in knowledge &&
    "runs" in knowledge
  );
}

/** The known time, today's conditions and the laws of a recipe; `at` is the place of the recipe. */
export function recipeInputs(
  at: string,
  recipe: Recipe,
  conditions: Conditions = {},
  list: readonly AnyCause[] = causes,
): RecipeInputs {
  const { developer, agitation, knowledge = {} } = recipe;
  const brew = developer.kind === "brew" ? developer.brew : undefined;
  const mixing = brew === undefined ? undefined : mixingLogSd(brew);
  // As the laws call it, which find it there.
  plainObject(at.replace(/\/.*/, ""), recipe.baseline, "/baseline");
  if (recipe.conditions !== undefined) plainObject(`${at}/conditions`, recipe.conditions);
  plainObject(`${at}/knowledge`, knowledge);
  // None of the ingredients of a brew is hydroquinone.
  const hydroquinone = developer.hydroquinone ?? (developer.kind === "brew" ? false : undefined);
  const own = {
    ...(developer.kind === "stock" ? { dilution: developer.dilution } : {}),
    ...(agitation === undefined ? {} : { agitation }),
  };
  const emulsion = emulsionIn(recipe);
  const baseline: Baseline = {
    ...own,
    ...present(recipe.baseline),
    ...(hydroquinone === undefined ? {} : { hydroquinone }),
    ...(emulsion === undefined ? {} : { emulsion }),
  };
  const asked = { ...own, ...present(recipe.conditions ?? {}), ...present(conditions) };
  if (!isLearned(knowledge)) {
    const age = covering(knowledge.age ?? lifeOfBrew(brew, baseline.ageH), developer.keepingLimitH);
    const batchLogSd = knowledge.batchLogSd ?? mixing;
    const laws = { ...present(knowledge), ...present({ age, use: useIn(recipe), batchLogSd }) };
    return { baseline, conditions: asked, knowledge: laws, cautions: [] };
  }
  const { now, cautions } = derived(`${at}/knowledge`, knowledge);
  const laws = { batchLogSd: mixing, ...now, age: covering(now.age, developer.keepingLimitH) };
  if (!isKnown(baseline, now.baseline, list) && !isKnown(baseline, now.prior.baseline, list))
    return { baseline, conditions: asked, knowledge: laws, learned: now, cautions, otherBaseline: true };
  // The recipe's known time is the one that was learned: what the runs made of it goes before what is
  // written.
  const learned = { ...baseline, ...now.baseline };
  return {
    baseline: learned,
    conditions: asked,
    knowledge: { ...laws, joint: { ...now.joint, baseline: learned } },
    learned: now,
    cautions,
    doubts: doubtsOf(now),
  };
}

/**
 * Whether a known time is the one of some knowledge: the conditions that the knowledge names or that silence
 * gives, and the time to rounding.
 */
function isKnown(given: Baseline, known: Baseline, list: readonly AnyCause[]): boolean {
  const open = list.filter(({ field, start }) => field in known || start !== undefined);
  return sameBaseline(started(given, open), started(known, open), open);
}

/** A baseline with what its silence means. */
function started(baseline: Baseline, list: readonly AnyCause[]): Baseline {
  const silence = list.flatMap(({ field, start, relative }) =>
    start === undefined || relative === true ? [] : [[field, start as unknown] as const],
  );
  return { ...(Object.fromEntries(silence) as object), ...present(baseline) };
}

/** The answer of `compensate` to a recipe, its cautions with their paths in the recipe. */
export function recipeTime(
  recipe: Recipe,
  given: Conditions = {},
  list: readonly AnyCause[] = causes,
): Compensation {
  plainObject("compensateRecipe/recipe", recipe);
  plainObject("compensateRecipe/conditions", given);
  const { developer, material } = recipe;
  plainObject("compensateRecipe/recipe/developer", developer);
  plainObject("compensateRecipe/recipe/material", material);
  // A recipe that is compensated may never have been checked.
  const { keepingLimitH = 1 } = developer;
  positive("compensateRecipe/recipe/developer/keepingLimitH", keepingLimitH, 1e6, "ageH");
  const { areaCm2 = 1 } = material;
  const { volumeMl = 1 } = developer.kind === "stock" ? developer : {};
  positive("compensateRecipe/recipe/material/areaCm2", areaCm2, 1e6, "areaCm2");
  positive("compensateRecipe/recipe/developer/volumeMl", volumeMl, 1e6, "volumeMl");
  const inputs = recipeInputs("compensateRecipe/recipe", recipe, given, list);
  const { baseline, conditions, knowledge, cautions, doubts = [] } = inputs;
  const ask = prepared("compensateRecipe", list, baseline, knowledge);
  const answer = ask.answer(conditions);
  const meant = meantCautions(answer.cautions, {
    material: material.kind,
    capacityKnown:
      developer.kind === "brew" ||
      developer.volumeMl !== undefined ||
      developer.capacityCm2PerL !== undefined,
    keepingKnown: developer.keepingLimitH !== undefined,
  });
  const side = conditions.ageH === undefined ? baseline : conditions;
  const lives = lifeCautions(answer, {
    brew: developer.kind === "brew" ? developer.brew : undefined,
    age: knowledge.age,
    ageH: side.ageH ?? 0,
  }).map((one) => ({ ...one, path: side === baseline ? "/baseline/ageH" : "/conditions/ageH" }));
  const inRecipe = [...meant, ...lives].map((one) => placed(recipe, one, given));
  const all = gravestFirst([...cautions, ...doubts, ...inRecipe]);
  return { ...answer, refused: refuses(all), cautions: all };
}
