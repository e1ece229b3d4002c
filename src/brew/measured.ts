/*
 * Module: brew. Grams into what a kitchen can measure: quarter spoons, half tablets, a 10 % solution.
 */
import type { Caution } from "../core/caution.js";
import { handbookIngredients, type HandbookRange, type Ingredient } from "../handbook/ingredients.js";
import type { BrewPart } from "./brew.js";
import { spoonsFor } from "./spoonsFor.js";

/** How much of an ingredient to take, in grams and in what a kitchen can measure. */
export interface SpoonedAmount {
  /** what is measured */
  readonly ingredient: Ingredient;
  /** grams that belong into the brew */
  readonly massG: number;
  /** level spoons, a multiple of a quarter; tablets have none */
  readonly spoons?: number;
  /** the volume of such a spoon, ml */
  readonly spoonMl?: number;
  /** grams that so many spoons may hold */
  readonly heldG?: HandbookRange;
  /** the spoons hold a solution of so many g in 100 ml, mixed beforehand, instead of the powder */
  readonly solutionPercent?: number;
  /** tablets, a multiple of a half */
  readonly tablets?: number;
  /** mg of vitamin C in one tablet, by its label */
  readonly labelMg?: number;
}

/** Above this error of rounding to quarter spoons the grams follow the spoons. */
const MOST_ROUNDING = 0.1;
const STEP = 0.25;
/** Small or dangerous amounts are measured as a solution that was mixed once; so is a pinch of salt. */
const BY_SOLUTION: ReadonlySet<Ingredient> = new Set(["potassium-bromide", "sodium-hydroxide"]);
const SOLUTION_PERCENT = 10;

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
  const filled = spoonsFor({ ingredient, massG, spoonMl, stepSpoons: STEP });
  const cautions = filled.cautions.filter(({ code }) => code === "spoon-too-large");
  const ofRestrainer = handbookIngredients[ingredient].role === "restrainer";
  if (BY_SOLUTION.has(ingredient) || (ofRestrainer && cautions.length > 0)) {
    const perSpoonG = (spoonMl * SOLUTION_PERCENT) / 100;
    const spoons = STEP * Math.max(1, Math.round(massG / (perSpoonG * STEP)));
    const followedG = follow(massG, spoons * perSpoonG);
    return {
      part: { ingredient, massG: followedG },
      amount: { ingredient, massG: followedG, spoons, spoonMl, solutionPercent: SOLUTION_PERCENT },
    };
  }
  const { spoons, massG: heldG } = filled;
  const followedG = follow(massG, heldG.value);
  const amount = { ingredient, massG: followedG, spoons, spoonMl, heldG };
  // A liquid goes by the jug.
  const spoonful = ingredient === "brewed-coffee" ? {} : { spoons, spoonMl };
  const range = spooned
    ? { lowG: Math.min(followedG, heldG.low), highG: Math.max(followedG, heldG.high) }
    : {};
  return { part: { ingredient, massG: followedG, ...range, ...spoonful }, amount, cautions };
}

/** Grams as wanted, or as the spoons hold them where that is far off. */
const follow = (massG: number, heldG: number): number =>
  Math.abs(heldG / massG - 1) > MOST_ROUNDING ? heldG : massG;
