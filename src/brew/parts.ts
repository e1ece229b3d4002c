/*
 * Module: brew. What a part of a brew is, and how much of each there is: asked here by everything that asks.
 */
import type { Ingredient } from "../handbook/ingredients.js";
import type { ReadBrew, ReadPart } from "./brew.js";

export const isCaustic = ({ ingredient }: ReadPart): boolean => ingredient === "sodium-hydroxide";
/** Coffee of any kind: it brings solids whose make-up is known by a range only. */
export const isCoffee = ({ data }: Pick<ReadPart, "data">): boolean => data.solids !== undefined;
/** Vitamin C of any kind. */
export const isVitaminC = ({ data }: ReadPart): boolean => data.moles?.ascorbate !== undefined;
/** What frees gas from soda, and comes last. */
export const isAcid = (part: Pick<ReadPart, "data">): boolean =>
  part.data.moles?.ascorbate !== undefined || part.data.role === "acid";
/** What goes by the jug, and brings its own water. */
export const isLiquid = ({ ingredient }: ReadPart): boolean => ingredient === "brewed-coffee";

/** Grams of some parts together. */
export const gramsOf = (parts: readonly ReadPart[]): number =>
  parts.reduce((sum, { massG }) => sum + massG, 0);

/** Grams a litre of each ingredient. */
export function gramsByIngredient({ parts, volumeMl }: ReadBrew): ReadonlyMap<Ingredient, number> {
  const sums = new Map<Ingredient, number>();
  for (const { ingredient, massG } of parts)
    sums.set(ingredient, (sums.get(ingredient) ?? 0) + (massG * 1000) / volumeMl);
  return sums;
}
