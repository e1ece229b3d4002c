/* Shelves at random: a sound brew, or the one thing that is missing. */
import { describe, expect } from "vitest";
import { test, fc } from "../property.js";
import {
  handbookIngredients,
  type Ingredient,
  type ShelfItem,
  type BrewMaterial,
  proposeBrew,
  checkBrew,
  brewCapacity,
} from "../../src/index.js";
import { badProposal } from "./proposals.js";

describe("any shelf", () => {
  const names = Object.keys(handbookIngredients) as Ingredient[];
  const shelves = fc
    .subarray(names)
    .map((shelf): ShelfItem[] =>
      shelf.map((ingredient) =>
        ingredient === "ascorbic-acid-tablet" ? { ingredient, labelMg: 500 } : ingredient,
      ),
    );
  const anyUse = fc.record({
    volumeMl: fc.constantFrom(150, 250, 400, 1000, 3000),
    temperatureC: fc.constantFrom(5, 14, 20, 30),
    material: fc.constantFrom<BrewMaterial>("film", "plate", "paper"),
    spoonMl: fc.constantFrom(undefined, 5, 15),
  });
  test.prop([shelves, anyUse], { numRuns: 300 })("gives a sound brew, or a reason", (shelf, use) => {
    expect(badProposal(proposeBrew({ shelf, ...use }))).toBeUndefined();
  });
  test.prop([shelves, anyUse], { numRuns: 200 })(
    "gives a brew once what it asks for is there",
    (shelf, use) => {
      let items: readonly ShelfItem[] = shelf;
      let { temperatureC } = use;
      for (let turn = 0; turn < 6; turn += 1) {
        const proposed = proposeBrew({ ...use, shelf: items, temperatureC });
        if (proposed.brew !== undefined) return;
        if (proposed.add === "warm-water") temperatureC += 8;
        else if (proposed.add === "cool-water") temperatureC -= 8;
        else items = [...items, proposed.add as Ingredient];
      }
      throw new Error("still no brew");
    },
  );
  test.prop([shelves, anyUse])(
    "never proposes what checkBrew stops, nor caustic soda as the only alkali",
    (shelf, use) => {
      const proposed = proposeBrew({ shelf, ...use });
      if (proposed.brew === undefined) return;
      const { brew, cautions } = proposed;
      const softEmulsion = use.material === "plate";
      expect(checkBrew(brew, { softEmulsion }).filter(({ severity }) => severity === "stop")).toEqual([]);
      expect(cautions.filter(({ severity }) => severity === "stop")).toEqual([]);
      const alkalis = brew.ingredients.filter(
        ({ ingredient }) => handbookIngredients[ingredient].role === "alkali",
      );
      expect(alkalis.map(({ ingredient }) => ingredient)).not.toEqual(["sodium-hydroxide"]);
    },
  );
  test.prop([shelves])("twice the bath is twice of everything, and develops twice as much", (shelf) => {
    const [one, two] = [500, 1000].map((volumeMl) => proposeBrew({ shelf, volumeMl }));
    if (one!.brew === undefined || two!.brew === undefined) return;
    expect(two!.capacityCm2 / one!.capacityCm2).toBeCloseTo(
      (2 * brewCapacity(two!.brew).cm2PerL) / brewCapacity(one!.brew).cm2PerL,
      9,
    );
  });
});
