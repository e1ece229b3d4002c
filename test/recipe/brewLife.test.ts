/* A brew must live until the pour-out: in a recipe by itself, in compensate by the strength that carries its life. */
import { describe, expect, it } from "vitest";
import {
  brewLife,
  brewStrength,
  checkRecipe,
  compensate,
  compensateRecipe,
  startKnowledge,
  type Caution,
  type DeveloperBrew,
  type Recipe,
} from "../../src/index.js";

// A little vitamin C in soda lives a quarter of an hour: see test/brew/lifeAndCapacity.test.ts.
const weak: DeveloperBrew = {
  volumeMl: 1000,
  ingredients: [
    { ingredient: "soda-anhydrous", massG: 54 },
    { ingredient: "ascorbic-acid", massG: 2 },
  ],
};
// Coffee, vitamin C and soda: an ordinary brew.
const ordinary: DeveloperBrew = {
  volumeMl: 1000,
  ingredients: [
    { ingredient: "soda-anhydrous", massG: 54 },
    { ingredient: "instant-coffee", massG: 40 },
    { ingredient: "ascorbic-acid", massG: 16 },
  ],
};
const recipeOf = (brew: DeveloperBrew, minutes: number, more: Partial<Recipe> = {}): Recipe => ({
  schemaVersion: 2,
  // A soft plate does not bear so much soda.
  material: { name: "plate", kind: "plate", emulsion: "hardened" },
  developer: { kind: "brew", brew },
  baseline: { timeS: 60 * minutes, temperatureC: 20 },
  ...more,
});
const past = (cautions: readonly Caution[]): readonly Caution[] =>
  cautions.filter(({ code }) => code === "bath-past-life");
const lifeMin = 60 * brewLife(weak).lifeH;

describe("a recipe with a brew has the brew's life", () => {
  it("stops where age and time go past it, and warns where the upper end does", () => {
    const stop = compensateRecipe(recipeOf(weak, lifeMin + 3));
    expect(stop.refused).toBe(true);
    expect(past(stop.cautions)).toMatchObject([
      { severity: "stop", limit: brewLife(weak).lifeH, data: { at: "pour-out" } },
    ]);
    const warned = checkRecipe(recipeOf(weak, lifeMin - 1));
    expect(warned.ok && past(warned.cautions)).toMatchObject([{ severity: "warn" }]);
    expect(past(compensateRecipe(recipeOf(weak, lifeMin / 2)).cautions)).toEqual([]);
  });
  it("passes an ordinary brew that is used within the hour, without a word", () => {
    for (const [ageMin, minutes] of [
      [10, 15],
      [30, 30],
      [60, 40],
    ] as const) {
      const conditions = { ageH: ageMin / 60 };
      const checked = checkRecipe(recipeOf(ordinary, minutes, { conditions }));
      expect(checked.ok && past(checked.cautions)).toEqual([]);
    }
  });
  it("warns where it may fail before the long end: an ordinary brew from 1 h 30 min on", () => {
    const mayFail = (ageH: number, minutes: number): readonly Caution[] => {
      const checked = checkRecipe(recipeOf(ordinary, minutes, { conditions: { ageH } }));
      if (!checked.ok) throw new Error("no recipe");
      return checked.cautions.filter(({ code }) => code === "bath-may-fail" || code === "bath-past-life");
    };
    // Within the hour and well past it without a word; 40 min from an hour on end at 1 h 43 min.
    expect(mayFail(10 / 60, 15)).toEqual([]);
    expect(mayFail(0.5, 30)).toEqual([]);
    expect(mayFail(1, 20)).toEqual([]);
    expect(mayFail(1, 40)).toMatchObject([
      { severity: "warn", code: "bath-may-fail", limit: expect.closeTo(1.5, 9), data: { at: "pour-out" } },
    ]);
    // Said once, though checkBrew warns past three quarters of a life too.
    expect(mayFail(2.5, 15)).toMatchObject([
      { severity: "warn", code: "bath-may-fail", path: "/conditions/ageH", data: { at: "pour-in" } },
    ]);
    expect(mayFail(2.5, 60)).toMatchObject([{ severity: "stop", code: "bath-past-life" }]);
  });
  it("unless it states a law of age", () => {
    const knowledge = { age: { kind: "life", lifeH: 5 } } as const;
    expect(compensateRecipe(recipeOf(weak, lifeMin + 3, { knowledge })).refused).toBe(false);
  });
  it("also where its knowledge is learned, and no run was in an aged bath", () => {
    const start = startKnowledge({ timeS: 60 * (lifeMin + 3), temperatureC: 20 });
    const { baseline } = start;
    const recipe = recipeOf(weak, lifeMin + 3, { baseline, knowledge: start });
    expect(past(compensateRecipe(recipe).cautions)).toMatchObject([{ severity: "stop" }]);
  });
});

describe("a strength carries the life of today's brew", () => {
  const strength = brewStrength(weak, weak);
  const baseline = { timeS: 60 * (lifeMin + 3), temperatureC: 20 };
  it("into compensate, which stops a bath that dies before its time", () => {
    expect(strength.lifeH).toBe(brewLife(weak).lifeH);
    const answer = compensate(baseline, { temperatureC: 20, strength });
    expect(answer.refused).toBe(true);
    expect(past(answer.cautions)).toMatchObject([{ severity: "stop", limit: strength.lifeH }]);
    const old = compensate({ ...baseline, timeS: 60 }, { strength, ageH: strength.lifeH + 0.1 });
    expect(past(old.cautions)).toMatchObject([{ severity: "stop", path: "/conditions/ageH" }]);
  });
  it("and gives way to an own law of age", () => {
    const age = { kind: "life", lifeH: 5 } as const;
    expect(past(compensate(baseline, { strength }, { age }).cautions)).toEqual([]);
    const without = { ...strength, lifeH: undefined };
    expect(past(compensate(baseline, { strength: without }).cautions)).toEqual([]);
  });
  it("and the age from which it may fail", () => {
    const brewed = brewStrength(ordinary, ordinary);
    expect(brewed.lifeLowH).toBe(brewLife(ordinary).lowH);
    const codes = (ageH: number): string[] =>
      compensate({ timeS: 900, temperatureC: 20 }, { strength: brewed, ageH })
        .cautions.map(({ code }) => code)
        .filter((code) => /^bath-/.test(code));
    expect(codes(1)).toEqual([]);
    expect(codes(1.5)).toEqual(["bath-may-fail"]);
    expect(() => compensate(baseline, { strength: { ...strength, lifeLowH: 1e3 } })).toThrow(
      expect.objectContaining({ path: "/conditions/strength/lifeLowH" }),
    );
  });
  it("refuses a wrong life", () => {
    expect(() => compensate(baseline, { strength: { ...strength, lifeH: -1 } })).toThrow(
      new RangeError("compensate: conditions.strength.lifeH must be from 0 to 1000000 h, got -1"),
    );
  });
});
