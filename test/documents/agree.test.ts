/* What one function takes or returns, another takes too: each case was refused by one of two. */
import { describe, expect, it } from "vitest";
import {
  checkConditions,
  checkKnowledge,
  compensate,
  isInputError,
  learn,
  predict,
  startKnowledge,
  strengthFromScrap,
  type DevelopmentRun,
  type InputError,
} from "../../src/index.js";

// All invented: a weekend workshop in a mountain hut, tap water at 14 °C.
const known = { timeS: 540, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 } } as const;

function refused(call: () => unknown): Pick<InputError, "code" | "path"> | undefined {
  try {
    call();
    return undefined;
  } catch (error) {
    if (!isInputError(error)) throw error;
    return { code: error.code, path: error.path };
  }
}

describe("learn refuses at once what could not be loaded again", () => {
  const run = (more: object): DevelopmentRun => ({
    timeS: 540,
    temperatureC: 20,
    outcome: { kind: "good" },
    ...more,
  });
  it.each([
    ["an id of 201 characters", { id: "x".repeat(201) }, "/runs/0/id"],
    ["a note of 2001 characters", { note: "x".repeat(2001) }, "/runs/0/note"],
    ["a thermometer of 201 characters", { thermometer: "x".repeat(201) }, "/runs/0/thermometer"],
    ["a person of 201 characters", { by: "x".repeat(201) }, "/runs/0/by"],
  ])("%s", (_, more, path) => {
    expect(refused(() => learn(startKnowledge(known), [run(more)]))).toEqual({ code: "out-of-range", path });
  });
  it("the basis of a strength that there is not", () => {
    const strength = { value: 1.2, logSd: 0.1, basis: "guessed" };
    expect(refused(() => learn(startKnowledge(known), [run({ strength })]))).toEqual({
      code: "not-one-of",
      path: "/runs/0/strength/basis",
    });
  });
});

describe("startKnowledge refuses at once what could not be loaded again", () => {
  const growth = { gammaInfinity: 1.4, ratePerS: 0.002, appearanceS: 30 };
  it.each([
    [
      "a misspelt condition of the known time",
      { temperature: 20 },
      {},
      "not-one-of",
      "/baseline/temperature",
    ],
    ["a gradient below 0", { gamma: -1 }, {}, "out-of-range", "/baseline/gamma"],
    ["half a run", { runs: 0.5 }, {}, "wrong-type", "/baseline/runs"],
    ["a source that is no text", { sources: [3] }, {}, "wrong-type", "/baseline/sources/0"],
    ["51 sources", { sources: Array(51).fill("x") }, {}, "out-of-range", "/baseline/sources"],
    [
      "a law of growth without end",
      {},
      { growth: { ...growth, ratePerS: 0 } },
      "out-of-range",
      "/options/laws/growth/ratePerS",
    ],
    ["a law of push below 1", {}, { push: { perStop: 0.9 } }, "out-of-range", "/options/laws/push/perStop"],
  ])("%s", (_, more, laws, code, path) => {
    expect(refused(() => startKnowledge({ ...known, ...more }, { laws: laws }))).toEqual({
      code,
      path,
    });
  });
  it("a spread that no law has once it is written in another form, at the law that was given", () => {
    const temperature = { kind: "coefficient", ratio: 2, intervalC: 10, sdRatio: 20 } as const;
    expect(refused(() => startKnowledge(known, { laws: { temperature } }))).toEqual({
      code: "out-of-range",
      path: "/options/laws/temperature",
    });
  });
});

describe("what is learned is taken back", () => {
  it("with a gradient of half a hundredth, and a dilution of twenty stocks", () => {
    const dilution = `${"1+".repeat(20)}180`;
    const start = startKnowledge({ ...known, gamma: 0.005, dilution });
    expect(checkKnowledge(JSON.stringify(start)).ok).toBe(true);
  });
  it("from a run by a thermometer that is off beyond reason", () => {
    const run = {
      timeS: 540,
      temperatureC: 20,
      thermometer: "kitchen",
      strength: { value: 1e-29, logSd: 0, basis: "given" },
      outcome: { kind: "steps", steps: -10, logSd: 1e-3 },
    } as const;
    const after = learn(startKnowledge({ ...known, logSd: 0 }, { noise: "stated" }), [run]);
    expect(after.joint.offsets?.[0]?.value).toBe(10);
    expect(predict(after, { thermometer: "kitchen" }).timeS).toBeGreaterThan(0);
  });
  it.each([
    [1, 0, 3600, 50],
    [3600, 50, 1, 0],
  ])("and so is the strength from scraps of %s s at %s °C and %s s at %s °C", (a, aC, b, bC) => {
    const strength = strengthFromScrap({
      darkensS: a,
      temperatureC: aC,
      known: { darkensS: b, temperatureC: bC },
    });
    expect(compensate(known, { strength }).timeS).toBeGreaterThan(0);
  });
});

describe("checkConditions and compensate", () => {
  it("both answer where a law cannot give a known gradient that is not asked for today", () => {
    const growth = { gammaInfinity: 0.6, ratePerS: 0.002, appearanceS: 30 };
    expect(checkConditions({ ...known, gamma: 0.7 }, {}, { growth }).ok).toBe(true);
    expect(compensate({ ...known, gamma: 0.7 }, {}, { growth }).timeS).toBeCloseTo(540, 9);
  });
  it("both refuse a drift that freezes the bath, at the drift", () => {
    const temperatureC = { startC: 2, ambientC: -20, timeConstantS: 600 };
    const path = "/conditions/temperatureC";
    expect(refused(() => compensate(known, { temperatureC }))).toEqual({ code: "out-of-range", path });
    const check = checkConditions(known, { temperatureC });
    expect(check.ok ? [] : check.problems.map((one) => one.path)).toEqual([path]);
  });
  it("name a law of two causes and a thermometer beside what else is wrong", () => {
    const check = checkConditions(
      known,
      { temperatureC: 300, thermometer: 7 },
      { interaction: { perHalvingKJPerMol: 200 } },
    );
    expect(check.ok ? [] : check.problems.map((one) => one.path)).toEqual([
      "/conditions/temperatureC",
      "/knowledge/interaction/perHalvingKJPerMol",
      "/conditions/thermometer",
    ]);
  });
});

describe("checkKnowledge", () => {
  it("names a run with the id of another beside a run that is wrong by itself", () => {
    const start = startKnowledge({ timeS: 540, temperatureC: 20 });
    const outcome = { kind: "good" };
    const runs = [
      { timeS: 540, temperatureC: 20, outcome, id: "a" },
      { timeS: 560, temperatureC: 20, outcome, id: "a" },
      { timeS: 560, temperatureC: 20, outcome, agitation: "stand" },
    ];
    const check = checkKnowledge({ ...start, runs });
    expect(check.ok ? [] : check.problems.map((one) => one.path)).toEqual([
      "/runs/2/agitation",
      "/runs/1/id",
    ]);
  });
});
