/* How far one mixing of a brew lies from the usual. */
import { describe, expect, it } from "vitest";
import { compensateRecipe, isInputError, type Recipe } from "../../src/index.js";
import { mixingLogSd } from "../../src/recipe/mixingLogSd.js";
import { anyOf, caught } from "../helpers.js";

const weighed = { ingredient: "instant-coffee", massG: 15 } as const;
const spooned = { ...weighed, lowG: 6, highG: 30 };
const Z90 = 1.6448536269514722;

describe("mixingLogSd", () => {
  it("is that of two bottles where all is weighed", () => {
    expect(mixingLogSd({ volumeMl: 500, ingredients: [weighed] })).toBe(0.08);
  });
  it("is half the variance of the third root of what spoons give as ranges", () => {
    const one = Math.log(30 / 6) / (2 * Z90 * 3);
    expect(mixingLogSd({ volumeMl: 500, ingredients: [spooned] })).toBeCloseTo(one * Math.SQRT1_2, 12);
    expect(mixingLogSd({ volumeMl: 500, ingredients: [spooned, weighed, spooned] })).toBeCloseTo(one, 12);
  });
  it.each([
    ["no brew", null],
    ["no list", { ingredients: 3 }],
    ["a hole", { ingredients: [undefined] }],
    ["a symbol", { ingredients: [{ lowG: Symbol("g"), highG: 3 }] }],
  ])("leaves %s to those who refuse it by its place", (_, brew) => {
    expect(mixingLogSd(anyOf(brew))).toBe(0.08);
    const developer = { kind: "brew", name: "invented", brew };
    const baseline = { timeS: 900, temperatureC: 20 };
    const recipe: Recipe = anyOf({ schemaVersion: 2, name: "invented", developer, baseline });
    expect(isInputError(caught(() => compensateRecipe(recipe)))).toBe(true);
  });
});
