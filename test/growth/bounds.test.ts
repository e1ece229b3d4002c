/*
 * Data that are deep, shared or endless are answered or refused by name: no hang, no memory without bound, no overflow of the
 * stack. How work grows with the length of a list: growth.slow.test.ts.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  bathState,
  checkBrew,
  checkConditions,
  checkKnowledge,
  checkLedger,
  checkLog,
  checkRecipe,
  compensate,
  compensateRecipe,
  describePlan,
  equivalentTime,
  fitDrift,
  fitGrowth,
  fitTemperatureLaw,
  formatRecipe,
  isInputError,
  learn,
  mergeKnowledge,
  nextTest,
  planProcess,
  predict,
  readRunNotes,
  startKnowledge,
  steer,
  temperatureFactor,
  tidyRuns,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";

const known = { timeS: 540, temperatureC: 20 };
const start = startKnowledge(known);
const run = { timeS: 540, temperatureC: 20, outcome: { kind: "good" } };
const plan = planProcess({ vessel: "tank", timeS: 540, temperatureC: 20 });
const recipe = {
  schemaVersion: 2,
  material: { name: "roll film", kind: "film" },
  developer: { kind: "stock", name: "hut concentrate", dilution: "1+9" },
  baseline: known,
};
const log = [
  { timeS: 0, temperatureC: 20 },
  { timeS: 60, temperatureC: 20 },
];

/** An object that holds the one below it twice, 30 levels deep: written out it would be a thousand million objects. */
function shared(): unknown {
  let one: unknown = {};
  for (let i = 0; i < 30; i += 1) one = { a: one, b: one };
  return one;
}
/** 8,000 brackets, one in the other. */
function nested(): unknown {
  let one: unknown = [];
  for (let i = 0; i < 8000; i += 1) one = [one];
  return one;
}

/** Each function with the odd value in one place; the path of the error, or what is answered instead. */
const places: readonly (readonly [name: string, call: (odd: unknown) => unknown, path: string])[] = [
  ["learn, a run", (odd) => learn(start, anyOf([odd])), "/runs/0"],
  ["learn, an outcome", (odd) => learn(start, anyOf([{ ...run, outcome: odd }])), "/runs/0/outcome"],
  ["learn, a field of one's own", (odd) => learn(start, anyOf([{ ...run, "x-own": odd }])), "/runs/0/x-own"],
  ["learn, the prior", (odd) => learn(anyOf({ ...start, prior: odd }), []), "/knowledge"],
  ["predict, the runs", (odd) => predict(anyOf({ ...start, runs: odd }), {}), "/knowledge"],
  [
    "tidyRuns, a law",
    (odd) => tidyRuns(anyOf({ ...start, prior: { ...start.prior, laws: { use: odd } } })),
    "/knowledge",
  ],
  ["mergeKnowledge", (odd) => mergeKnowledge(start, anyOf({ ...start, prior: odd })), "/b/prior"],
  [
    "nextTest, a candidate",
    (odd) => nextTest(start, anyOf([{ dilution: odd }]), {}),
    "/candidates/0/dilution",
  ],
  [
    "startKnowledge, a law",
    (odd) => startKnowledge(known, { laws: anyOf({ temperature: odd }) }),
    "/options/laws/temperature",
  ],
  ["checkKnowledge", (odd) => checkKnowledge({ ...start, prior: odd }), "not ok"],
  ["checkRecipe", (odd) => checkRecipe({ ...recipe, material: odd }), "not ok"],
  ["compensateRecipe", (odd) => compensateRecipe(anyOf({ ...recipe, baseline: odd })), "/baseline"],
  ["formatRecipe", (odd) => formatRecipe(anyOf({ ...recipe, knowledge: odd })), "/recipe"],
  ["compensate, a law", (odd) => compensate(known, {}, anyOf({ dilution: odd })), "/knowledge/dilution"],
  ["checkConditions", (odd) => checkConditions(known, anyOf({ dilution: odd })), "not ok"],
  ["checkLedger", (odd) => checkLedger({ volumeMl: 500, mixedAtH: 0, processed: [odd] }), "not ok"],
  [
    "bathState",
    (odd) => bathState(anyOf({ volumeMl: 500, mixedAtH: 0, processed: [odd] }), 1),
    "/ledger/processed/0",
  ],
  ["checkLog", (odd) => checkLog([odd]), "not ok"],
  ["checkBrew", (odd) => checkBrew(anyOf({ volumeMl: 500, ingredients: [odd] })), "/brew/ingredients/0"],
  ["describePlan", (odd) => describePlan(anyOf({ ...plan, steps: [odd] })), "/plan/steps/0"],
  ["readRunNotes", (odd) => readRunNotes(anyOf([{ time: odd }])), "answered"],
  ["steer, a baseline", (odd) => steer({ baseline: anyOf(odd), conditions: {}, log }), "/baseline"],
  ["fitGrowth", (odd) => fitGrowth(anyOf([odd, odd, odd])), "/points/0"],
  ["fitDrift", (odd) => fitDrift(anyOf([odd, odd, odd])), "/log/0"],
  ["equivalentTime", (odd) => equivalentTime(anyOf([odd, odd]), 20), "/log/0"],
  ["fitTemperatureLaw", (odd) => fitTemperatureLaw(anyOf([odd, odd])), "/rows/0"],
  [
    "temperatureFactor, a law",
    (odd) => temperatureFactor(20, 21, anyOf({ kind: "table", rows: odd })),
    "/law/rows",
  ],
];

/** Where a call refuses, or what it answers. */
function outcomeOf(call: () => unknown): string {
  try {
    const answer = call();
    return (answer as { readonly ok?: boolean } | undefined)?.ok === false ? "not ok" : "answered";
  } catch (error) {
    if (!isInputError(error)) throw error;
    return error.path;
  }
}

describe.each([
  ["an object shared 30 levels deep", shared],
  ["8,000 brackets, one in the other", nested],
])("%s", (_, made) => {
  it.each(places)("is refused by its place, or a problem: %s", (_name, call, path) => {
    const odd = made();
    const outcome = outcomeOf(() => call(odd));
    expect(outcome.startsWith(path) ? path : outcome).toBe(path);
  });
});

describe("text of 8,000 brackets", () => {
  it.each([
    ["open", "[".repeat(8000)],
    ["closed", "[".repeat(8000) + "]".repeat(8000)],
    ["objects", '{"a":'.repeat(8000)],
  ])("is a problem and no overflow: %s", (_, text) => {
    expect(checkRecipe(text)).toMatchObject({ ok: false });
    expect(checkKnowledge(text)).toMatchObject({ ok: false });
  });
});

describe("200,000 fields that nothing reads", () => {
  const many = Object.fromEntries(Array.from({ length: 200_000 }, (_, i) => [`f${i}`, 1]));
  it("are fifty cautions of a ledger, and of a plan", () => {
    const ledger = checkLedger({ volumeMl: 500, mixedAtH: 0, processed: [{ atH: 0, areaCm2: 1, ...many }] });
    expect(ledger.ok && ledger.cautions.map(({ path }) => path).slice(0, 2)).toEqual([
      "/processed/0/f0",
      "/processed/0/f1",
    ]);
    expect(ledger.ok && ledger.cautions).toHaveLength(50);
    const made = planProcess({ vessel: "tank", timeS: 540, temperatureC: 20, baths: { fix: anyOf(many) } });
    expect(made.cautions.filter(({ code }) => code === "unknown-field")).toHaveLength(50);
  });
});

describe("a list that is spread into a call", () => {
  /** Each is short, whatever a caller hands in: a spread of a hundred thousand overflows the stack. */
  const SHORT: Readonly<Record<string, string>> = {
    "src/core/cause.ts": "the learned gaps of a walk, no two places nearer than its spacing",
    "src/core/departures.ts": "the same",
    "src/bath/leastStock.ts": "published families",
    "src/steering/forecast.ts": "thirteen time constants",
    "src/brew/bakeTime.ts": "the ends of two figures",
    "src/drift/remainingTime.ts": "33 looks ahead",
    "src/picture/axes.ts": "the dots and rungs of a picture",
    "src/picture/drawLadder.ts": "the times of a test strip, 25 at most",
    "src/core/relaxation.ts": "the rates of a grid",
    "src/bath/checkLedger.ts": "fifty fields",
    "src/process/bathCautions.ts": "fifty fields, and the cautions of a fixer",
    "src/process/fixCautions.ts": "two clearing times, and the one caution of a spent bath",
    "src/process/developmentCues.ts": "one tap",
    "src/notes/readRow.ts": "one cell",
    "src/bath/capacityOf.ts": "one caution",
    "src/recipe/checkRecipe.ts": "one problem for each condition",
    "src/brew/mixingSteps.ts": "the steps of a cup",
    "src/temperature/cause.ts": "the cautions of one temperature",
    "src/learning/notSeparated.ts": "the numbers of the model",
    "src/chart/chartSvg.ts": "the lines of one footnote, as many as there is place for",
  };
  it("is short, for a reason that is written", () => {
    const files = readdirSync("src", { recursive: true, encoding: "utf8" }).filter((file) =>
      file.endsWith(".ts"),
    );
    const spreading = files
      .map((file) => `src/${file}`)
      .filter((file) =>
        /(?:Math\.(?:min|max|hypot)|\.(?:push|unshift|splice|concat))\((?:[^(){}]*,\s*)?\.\.\./.test(
          readFileSync(file, "utf8"),
        ),
      );
    expect(spreading.filter((file) => !(file in SHORT))).toEqual([]);
    expect(Object.keys(SHORT).filter((file) => !spreading.includes(file))).toEqual([]);
  });
});
