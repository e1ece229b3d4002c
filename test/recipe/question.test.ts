/* What a recipe asks of compensate: the same time, for functions that take no recipe. */
import { describe, expect, it } from "vitest";
import { compensate, compensateRecipe, recipeQuestion, steer, type Recipe } from "../../src/index.js";

// Invented.
const brewed: Recipe = {
  schemaVersion: 2,
  material: { name: "plate", kind: "plate" },
  developer: {
    kind: "brew",
    brew: {
      volumeMl: 500,
      ingredients: [
        { ingredient: "instant-coffee", massG: 20 },
        { ingredient: "soda-anhydrous", massG: 27 },
      ],
    },
  },
  agitation: { everyS: 30 },
  baseline: { timeS: 900, temperatureC: 20, agitation: { everyS: 60 } },
  conditions: { temperatureC: 17, ageH: 0.5 },
};
const stock: Recipe = {
  ...brewed,
  material: { name: "film" },
  developer: { kind: "stock", name: "hut stock", dilution: "1+9", hydroquinone: true },
};

describe("recipeQuestion", () => {
  it.each([
    ["a brew", brewed],
    ["a stock", stock],
  ])("asks for the time of %s", (_, recipe) => {
    for (const conditions of [{}, { temperatureC: 14 }, { agitation: "continuous" as const }]) {
      const { baseline, conditions: today, knowledge } = recipeQuestion(recipe, conditions);
      const { timeS, lowS, highS } = compensateRecipe(recipe, conditions);
      expect(compensate(baseline, today, knowledge)).toMatchObject({ timeS, lowS, highS });
      const log = [{ timeS: 60, temperatureC: today.temperatureC as number }];
      expect(steer({ baseline, conditions: today, knowledge, log }).total.timeS).toBeGreaterThan(0);
    }
  });
  it("brings what the recipe says elsewhere", () => {
    expect(recipeQuestion(brewed).baseline).toMatchObject({ emulsion: "soft", hydroquinone: false });
    expect(recipeQuestion(brewed).knowledge.age?.kind).toBe("life");
    expect(recipeQuestion(stock).baseline).toMatchObject({ dilution: "1+9", hydroquinone: true });
    expect(recipeQuestion(stock).conditions).toMatchObject({ dilution: "1+9", agitation: { everyS: 30 } });
  });
  it.each<[string, object, string]>([
    ["a known time", { baseline: { timeS: NaN, temperatureC: 20 } }, "/recipe/baseline/timeS"],
    ["an emulsion", { material: { name: "film", emulsion: Infinity } }, "/recipe/material/emulsion"],
  ])("refuses %s that JSON cannot hold, at its place", (_, spoilt, path) => {
    expect(() => recipeQuestion({ ...stock, ...spoilt })).toThrow(expect.objectContaining({ path }));
  });
  it("hands on what is out of range, for compensate to refuse", () => {
    const hot = recipeQuestion(stock, { temperatureC: 300 });
    expect(hot.conditions.temperatureC).toBe(300);
    expect(() => compensate(hot.baseline, hot.conditions, hot.knowledge)).toThrow(RangeError);
  });
  it("refuses what is no recipe", () => {
    expect(() => recipeQuestion(5 as never)).toThrow(TypeError);
    expect(() => recipeQuestion({ ...stock, developer: null } as never)).toThrow(TypeError);
    expect(() => recipeQuestion({ ...stock, material: 1 } as never)).toThrow(TypeError);
    expect(() => recipeQuestion(stock, 5 as never)).toThrow(TypeError);
  });
});
