/*
 * Room: recipe. From the version before to the current one.
 */
import type { Recipe } from "./types.js";
import { RECIPE_VERSION } from "./types.js";

/** A recipe of version 1, already read by its schema. */
export interface OlderRecipe extends Omit<Recipe, "schemaVersion" | "material" | "baseline"> {
  readonly schemaVersion: 1;
  readonly film: string;
  readonly baseline: Omit<Recipe["baseline"], "timeS"> & { readonly timeMin: number };
}

/** The same recipe in the current version. */
export function migrate({ film, baseline: { timeMin, ...known }, ...rest }: OlderRecipe): Recipe {
  // Fifteen digits: 8.55 × 60 is 513.0000000000001 in doubles, and 513 on paper.
  const timeS = Number((timeMin * 60).toPrecision(15));
  return { ...rest, schemaVersion: RECIPE_VERSION, material: { name: film }, baseline: { timeS, ...known } };
}
