/*
 * Module: brew. Grams into what a kitchen can measure: quarter spoons, half tablets, millilitres of a
 * solution.
 */
import type { Caution } from "../core/caution.js";
import type { HandbookRange, Ingredient } from "../handbook/ingredients.js";
import type { BrewPart } from "./brew.js";
import {
  isAlwaysBySolution,
  isBySolution,
  SOLUTION_ML_PER_G,
  SOLUTION_PERCENT,
  solutionMl,
} from "./solution.js";
import { spoonsFor } from "./spoonsFor.js";

/** How much of an ingredient to take, in grams and in what a kitchen can measure. */
export interface SpoonedAmount {
  /** what is measured */
  readonly ingredient: Ingredient;
  /** grams that belong into the brew */
  readonly massG: number;
  /** level spoons, a multiple of a quarter; tablets, liquids and what is measured as a solution have none */
  readonly spoons?: number;
  /** the volume of such a spoon, ml */
  readonly spoonMl?: number;
  /** grams that so many spoons may hold */
  readonly heldG?: HandbookRange;
  /** millilitres of a solution, a multiple of a half: it is made first, see {@link mixingSteps} */
  readonly solutionMl?: number;
  /** g in 100 ml of that solution */
  readonly solutionPercent?: number;
  /** millilitres of brewed coffee, a multiple of a half: a liquid goes by the jug */
  readonly volumeMl?: number;
  /** tablets, a multiple of a half */
  readonly tablets?: number;
  /** mg of vitamin C in one tablet, by its label */
  readonly labelMg?: number;
}

/** Above this error of rounding to quarter spoons the grams follow the spoons. */
const MOST_ROUNDING = 0.1;
const STEP = 0.25;
/** What a medicine syringe or a small measure tells apart, ml (assumed). */
const SOLUTION_STEP_ML = 0.5;
/** The same for a liquid. */
const LIQUID_STEP_ML = SOLUTION_STEP_ML;

/** An amount as it is measured, and the part of the brew that it makes; with ranges where it is spooned. */
export function measured(
  part: BrewPart,
  spoonMl: number,
  spooned: boolean,
): {
  readonly part: BrewPart;
  readonly amount: SpoonedAmount;
  /** that no spoon measures so little */
  readonly cautions?: readonly Caution[];
} {
  if (part.ingredient === "ascorbic-acid-tablet") {
    const { ingredient, tablets, labelMg } = part;
    return { part, amount: { ingredient, massG: (tablets * labelMg) / 1000, tablets, labelMg } };
  }
  const { ingredient, massG } = part;
  if (ingredient === "brewed-coffee") {
    // A millilitre is a gram.
    const volumeMl = Math.max(1, Math.round(massG / LIQUID_STEP_ML)) * LIQUID_STEP_ML;
    return { part: { ingredient, massG: volumeMl }, amount: { ingredient, massG: volumeMl, volumeMl } };
  }
  const filled = isAlwaysBySolution(ingredient)
    ? undefined
    : spoonsFor({ ingredient, massG, spoonMl, stepSpoons: STEP });
  const cautions = filled?.cautions.filter(({ code }) => code === "spoon-too-large") ?? [];
  if (filled === undefined || isBySolution(ingredient, massG, cautions.length === 0)) {
    const steps = Math.max(1, Math.round(solutionMl(massG) / SOLUTION_STEP_ML));
    const ml = steps * SOLUTION_STEP_ML;
    const inItG = ml / SOLUTION_ML_PER_G;
    return {
      part: { ingredient, massG: inItG },
      amount: { ingredient, massG: inItG, solutionMl: ml, solutionPercent: SOLUTION_PERCENT },
    };
  }
  const { spoons, massG: heldG } = filled;
  const followedG = follow(massG, heldG.value);
  const amount = { ingredient, massG: followedG, spoons, spoonMl, heldG };
  const range = spooned
    ? { lowG: Math.min(followedG, heldG.low), highG: Math.max(followedG, heldG.high) }
    : {};
  return { part: { ingredient, massG: followedG, ...range, spoons, spoonMl }, amount, cautions };
}

/** Grams as wanted, or as the spoons hold them where that is far off. */
const follow = (massG: number, heldG: number): number =>
  Math.abs(heldG / massG - 1) > MOST_ROUNDING ? heldG : massG;
