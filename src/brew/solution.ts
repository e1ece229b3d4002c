/*
 * Module: brew. What is dangerous as a powder, or too little to weigh: it comes as a solution of 10 %, and is
 * measured in millilitres.
 */
import { handbookIngredients, type Ingredient } from "../handbook/ingredients.js";
import type { ReadBrew, ReadPart } from "./brew.js";
import { gramsOf, isCaustic, isLiquid } from "./parts.js";

/** Grams in 100 ml of the solution. */
export const SOLUTION_PERCENT = 10;

/**
 * Cold water for a gram, ml. The heat of solution of caustic soda, 44.5 kJ/mol, then warms it by 27 K at
 * most. A gram in 10 ml of water makes 10 ml of solution: to 1 % with caustic soda, to 3 % with bromide (from
 * densities, from memory).
 */
export const SOLUTION_ML_PER_G: number = 100 / SOLUTION_PERCENT;

/** The least that is weighed for it, g: a kitchen scale is off by half a gram, a tenth of this (assumed). */
const LEAST_WEIGHED_G = 5;
/** What is weighed for the solution of so many grams, g. */
const weighedFor = (massG: number): number => Math.max(LEAST_WEIGHED_G, massG);

type BySolution = "sodium-hydroxide" | "potassium-bromide";
const BY_SOLUTION: ReadonlySet<Ingredient> = new Set<BySolution>(["sodium-hydroxide", "potassium-bromide"]);

/** Share of the volume that the cups may take: the rest makes up. */
export const CUPS_SHARE = 0.95;
/** Share of the water that is set aside for solutions; caustic soda has all that it needs. */
const SOLUTIONS_SHARE = 0.15;

/** Whether an ingredient is never measured as a powder. */
export const isAlwaysBySolution = (ingredient: Ingredient): ingredient is BySolution =>
  BY_SOLUTION.has(ingredient);

/** Whether so much of an ingredient is measured as a solution: a pinch of salt that no spoon measures is. */
export const isBySolution = (ingredient: Ingredient, massG: number, spooned: boolean): boolean =>
  isAlwaysBySolution(ingredient) ||
  (handbookIngredients[ingredient].role === "restrainer" && !spooned && massG < LEAST_WEIGHED_G);

/** Millilitres of the solution that hold so many grams. */
export const solutionMl = (massG: number): number => massG * SOLUTION_ML_PER_G;

/** The solution that measures what is too little for a spoon; none where it is not measured as one. */
export function smallAmount(
  ingredient: Ingredient,
  massG: number,
): { readonly solution?: { percent: number; weighedG: number; waterMl: number; ml: number } } {
  if (!isBySolution(ingredient, massG, false)) return {};
  const weighedG = weighedFor(massG);
  const ml = Number(solutionMl(massG).toPrecision(12));
  return { solution: { percent: SOLUTION_PERCENT, weighedG, waterMl: Math.ceil(solutionMl(weighedG)), ml } };
}

/** A solution that is made before the bath. */
export interface MadeSolution {
  readonly ingredient: Ingredient;
  /** grams that belong into the bath */
  readonly massG: number;
  /** what is weighed, g, and the water for it, ml */
  readonly weighedG: number;
  readonly waterMl: number;
  /** what is poured into the bath, ml */
  readonly solutionMl: number;
}

/** The water that the bath has beside the coffee, ml. */
const waterOf = ({ parts, volumeMl }: ReadBrew): number => volumeMl - gramsOf(parts.filter(isLiquid));

/** Water that caustic soda needs for itself, and what the bath has for the cups, ml. */
export function causticWater(read: ReadBrew): { readonly needMl: number; readonly haveMl: number } {
  return {
    needMl: solutionMl(gramsOf(read.parts.filter(isCaustic))),
    haveMl: CUPS_SHARE * waterOf(read),
  };
}

/** Water of a cup, ml, by its share, where solutions take so much of the bath. */
function cupMl(read: ReadBrew, share: number, solutionsMl: number): number {
  const waterMl = waterOf(read);
  const asideMl = Math.max(SOLUTIONS_SHARE * waterMl, solutionsMl);
  return (share * (CUPS_SHARE * waterMl - asideMl)) / (CUPS_SHARE - SOLUTIONS_SHARE);
}

/** The solutions of a brew, the parts that go into the bath as powder, and the water of their cups. */
export function solutionsOf(read: ReadBrew): {
  readonly solutions: readonly MadeSolution[];
  readonly powders: readonly ReadPart[];
  readonly cupMl: (share: number) => number;
  /** what the cups may have together, ml */
  readonly restMl: number;
} {
  const { needMl } = causticWater(read);
  // So much restrainer that its solution would take more than its share goes in as powder: no bath needs it.
  const mostMl = cupMl(read, SOLUTIONS_SHARE, needMl);
  const isIn = (part: ReadPart): boolean => {
    const { ingredient } = part;
    const lots = read.parts.filter((one) => one.ingredient === ingredient);
    const massG = gramsOf(lots);
    const spooned = lots.some(({ spoons }) => spoons !== undefined);
    return isCaustic(part) || (isBySolution(ingredient, massG, spooned) && solutionMl(massG) <= mostMl);
  };
  const dissolved = read.parts.filter(isIn);
  const solutions = [...new Set(dissolved.map(({ ingredient }) => ingredient))].map((ingredient) => {
    const massG = gramsOf(dissolved.filter((part) => part.ingredient === ingredient));
    const weighedG = weighedFor(massG);
    return {
      ingredient,
      massG,
      weighedG,
      waterMl: Math.ceil(solutionMl(weighedG)),
      solutionMl: solutionMl(massG),
    };
  });
  const takenMl = solutions.reduce((sum, made) => sum + made.solutionMl, 0);
  return {
    solutions,
    powders: read.parts.filter((part) => !isIn(part)),
    cupMl: (share) => cupMl(read, share, takenMl),
    restMl: Math.max(0, CUPS_SHARE * waterOf(read) - takenMl),
  };
}
