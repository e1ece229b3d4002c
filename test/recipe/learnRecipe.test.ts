import { describe, expect, it } from "vitest";
import {
  compensateRecipe,
  learn,
  learnRecipe,
  predict,
  startKnowledge,
  type DevelopmentRun,
  type Knowledge,
  type Recipe,
} from "../../src/index.js";
import type { OwnFields } from "../../src/core/ownFields.js";
import { anyOf } from "../helpers.js";
import { refusal } from "../process/helpers.js";

// Invented: a concentrate known at 1+9, used at 1+14 in a hut.
const recipe: Recipe = {
  schemaVersion: 2,
  material: { name: "roll film", kind: "film" },
  developer: { kind: "stock", name: "hut concentrate", dilution: "1+14" },
  agitation: { everyS: 60 },
  baseline: { timeS: 540, temperatureC: 20, dilution: "1+9" },
  knowledge: { temperature: { kind: "coefficient", ratio: 2, intervalC: 10 } },
};
const runs: readonly DevelopmentRun[] = [
  { timeS: 560, temperatureC: 20, outcome: { kind: "good" } },
  { timeS: 900, temperatureC: 16, dilution: "1+14", outcome: { kind: "steps", steps: 0.5 } },
];

describe("learnRecipe", () => {
  it("answers as predict does, from the recipe's known time with its agitation, good to 4 %", () => {
    const known = { ...recipe.baseline, agitation: { everyS: 60 } };
    const start = startKnowledge(known, { baseLogSd: 0.04, laws: recipe.knowledge });
    const answer = compensateRecipe(learnRecipe(recipe, runs), { temperatureC: 15 });
    const wanted = predict(learn(start, runs), { temperatureC: 15, dilution: "1+14" });
    expect([answer.lowS, answer.timeS, answer.highS]).toEqual([wanted.lowS, wanted.timeS, wanted.highS]);
  });
  it("fits all runs anew from a known time that was put right by hand", () => {
    const good = (timeS: number, id: string): DevelopmentRun => ({
      timeS,
      temperatureC: 20,
      id,
      outcome: { kind: "good" },
    });
    const taught = learnRecipe(recipe, runs);
    const knowledge: Knowledge & OwnFields = { ...taught.knowledge, "x-src": "bench" };
    const mended = { ...taught, knowledge, baseline: { ...recipe.baseline, timeS: 640 } };
    const more = [good(720, "a"), good(730, "b"), good(725, "c")];
    const again = learnRecipe(mended, more);
    const anew = learnRecipe({ ...recipe, baseline: mended.baseline }, [...runs, ...more]);
    const answer = compensateRecipe(again, { dilution: "1+9" });
    expect(answer).toEqual(compensateRecipe(anew, { dilution: "1+9" }));
    expect(again.knowledge).toHaveProperty("x-src", "bench");
    expect(answer.timeS).toBeGreaterThan(compensateRecipe(mended, { dilution: "1+9" }).timeS);
    expect(answer.cautions.map(({ code }) => code)).not.toContain("other-baseline");
    expect(compensateRecipe(mended).cautions.map(({ code }) => code)).toContain("other-baseline");
  });
  it("changes nothing before the first run, and leaves the given recipe alone", () => {
    const [before, after] = [recipe, learnRecipe(recipe, [])].map((one) => compensateRecipe(one));
    expect(after!.timeS).toBeCloseTo(before!.timeS, 9);
    expect(recipe.knowledge).not.toHaveProperty("runs");
  });
  it("goes on from what the recipe has learned", () => {
    const [first, second] = runs as [DevelopmentRun, DevelopmentRun];
    const inSteps = learnRecipe(learnRecipe(recipe, [first]), [second]);
    expect(inSteps.knowledge).toEqual(learnRecipe(recipe, runs).knowledge);
  });
  it("keeps the fields of one's own of the laws that it starts from", () => {
    const noted = (note: unknown): Recipe => ({ ...recipe, knowledge: anyOf({ "x-src": note }) });
    expect(learnRecipe(noted({ page: 7 }), runs).knowledge).toMatchObject({ "x-src": { page: 7 } });
    expect(learnRecipe(recipe, runs).knowledge).not.toHaveProperty("x-src");
    expect(
      refusal(() =>
        learnRecipe(
          noted(() => 7),
          runs,
        ),
      ),
    ).toBe("RangeError learnRecipe /recipe/knowledge/x-src out-of-range");
  });
  it("repeats in the answer what it doubts", () => {
    const good = Array.from({ length: 9 }, (_, i): DevelopmentRun => ({ ...runs[0]!, id: String(i) }));
    const odd = { ...runs[0]!, timeS: 5600 };
    const codes = compensateRecipe(learnRecipe(recipe, [...good, odd])).cautions.map(({ code }) => code);
    expect(codes).toContain("doubted-run");
  });
  it.each<[string, object, readonly unknown[], string]>([
    ["no recipe", anyOf(5), [], "/recipe"],
    ["a recipe without a developer", { ...recipe, developer: undefined }, [], "/recipe/developer"],
    [
      "a known time of nothing",
      { ...recipe, baseline: { timeS: 0, temperatureC: 20 } },
      [],
      "/recipe/baseline/timeS",
    ],
    [
      "a known time too unsure",
      { ...recipe, baseline: { ...recipe.baseline, logSd: 9 } },
      [],
      "/recipe/baseline/logSd",
    ],
    [
      "a law with a ratio below 0",
      { ...recipe, knowledge: { temperature: { kind: "coefficient", ratio: -1, intervalC: 10 } } },
      [],
      "/recipe/knowledge/temperature/ratio",
    ],
    ["a version to come", { ...recipe, schemaVersion: 3 }, [], "/recipe/schemaVersion"],
    ["a run without a temperature", recipe, [{ ...runs[0], temperatureC: "cold" }], "/runs/0/temperatureC"],
    [
      "a number in place of a stored run",
      { ...recipe, knowledge: { ...learnRecipe(recipe, runs).knowledge, runs: [5] } },
      [],
      "/recipe/knowledge/runs/0",
    ],
  ])("refuses %s", (_, given, taught, path) => {
    expect(refusal(() => learnRecipe(anyOf(given), anyOf(taught)))).toContain(` learnRecipe ${path} `);
  });
});
