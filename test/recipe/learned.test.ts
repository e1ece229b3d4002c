import { describe, expect, it } from "vitest";
import {
  brewStrength,
  checkKnowledge,
  checkRecipe,
  compensate,
  compensateRecipe,
  formatRecipe,
  handbookTemperatureLaw,
  learn,
  predict,
  startKnowledge,
  type Caution,
  type LearnedKnowledge,
  type Recipe,
  type DevelopmentRun,
} from "../../src/index.js";

// All invented: a weekend workshop in a mountain hut, tap water at 14 °C.
const baseline = { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 30 } } as const;
const runs: readonly DevelopmentRun[] = [
  { id: "a", date: "2024-05-01", timeS: 600, temperatureC: 20, outcome: { kind: "good" } },
  { timeS: 900, temperatureC: 14, outcome: { kind: "judged", timeRatio: 1.1 } },
  { timeS: 1000, temperatureC: 14, dilution: "1+14", outcome: { kind: "steps", steps: 0.5 } },
  {
    timeS: 800,
    temperatureC: 15,
    agitation: "continuous",
    outcome: { kind: "gamma", gamma: 0.6, wanted: 0.65 },
  },
  {
    timeS: 850,
    temperatureC: 15,
    usedCm2PerL: 500,
    ageH: 2,
    outcome: { kind: "density", density: 1, wanted: 1.1 },
  },
  { timeS: 900, temperatureC: 16, outcome: { kind: "appearance", appearanceS: 60, factor: 12 } },
  { timeS: 500, temperatureC: 20, outcome: { kind: "fogged", note: "a lamp" }, note: "the second plate" },
];
const more: readonly DevelopmentRun[] = [
  { timeS: 700, temperatureC: 18, thermometer: "the red one", by: "me", outcome: { kind: "thin" } },
  { timeS: 660, temperatureC: 18, printed: true, outcome: { kind: "good" } },
  { timeS: 900, temperatureC: 18, outcome: { kind: "dense" } },
];
const known = learn(
  startKnowledge(baseline, { laws: { temperature: handbookTemperatureLaw("metol-hydroquinone") } }),
  runs,
);
const recipe: Recipe = {
  schemaVersion: 2,
  material: { name: "dry plate" },
  developer: { kind: "stock", name: "hut stock", dilution: "1+9" },
  baseline: known.baseline,
  knowledge: known,
};
const today = { temperatureC: 14, dilution: "1+14", usedCm2PerL: 300 };

const passed = (input: unknown): { recipe: Recipe; cautions: readonly Caution[] } => {
  const check = checkRecipe(input);
  if (!check.ok) throw new Error(JSON.stringify(check.problems));
  return check;
};
/** The stored knowledge with other values at some JSON Pointers. */
const changed = (values: Readonly<Record<string, unknown>>): unknown => {
  const copy = JSON.parse(JSON.stringify(known)) as object;
  for (const [pointer, value] of Object.entries(values)) {
    const names = pointer.split("/").slice(1);
    const last = names.pop() as string;
    const holder = names.reduce((inner, name) => Reflect.get(inner, name) as object, copy);
    Reflect.set(holder, last, value);
  }
  return copy;
};

describe("a recipe with learned knowledge", () => {
  it("is written, and accepted on loading as it was", () => {
    const loaded = passed(formatRecipe(recipe));
    expect(loaded.recipe.knowledge).toEqual(known);
    expect(loaded.cautions.map(({ code }) => code)).not.toContain("stored-differs");
    expect(formatRecipe(loaded.recipe)).toBe(formatRecipe(passed(recipe).recipe));
  });

  it("gives the time and the interval of predict, correlations counted", () => {
    const loaded = passed(formatRecipe(recipe)).recipe;
    const own = compensateRecipe(loaded, today);
    const direct = predict(known, today);
    expect([own.timeS, own.lowS, own.highS]).toEqual([direct.timeS, direct.lowS, direct.highS]);
    // Laws picked by hand lose the correlations, and the interval comes out otherwise.
    const { temperature, dilution, agitation, use, age } = known;
    const picked = compensate(known.baseline, today, { temperature, dilution, agitation, use, age });
    expect(picked.highS / picked.lowS).toBeGreaterThan(1.02 * (own.highS / own.lowS));
  });

  it.each([
    ["the time that was given first", { ...baseline }],
    ["the learned time, rounded to a second", { ...baseline, timeS: Math.round(known.baseline.timeS) }],
    ["dilution left to the recipe", { timeS: 510, temperatureC: 20, agitation: { everyS: 30 } }],
    ["a fresh bath, said in words", { ...baseline, usedCm2PerL: 0, ageH: 0 }],
  ])("takes the learned time for the known time written as %s", (_, written) => {
    const own = compensateRecipe(passed({ ...recipe, baseline: written }).recipe, today);
    const direct = predict(known, today);
    expect(own.timeS).toBeCloseTo(direct.timeS, 9);
    expect(own.highS).toBeCloseTo(direct.highS, 9);
    expect(own.cautions.map(({ code }) => code)).not.toContain("other-baseline");
  });

  it.each([
    ["another time", { ...baseline, timeS: 300 }],
    ["another temperature", { ...baseline, temperatureC: 24 }],
    ["another dilution", { ...baseline, dilution: "1+19" }],
    ["a used bath", { ...baseline, usedCm2PerL: 400 }],
  ])("keeps a known time of its own: %s", (_, written) => {
    const loaded = passed({ ...recipe, baseline: written });
    expect(loaded.cautions.map(({ code }) => code)).toContain("other-baseline");
    expect(compensateRecipe(loaded.recipe, { ...written, timeS: undefined } as never).timeS).toBe(
      written.timeS,
    );
  });

  it("takes hydroquinone and emulsion from the recipe beside what was learned", () => {
    const cold = passed({
      ...recipe,
      developer: { ...recipe.developer, hydroquinone: true },
      conditions: { temperatureC: 11 },
    });
    expect(cold.cautions.map(({ code }) => code)).toContain("hydroquinone-cold");
  });

  it("works out again what was changed, and says so", () => {
    const loaded = passed({
      ...recipe,
      knowledge: changed({ "/temperature/activationEnergyKJPerMol": 99 }),
    });
    expect(loaded.recipe.knowledge).toEqual(known);
    expect(loaded.cautions.filter(({ code }) => code === "stored-differs")).toMatchObject([
      { path: "/knowledge/temperature", severity: "warn" },
    ]);
    // A recipe that was never checked is answered by its runs too.
    const unchecked = { ...recipe, knowledge: changed({ "/baseline/timeS": 100 }) } as Recipe;
    const answer = compensateRecipe(unchecked, today);
    expect(answer.timeS).toBe(predict(known, today).timeS);
    expect(answer.cautions.map(({ code }) => code)).toContain("stored-differs");
  });

  it("is refused with a pointer into the document", () => {
    const problems = (knowledge: unknown): unknown => {
      const check = checkRecipe({ ...recipe, knowledge });
      return check.ok ? [] : check.problems.map(({ code, path, rule }) => [code, path, rule]);
    };
    expect(problems(changed({ "/runs/0/outcome": { kind: "judged", timeRatio: -1 } }))).toEqual([
      ["out-of-range", "/knowledge/runs/0/outcome/timeRatio", "shape"],
    ]);
    expect(problems(changed({ "/prior/laws/temperature/ratio": 1e6 }))).toEqual([
      ["out-of-range", "/knowledge/prior/laws/temperature/ratio", "relation"],
    ]);
    expect(problems(changed({ "/runs/0/date": "2024-13-01", "/runs/2/dilution": "0+1" }))).toEqual([
      ["unreadable", "/knowledge/runs/0/date", "relation"],
      ["out-of-range", "/knowledge/runs/2/dilution/stockParts", "relation"],
    ]);
    expect(problems(changed({ "/schema": 7 }))).toEqual([["out-of-range", "/knowledge/schema", "shape"]]);
  });

  it("holds laws with their correlations too", () => {
    const { temperature, joint } = known;
    const loaded = passed({ ...recipe, knowledge: { temperature, joint } }).recipe;
    expect(compensateRecipe(loaded, { temperatureC: 14 }).highS).toBe(
      compensate(known.baseline, { temperatureC: 14 }, { temperature, joint }).highS,
    );
    const minus = {
      ...joint,
      correlation: joint.correlation.map((row, i) => row.map((_, j) => (i === j ? 1 : -1))),
    };
    const check = checkRecipe({ ...recipe, knowledge: { temperature, joint: minus } });
    expect(check.ok ? [] : check.problems.map(({ path }) => path)).toEqual(["/knowledge/joint/correlation"]);
  });
});

describe("checkKnowledge", () => {
  const problems = (input: unknown): readonly unknown[] => {
    const check = checkKnowledge(input);
    return check.ok
      ? []
      : check.problems.map(({ code, path, line, column }) =>
          [code, path, line, column].filter((x) => x !== undefined),
        );
  };

  it("hands back what learn returned, from an object and from text", () => {
    for (const input of [known, JSON.stringify(known), JSON.stringify(known, undefined, 2)]) {
      const check = checkKnowledge(input);
      expect(check).toEqual({ ok: true, knowledge: known, cautions: [] });
    }
    const check = checkKnowledge(JSON.stringify(known));
    expect(check.ok && predict(check.knowledge, today)).toEqual(predict(known, today));
  });

  it("takes the knowledge before the first run, a strength, and runs by others", () => {
    const brew = {
      volumeMl: 500,
      ingredients: [
        { ingredient: "ascorbic-acid", massG: 8 },
        { ingredient: "soda-anhydrous", massG: 20 },
      ],
    } as const;
    const strength = brewStrength(brew, { ...brew, volumeMl: 600 });
    const start = startKnowledge({ timeS: 510, temperatureC: 20 });
    const taught = learn(start, [{ timeS: 600, temperatureC: 20, strength, outcome: { kind: "good" } }]);
    for (const each of [start, taught, learn(start, more)])
      expect(checkKnowledge(JSON.stringify(each))).toMatchObject({ ok: true, cautions: [] });
  });

  it("asks the same of a recipe's knowledge: of its runs and of its starting time", () => {
    const law = {
      kind: "table",
      rows: [
        { temperatureC: 65, timeS: 900 },
        { temperatureC: 75, timeS: 600 },
      ],
    } as const;
    const run = (timeS: number, temperatureC: number) =>
      ({ timeS, temperatureC, outcome: { kind: "good" } }) as const;
    const asked = (prior: object, stored: readonly object[]) => {
      const knowledge = { schema: 1, prior, runs: stored };
      const doubts = (cautions: readonly Caution[]) =>
        cautions
          .filter(({ code }) => code === "maybe-minutes" || code === "maybe-fahrenheit")
          .map(({ code, path }) => `${code} ${path}`);
      const check = checkKnowledge(knowledge);
      const whole = checkRecipe({
        schemaVersion: 2,
        material: { name: "dry plate" },
        developer: { kind: "stock", name: "hut stock", dilution: "1+9" },
        baseline: { timeS: 900, temperatureC: 20 },
        knowledge,
      });
      return [check.ok && doubts(check.cautions), whole.ok && doubts(whole.cautions)];
    };
    const sound = startKnowledge({ timeS: 900, temperatureC: 20 }).prior;
    const under = (codes: readonly string[]) => [codes, codes.map((one) => one.replace(" ", " /knowledge"))];
    expect(asked(sound, [run(919, 20), run(15.3, 20), run(919, 68)])).toEqual(
      under(["maybe-fahrenheit /runs/2/temperatureC", "maybe-minutes /runs/1/timeS"]),
    );
    expect(asked({ ...sound, baseline: { timeS: 10, temperatureC: 68 } }, [])).toEqual(
      under(["maybe-fahrenheit /prior/baseline/temperatureC", "maybe-minutes /prior/baseline/timeS"]),
    );
    expect(asked({ ...sound, laws: { temperature: law } }, [])).toEqual(
      under(["maybe-fahrenheit /temperature/rows/0/temperatureC"]),
    );
  });

  it("asks about a time in minutes and a temperature in °F, by the run", () => {
    const start = startKnowledge({ timeS: 900, temperatureC: 20 });
    const run = (timeS: number, temperatureC: number) =>
      ({ timeS, temperatureC, outcome: { kind: "good" } }) as const;
    const bare = (runs: readonly object[]) =>
      checkKnowledge({ schema: 1, prior: start.prior, runs }) as { readonly cautions: unknown };
    expect(bare([run(919, 20), run(1200, 14)]).cautions).toEqual([]);
    expect(bare([run(919, 20), run(15.3, 20)]).cautions).toMatchObject([
      { code: "maybe-minutes", severity: "warn", path: "/runs/1/timeS", actual: 15.3 },
    ]);
    expect(bare([run(919, 62)]).cautions).toMatchObject([
      { code: "maybe-fahrenheit", path: "/runs/0/temperatureC", actual: 62 },
    ]);
  });

  it("counts a run that was pasted twice with its id once, and tells of one without", () => {
    const start = startKnowledge({ timeS: 900, temperatureC: 20 });
    const copy = { timeS: 919, temperatureC: 20, outcome: { kind: "good" } } as const;
    const run = { id: "a", ...copy };
    const other = { ...run, id: "b", timeS: 950 };
    const once = learn(start, [run, other]);
    const twice = checkKnowledge({ ...once, runs: [...once.runs, run] });
    expect(twice).toMatchObject({
      ok: true,
      knowledge: once,
      cautions: [{ code: "stored-differs", path: "/runs", data: { fields: ["runs"] } }],
    });
    expect(learn(once, [copy]).advice.map(({ code }) => code)).toContain("equal-runs");
  });

  it("works out again what does not follow from the runs", () => {
    const check = checkKnowledge(changed({ "/joint/correlation/0/1": -1 }));
    expect(check).toMatchObject({ ok: true, cautions: [{ code: "stored-differs", path: "/joint" }] });
    expect(check.ok && check.knowledge).toEqual(known);
    const bare = { schema: 1, prior: known.prior, runs: known.runs };
    expect(checkKnowledge(bare)).toMatchObject({ ok: true, knowledge: known });
  });

  it("keeps fields of one's own in a run", () => {
    const own: DevelopmentRun = {
      timeS: 600,
      temperatureC: 20,
      outcome: { kind: "good" },
      ...{ "x-bottle": { number: 3 } },
    };
    const taught = learn(startKnowledge({ timeS: 510, temperatureC: 20 }), [own]);
    const check = checkKnowledge(JSON.stringify(taught));
    expect(check.ok && check.knowledge.runs).toEqual([own]);
  });

  it("never throws, and points into the document", () => {
    expect(problems(5)).toEqual([["wrong-type", ""]]);
    expect(problems('{"schema": 1,\n "prior" 3}')).toEqual([["unreadable", "", 2, 10]]);
    expect(problems({ ...known, schema: 2 })).toEqual([["out-of-range", "/schema"]]);
    expect(problems({ schema: 1 })).toEqual([
      ["missing", "/prior"],
      ["missing", "/runs"],
    ]);
    expect(problems(changed({ "/prior/baseline/temperatureC": 300 }))).toEqual([
      ["out-of-range", "/prior/baseline/temperatureC"],
    ]);
    expect(problems({ ...known, extra: 1 })).toEqual([["not-one-of", "/extra"]]);
    expect(problems(changed({ "/runs/0/ageH": 5, "/runs/0/outcome": undefined }))).toEqual([
      ["missing", "/runs/0/outcome"],
    ]);
    expect(
      problems(
        changed({
          "/prior/laws/temperature": {
            kind: "table",
            rows: [
              { temperatureC: 20, timeS: 5 },
              { temperatureC: 20, timeS: 6 },
            ],
          },
        }),
      ),
    ).toEqual([["out-of-range", "/prior/laws/temperature/rows"]]);
    let deep: unknown = {};
    for (let i = 0; i < 8000; i += 1) deep = [deep];
    expect(problems({ ...known, prior: deep })).toEqual([["wrong-type", "/prior"]]);
    expect(problems({ ...known, parameters: deep })).toEqual([["wrong-type", "/parameters"]]);
    expect(problems("[".repeat(8000))).toEqual([["unreadable", "", 1, 8001]]);
    expect(problems("[".repeat(8000) + "]".repeat(8000))).toEqual([["wrong-type", ""]]);
  });

  it("is typed as learned knowledge", () => {
    const check = checkKnowledge(known);
    const typed: LearnedKnowledge | undefined = check.ok ? check.knowledge : undefined;
    expect(typed).toEqual(known);
  });
});
