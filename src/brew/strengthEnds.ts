/*
 * Module: brew. The ranges that two brews bring into a comparison, each by its two ends.
 */
import { COFFEE_RANGES, MIDDLE_COFFEE, type CoffeePick } from "./bath.js";
import type { ReadBrew, ReadPart } from "./brew.js";
import { isCoffee } from "./parts.js";

/** Which end of its ranges each part of a brew is taken at. */
export interface Ends {
  readonly coffee?: (part: ReadPart) => CoffeePick;
  readonly mass?: (part: ReadPart) => number;
}

/** The ends of each coffee's ranges: one kind is one jar, two kinds know nothing of each other. */
export function coffeeEnds(of: readonly ReadBrew[]): readonly (readonly [Ends, Ends])[] {
  const kinds = new Set(of.flatMap(({ parts }) => parts.filter(isCoffee).map((p) => p.ingredient)));
  return [...kinds].flatMap((kind) =>
    COFFEE_RANGES.map(([low, high]): readonly [Ends, Ends] => {
      const at = (end: CoffeePick): Ends => ({
        coffee: ({ ingredient }) => (ingredient === kind ? end : MIDDLE_COFFEE),
      });
      return [at(low), at(high)];
    }),
  );
}

/**
 * The ends of each spooned ingredient: one spoon, filled alike, is off by the same share wherever it is used.
 */
export function spoonEnds(of: readonly ReadBrew[]): readonly (readonly [Ends, Ends])[] {
  const spooned = new Set(
    of.flatMap(({ parts }) => parts.filter(({ lowG, highG }) => lowG < highG).map((part) => part.ingredient)),
  );
  return [...spooned].map((name): readonly [Ends, Ends] => {
    const at = (end: "lowG" | "highG"): Ends => ({
      mass: (part) => (part.ingredient === name ? part[end] : part.massG),
    });
    return [at("lowG"), at("highG")];
  });
}
