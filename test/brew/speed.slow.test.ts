import { describe, expect, it } from "vitest";
import { brewPh, handbookIngredients, type BrewPart, type Ingredient } from "../../src/index.js";
import { bestOf } from "../processorTime.js";

describe("the time that an equilibrium takes", () => {
  // Each range of an amount is two more equilibria.
  const cupboard = (Object.keys(handbookIngredients) as Ingredient[]).map((ingredient): BrewPart =>
    ingredient === "ascorbic-acid-tablet"
      ? { ingredient, tablets: 4, labelMg: 500 }
      : { ingredient, massG: 10, lowG: 6, highG: 16 },
  );
  it("is below 2 ms for 20 ingredients by the spoon", () => {
    expect(cupboard.length).toBeGreaterThanOrEqual(20);
    const brew = { volumeMl: 1000, ingredients: cupboard };
    expect(bestOf(200, () => brewPh(brew))).toBeLessThan(2);
  });
});
