/* What storage may have lost or spoilt in learned knowledge: worked out anew, or refused by its place. */
import { describe, expect, it } from "vitest";
import {
  startKnowledge,
  learn,
  nextTest,
  tidyRuns,
  mergeKnowledge,
  type LearnedKnowledge,
  predict,
  compensate,
  checkKnowledge,
  type DevelopmentRun,
} from "../../src/index.js";
import { stated, good, start, baseline } from "./start.js";
import { anyOf, thrown } from "../helpers.js";

describe("results that storage spoilt", () => {
  const baseline = { timeS: 510, temperatureC: 20 };
  const start = startKnowledge(baseline);
  const { parameters, joint } = start;
  it.each([
    { parameters: [...parameters, parameters[0]] },
    { parameters: [null, ...parameters.slice(1)] },
    { parameters: [...parameters.slice(0, 6), { ...parameters[6]!, runs: 1, value: NaN }] },
    { joint: null },
    { joint: { correlation: joint.correlation.map((line) => line.map(() => 2)) } },
    { baseline: 1 },
    { scatter: -1 },
    { setAside: [{ run: 0, weight: 2 }] },
  ])("are worked out anew before a test or a table: %j", (spoilt) => {
    const sound = learn(start, [
      { timeS: 600, temperatureC: 18, outcome: { kind: "judged", timeRatio: 0.9 } },
    ]);
    const knowledge = anyOf({ ...sound, ...spoilt });
    expect(nextTest(knowledge, [{ temperatureC: 15 }], {})).toEqual(
      nextTest(sound, [{ temperatureC: 15 }], {}),
    );
    expect(tidyRuns(knowledge)).toEqual(tidyRuns(sound));
  });
});

describe("wrong knowledge", () => {
  it("is refused by name", () => {
    for (const [name, call] of [
      ["nextTest", nextTest],
      ["tidyRuns", tidyRuns],
    ] as const)
      expect(thrown(() => call(anyOf(undefined), [], {}))).toBe(
        `TypeError: ${name}: knowledge is missing: an object`,
      );
  });
});

describe("fields that are named like methods", () => {
  const baseline = { timeS: 510, temperatureC: 20 };
  it("merge all the same", () => {
    const odd = (): LearnedKnowledge =>
      startKnowledge(anyOf({ ...baseline, agitation: { everyS: 60, toString: 0 } }));
    expect(mergeKnowledge(odd(), odd()).runs).toEqual(learn(odd(), []).runs);
  });
});

describe("what storage may have lost or spoilt", () => {
  const strength = { cause: "strength", value: 1.2, logSd: 0.3, basis: "default", sources: [] } as const;
  const learned = learn(stated, [good(600)]);
  it("is worked out anew from the prior and the runs: the same predictions, tests and rows", () => {
    const brewed = learn(learned, [good(500, 20, { strength })]);
    expect(brewed.parameters[6]).toMatchObject({ cause: "strength", runs: 1 });
    const spoilt = {
      ...brewed,
      parameters: [],
      scatter: NaN,
      setAside: null,
      joint: brewed.joint,
      advice: "none",
    };
    const answer = predict(anyOf(spoilt), { strength });
    expect(answer).toMatchObject({ ...predict(brewed, { strength }), cautions: expect.any(Array) });
    // One caution names them all.
    expect(answer.cautions.filter(({ code }) => code === "stored-differs")).toMatchObject([
      {
        path: "/knowledge/parameters",
        data: { fields: expect.arrayContaining(["parameters", "scatter", "setAside", "advice"]) },
      },
    ]);
    expect(predict(brewed, { strength }).timeS).toBe(compensate(brewed.baseline, { strength }, brewed).timeS);
    const without = { schema: 1, prior: brewed.prior, runs: brewed.runs };
    for (const knowledge of [spoilt, without]) {
      expect(nextTest(anyOf(knowledge), [{}, { temperatureC: 16 }], { temperatureC: 15 })).toEqual(
        nextTest(brewed, [{}, { temperatureC: 16 }], { temperatureC: 15 }),
      );
      expect(tidyRuns(anyOf(knowledge))).toEqual(tidyRuns(brewed));
    }
  });
  it.each<[string, () => unknown, Error]>([
    [
      "a run",
      () => mergeKnowledge(anyOf({ ...start, runs: [3] }), start),
      new TypeError("mergeKnowledge: a.runs[0] must be an object, got 3"),
    ],
    [
      "the noise of both",
      () => {
        const spoilt = anyOf({ ...start, prior: { ...start.prior, noise: "loud" } });
        return mergeKnowledge(spoilt, spoilt);
      },
      new RangeError('mergeKnowledge: a.prior.noise must be "estimated" or "stated", got "loud"'),
    ],
    [
      "a schema as text",
      () => learn(anyOf({ ...start, schema: "2" }), []),
      new TypeError('learn: knowledge.schema must be a number, got "2"'),
    ],
    [
      "an age, for nextTest",
      () =>
        nextTest(anyOf({ ...start, prior: { ...start.prior, baseline: { ...baseline, ageH: -1 } } }), [], {}),
      new RangeError("nextTest: knowledge.prior.baseline.ageH must be from 0 to 1000000 h, got -1"),
    ],
    [
      "a temperature, for tidyRuns",
      () =>
        tidyRuns(
          anyOf({ ...learned, prior: { ...learned.prior, baseline: { ...baseline, temperatureC: 300 } } }),
        ),
      new RangeError("tidyRuns: knowledge.prior.baseline.temperatureC must be from 0 to 100 °C, got 300"),
    ],
    [
      "a baseline, for tidyRuns",
      () => tidyRuns(anyOf({ ...learned, prior: { ...learned.prior, baseline: 1 } })),
      new TypeError("tidyRuns: knowledge.prior.baseline must be an object, got 1"),
    ],
    [
      "a run, for tidyRuns",
      () => tidyRuns(anyOf({ ...learned, runs: [1] })),
      new TypeError("tidyRuns: knowledge.runs[0] must be an object, got 1"),
    ],
    [
      "the runs, for predict",
      () => predict(anyOf({ ...learned, runs: undefined }), {}),
      new TypeError("predict: knowledge.runs is missing: an array"),
    ],
    [
      "the prior, for predict with a brew",
      () => predict(anyOf({ ...learned, prior: { ...learned.prior, baseLogSd: NaN } }), { strength }),
      new RangeError("predict: knowledge.prior.baseLogSd must be from 0 to 3, got NaN"),
    ],
    [
      "the time of a run",
      () => tidyRuns({ ...learned, runs: [good(600), good(0)] }),
      new RangeError("tidyRuns: knowledge.runs[1].timeS must be above 0 and at most 1000000 s, got 0"),
    ],
    [
      "the dilution of a run",
      () => learn(start, [good(500, 20, { dilution: anyOf(null) })]),
      new TypeError("learn: runs[0].dilution must be an object, got null"),
    ],
    [
      "a long id of two runs",
      () => learn(start, [good(500, 20, { id: "i".repeat(61) }), good(600, 20, { id: "i".repeat(61) })]),
      new RangeError(
        `learn: runs[1].id must be the id of one run only: give one of them another, got "${"i".repeat(60)}"`,
      ),
    ],
  ])("refuses by name: %s", (_, call, error) => {
    expect(call).toThrow(error);
  });
  it("tells what a fogged run said of itself", () => {
    const rows = tidyRuns(learn(start, [good(510, 20, { outcome: { kind: "fogged", note: "light leak" } })]));
    expect(rows.map(({ outcome, note }) => [outcome, note])).toEqual([["fogged", "light leak"]]);
  });
});

describe("an array of holes in knowledge", () => {
  // All invented: a weekend workshop in a mountain hut.
  const known = { timeS: 540, temperatureC: 20, dilution: "1+9" };
  /** The same data with one value put in its place, as an editor leaves it. */
  function edited<T>(data: T, path: string, value: unknown): T {
    const copy = structuredClone(data);
    const names = path.split("/").slice(1);
    const last = names.pop()!;
    let holder = copy as Record<string, unknown>;
    for (const name of names) holder = holder[name] as Record<string, unknown>;
    holder[last] = value;
    return copy;
  }
  it("is refused at once", () => {
    const learned = learn(startKnowledge(known), [
      { timeS: 540, temperatureC: 20, outcome: { kind: "good" } },
    ]);
    const holes: unknown[] = [];
    holes.length = 4_294_967_295;
    const check = checkKnowledge(edited(learned, "/baseline/timeS", holes));
    expect(check.ok).toBe(false);
  });
});

describe("fields of one's own in learned knowledge", () => {
  const runs = [good(600, 20)];
  const mine = { ...learn(stated, runs), "x-film": { name: "abc" } };
  it("are kept by whatever reads it back", () => {
    const check = checkKnowledge(JSON.stringify(mine));
    expect(check).toMatchObject({ ok: true, knowledge: { "x-film": { name: "abc" } }, cautions: [] });
    const learned = learn(mine, [good(500, 22)]);
    expect(learned["x-film"]).toEqual({ name: "abc" });
    expect(learn(learned, [])["x-film"]).toEqual({ name: "abc" });
    expect(learn({ ...mine, "x-none": undefined }, [])).not.toHaveProperty("x-none");
  });
  it("are kept of both that are merged: of two by one name the first", () => {
    const yours = { ...learn(stated, [good(500, 22)]), "x-film": "def", "x-shelf": 2 };
    expect(mergeKnowledge(mine, yours)).toMatchObject({ "x-film": { name: "abc" }, "x-shelf": 2 });
    expect(mergeKnowledge(yours, mine)["x-film"]).toBe("def");
  });
  it("are refused where storage would lose them", () => {
    expect(thrown(() => learn({ ...mine, "x-film": () => 1 }, []))).toMatch(
      /^RangeError: learn: knowledge\.x-film must be plain data/,
    );
  });
});

describe("two different runs of one id in stored knowledge", () => {
  it("are refused by the place of the second", () => {
    const twins = [good(600, 20, { id: "a" }), good(700, 18, { id: "a" })];
    const stored = { ...learn(stated, [twins[0]!]), runs: twins };
    const check = checkKnowledge(stored);
    expect(check.ok || check.problems).toMatchObject([{ path: "/runs/1/id" }]);
    expect(thrown(() => predict(stored, {}))).toMatch(
      /^RangeError: predict: knowledge\.runs\[1\]\.id must be/,
    );
  });
  it("are not spoken of where one of them cannot be read", () => {
    const twins = [good(600, 20, { id: "a" }), good(700, 18, { id: "a", date: "2024-13-01" })];
    const unread = [twins[0]!, good(700, 18, { id: "a", dilution: "soon" })];
    const problems = [twins, unread].map((runs) => {
      const check = checkKnowledge({ ...learn(stated, [twins[0]!]), runs });
      return check.ok ? [] : check.problems.map(({ path }) => path);
    });
    expect(problems).toEqual([["/runs/1/date"], ["/runs/1/dilution"]]);
  });
});

describe("a run of 8,000 brackets, one in the other", () => {
  it("is refused by name", () => {
    let deep: unknown = 1;
    for (let i = 0; i < 8000; i += 1) deep = [deep];
    const run = { ...good(600), outcome: { kind: "good", logSd: deep } };
    expect(thrown(() => learn(stated, [anyOf(run)]))).toBe(
      "RangeError: learn: runs[0].outcome must be plain data that can be read, at most 20 levels deep, got an object",
    );
  });
});

describe("a notebook of more people and thermometers than a club has", () => {
  const start = startKnowledge({ timeS: 510, temperatureC: 20 });
  const runs = (count: number): readonly DevelopmentRun[] =>
    Array.from({ length: count }, (_, i) => ({
      timeS: 400 + (i % 9) * 25,
      temperatureC: 20,
      by: `person ${i}`,
      thermometer: `thermometer ${i}`,
      outcome: { kind: "good" },
      id: String(i),
    }));

  it("is learned up to 200 numbers, and refused beyond: the work grows with their cube", () => {
    expect(learn(start, runs(90)).parameters.length).toBeLessThanOrEqual(200);
    const check = checkKnowledge({ schema: 1, prior: start.prior, runs: runs(500) });
    expect(check.ok ? [] : check.problems).toEqual([
      expect.objectContaining({
        path: "/runs",
        code: "out-of-range",
        expected: { must: "told-apart", max: 200 },
        message: expect.stringContaining("people, thermometers, days and conditions") as string,
      }),
    ]);
    expect(() => learn(start, runs(500))).toThrow(RangeError);
  });
});
