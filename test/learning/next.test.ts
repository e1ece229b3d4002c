import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import {
  compensate,
  learn,
  nextTest,
  predict,
  startKnowledge,
  tidyRuns,
  type AgeLaw,
  type Agitation,
  type DilutionLaw,
  type LearnedKnowledge,
  type DevelopmentRun,
  type TemperatureLaw,
  type TestCandidate,
  type UseLaw,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";
const baseline = { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 } } as const;
const stated = startKnowledge(baseline, { noise: "stated" });
const spread = (known: LearnedKnowledge, question: object): number => {
  const { timeS, highS } = predict(known, question);
  return Math.log(highS / timeS) / 1.6448536269514722;
};

/** So far apart that each has a departure of its own. Nearer ones share one, and are foretold less exactly. */
const distant = fc.integer({ min: 5, max: 15 }).map((half) => 2 * half);

describe("nextTest", () => {
  const used = fc.record(
    {
      temperatureC: distant,
      dilution: fc.constantFrom("1+4", "1+9", "1+14", "1+24"),
      agitation: fc.constantFrom<Agitation>("continuous", { everyS: 30 }, { everyS: 180 }),
      usedCm2PerL: fc.constantFrom(0, 500, 3000, 8000),
      ageH: fc.constantFrom(0, 1, 3, 20, 23, 24),
    },
    { requiredKeys: [] },
  );
  const laws = fc.record(
    {
      temperature: fc.constantFrom<TemperatureLaw>(
        {
          kind: "table",
          rows: [
            { temperatureC: 16, timeS: 700 },
            { temperatureC: 20, timeS: 510 },
            { temperatureC: 24, timeS: 380 },
          ],
        },
        { kind: "coefficient", ratio: 2, intervalC: 10, sdRatio: 0.2 },
      ),
      dilution: fc.constantFrom<DilutionLaw>(
        {
          kind: "table",
          rows: [
            { dilution: "1+4", timeS: 300 },
            { dilution: "1+9", timeS: 510 },
            { dilution: "1+19", timeS: 800 },
          ],
        },
        { kind: "power", exponent: 0.7, sd: 0.2, scatterLogSd: 0.08 },
      ),
      age: fc.constantFrom<AgeLaw>({ kind: "life", lifeH: 40 }, { kind: "half-life", halfLifeH: 50 }),
      use: fc.constantFrom<UseLaw>(
        { increase: 0, perCm2PerL: 516, growth: "linear", sdIncrease: 0.05 },
        { increase: 0.1, perCm2PerL: 516, growth: "compound" },
      ),
    },
    { requiredKeys: [] },
  );
  test.prop([
    laws,
    fc.constantFrom(0, 4, 23),
    fc.constantFrom(0, 3000),
    fc.array(used, { maxLength: 2 }),
    used,
    used,
  ])(
    "foretells it under every law, from a fresh bath or an aged and used one: tables and ages that nothing has taught keep their spread until a test bears on them",
    (given, ageH, usedCm2PerL, before, candidate, question) => {
      const from = startKnowledge({ ...baseline, ageH, usedCm2PerL }, { laws: given, noise: "stated" });
      const known = learn(
        from,
        before.map((where, i): DevelopmentRun => ({
          temperatureC: 20,
          ...where,
          // Runs that contradict a table make its slope give way, which nothing foretells.
          timeS: predict(from, where).timeS + i,
          outcome: { kind: "good", logSd: 0.1 },
        })),
      );
      const [test] = nextTest(known, [{ ...candidate, outcomeLogSd: 0.1 }], question);
      const made = learn(known, [
        {
          temperatureC: 20,
          ...candidate,
          timeS: test!.timeS,
          outcome: { kind: "good", logSd: 0.1 },
          id: "test",
        },
      ]);
      // A number held at its limit is answered from there; its spread is the one foretold all the same, but
      // for the sign at an exact 0.
      fc.pre(!made.advice.some(({ code }) => code === "held-at-limit"));
      expect(spread(made, question)).toBeCloseTo(test!.expectedLogSd, 6);
    },
  );
  test.prop([
    fc.array(
      fc.record({
        temperatureC: distant,
        dilution: fc.constantFrom("1+4", "1+9", "1+19"),
      }),
      { minLength: 1, maxLength: 5 },
    ),
    distant,
  ])(
    "foretells the very spread that the run will leave, at known noise and temperatures 2 °C apart",
    (candidates, temperatureC) => {
      const question = { temperatureC, dilution: "1+14" };
      const known = learn(stated, [{ timeS: 600, temperatureC: 18, outcome: { kind: "good", logSd: 0.1 } }]);
      const values = candidates.map((each) => ({ ...each, outcomeLogSd: 0.1 }));
      const ranked = nextTest(known, values, question);
      expect(ranked).toHaveLength(candidates.length);
      ranked.forEach(({ candidate, expectedLogSd, timeS }, i) => {
        if (i > 0) expect(expectedLogSd).toBeGreaterThanOrEqual(ranked[i - 1]!.expectedLogSd);
        expect(timeS).toBeCloseTo(predict(known, candidate).timeS, 6);
        const { outcomeLogSd: logSd, ...where } = candidate;
        const made = learn(known, [{ ...where, timeS, outcome: { kind: "good", logSd } }]);
        expect(spread(made, question)).toBeCloseTo(expectedLogSd, 9);
      });
    },
  );
  const anyC = fc.double({ min: 10, max: 30, noNaN: true });
  test.prop([fc.array(anyC, { minLength: 1, maxLength: 3 }), anyC, anyC])(
    // The question has a knot in what is foretold, and may have none among the runs: then the answer after the test
    // is wider. Of 30,000 draws aimed at the edges of the spacing 1 % missed by more than 10 %, and the worst by 24 %.
    "foretells it to 25 % too narrow and 1 % too wide where temperatures lie anywhere",
    (before, temperatureC, other) => {
      const known = learn(
        stated,
        before.map((each, i): DevelopmentRun => ({
          timeS: 600 + i,
          temperatureC: each,
          outcome: { kind: "good", logSd: 0.1 },
        })),
      );
      const [test] = nextTest(known, [{ temperatureC, outcomeLogSd: 0.1 }], { temperatureC: other });
      const outcome = { kind: "good", logSd: 0.1 } as const;
      const made = learn(known, [{ temperatureC, timeS: test!.timeS, outcome }]);
      const left = spread(made, { temperatureC: other }) / test!.expectedLogSd;
      expect(left).toBeGreaterThan(0.99);
      expect(left).toBeLessThan(Math.exp(0.25));
    },
  );
  it("prefers to learn where the negative will be, and a measured strip to one judged by eye", () => {
    const [best, worst] = nextTest(stated, [{ temperatureC: 20 }, { temperatureC: 13 }], {
      temperatureC: 12,
    });
    expect([best?.candidate.temperatureC, worst?.candidate.temperatureC]).toEqual([13, 20]);
    const [first] = nextTest(stated, [{ temperatureC: 12 }, { temperatureC: 12, outcomeLogSd: 0.03 }], {
      temperatureC: 12,
    });
    expect(first?.candidate).toEqual({ temperatureC: 12, outcomeLogSd: 0.03 });
    // A development repeats to 4 %: only where noise is stated is an outcome worth more than that.
    const after = (known: LearnedKnowledge, outcomeLogSd: number): number =>
      nextTest(known, [{ outcomeLogSd }], {})[0]!.expectedLogSd;
    expect(after(startKnowledge(baseline), 0.01)).toBe(after(startKnowledge(baseline), 0.04));
    expect(after(startKnowledge(baseline), 0.05)).toBeGreaterThan(after(startKnowledge(baseline), 0.04));
    expect(after(stated, 0.01)).toBeLessThan(after(stated, 0.04));
    expect(nextTest(stated, [], {})).toEqual([]);
  });
  it("keeps the order of equals", () => {
    const twins = [
      { "temperatureC": 15, "x-note": 1 },
      { "temperatureC": 15, "x-note": 2 },
    ];
    expect(nextTest(stated, twins, { temperatureC: 15 }).map(({ candidate }) => candidate)).toEqual(twins);
  });
  it("puts a strip 15 % off before one at the predicted time, when an eye judges: the two teach alike", () => {
    const known = learn(startKnowledge(baseline), [
      { timeS: 510, temperatureC: 20, outcome: { kind: "good" } },
    ]);
    const { timeS } = predict(known, {});
    const [best, other] = nextTest(known, [{ timeS }, { timeS: 1.15 * timeS }], {});
    expect(best?.timeS).toBe(1.15 * timeS);
    expect(best!.expectedLogSd).toBeLessThan(other!.expectedLogSd);
  });
  it("does not count on twenty good negatives at the predicted time", () => {
    const good = Array.from({ length: 20 }, (_, i) => ({
      timeS: 510,
      temperatureC: 20,
      id: String(i),
      outcome: { kind: "good" } as const,
    }));
    const known = learn(startKnowledge(baseline), good);
    // A window of a third in ln(time) leaves more than its eye's noise shared by twenty, 0.016.
    expect(spread(known, {})).toBeGreaterThan(0.04);
  });
  it("takes the scatter of the runs so far into account", () => {
    const wild = learn(
      startKnowledge(baseline),
      [250, 300, 900, 1000, 280, 950].map((timeS, i) => ({
        timeS,
        temperatureC: 20,
        id: String(i),
        outcome: { kind: "good", logSd: 0.1 } as const,
      })),
    );
    const now = spread(wild, {});
    expect(nextTest(wild, [{ outcomeLogSd: 0.1 }], {})[0]?.expectedLogSd).toBeCloseTo(
      Math.sqrt(now ** 2 - now ** 4 / (now ** 2 + (0.1 * wild.scatter) ** 2)),
      9,
    );
  });
  it("tells what a test costs in minutes and stock", () => {
    const known = learn(stated, [{ timeS: 600, temperatureC: 18, outcome: { kind: "good" } }]);
    const cost = (candidate: TestCandidate) => nextTest(known, [candidate], {})[0]!;
    expect(cost({ timeS: 300, volumeMl: 500 })).toMatchObject({
      timeS: 300,
      minutes: 5,
      stockMl: expect.closeTo(50, 9),
    });
    expect(cost({ timeS: 300, volumeMl: 500, dilution: "1+4" }).stockMl).toBeCloseTo(100, 9);
    expect("stockMl" in cost({ timeS: 300 })).toBe(false);
    expect(
      nextTest(startKnowledge({ timeS: 510, temperatureC: 20 }), [{ volumeMl: 250 }], {})[0]?.stockMl,
    ).toBe(250);
  });
  it("knows what the runs said of strength", () => {
    const strength = { cause: "strength", value: 1.2, logSd: 0.3, basis: "default", sources: [] } as const;
    const known = learn(startKnowledge(baseline, { baseLogSd: 0.01, noise: "stated" }), [
      { timeS: 765, temperatureC: 20, strength, outcome: { kind: "good" } },
    ]);
    const [test] = nextTest(known, [{ strength }], { strength });
    expect(test?.timeS).toBeCloseTo(predict(known, { strength }).timeS, 8);
    expect(test?.expectedLogSd).toBeLessThan(spread(known, { strength }));
  });
  it("refuses values out of range, by message", () => {
    const range = (message: string): RangeError => new RangeError(message);
    expect(() => nextTest(anyOf(1), [], {})).toThrow(
      new TypeError("nextTest: knowledge must be an object, got 1"),
    );
    expect(() => nextTest(stated, anyOf(1), {})).toThrow(
      new TypeError("nextTest: candidates must be an array, got 1"),
    );
    expect(() => nextTest(stated, [], anyOf(1))).toThrow(
      new TypeError("nextTest: question must be an object, got 1"),
    );
    expect(() => nextTest(stated, [anyOf(1)], {})).toThrow(
      new TypeError("nextTest: candidates[0] must be an object, got 1"),
    );
    const from = (prior: object): typeof stated => ({ ...stated, prior: { ...stated.prior, ...prior } });
    expect(() => nextTest(from({ baseline: 1 }), [], {})).toThrow(
      new TypeError("nextTest: knowledge.prior.baseline must be an object, got 1"),
    );
    expect(() => nextTest(from({ baseline: { ...baseline, timeS: 0 } }), [], {})).toThrow(
      range("nextTest: knowledge.prior.baseline.timeS must be above 0 and at most 1000000 s, got 0"),
    );
    expect(() => nextTest(from({ laws: { temperature: { kind: "guess" } } }), [], {})).toThrow(
      range(
        'nextTest: knowledge.prior.laws.temperature.kind must be "arrhenius", "coefficient" or "table", got "guess"',
      ),
    );
    expect(() => nextTest(stated, [{ agitation: "stand" }], {})).toThrow(
      range(
        "nextTest: candidates[0] must be comparable with the known time, but it compares stand development with agitation",
      ),
    );
    expect(() => nextTest(stated, [{}, { temperatureC: 200 }], {})).toThrow(
      range("nextTest: candidates[1].temperatureC must be from 0 to 100 °C, got 200"),
    );
    expect(() => nextTest(stated, [{ timeS: 0 }], {})).toThrow(
      range("nextTest: candidates[0].timeS must be above 0 and at most 1000000000 s, got 0"),
    );
    expect(() => nextTest(stated, [{ outcomeLogSd: 0 }], {})).toThrow(
      range("nextTest: candidates[0].outcomeLogSd must be above 0 and at most 3, got 0"),
    );
    expect(() => nextTest(stated, [{ volumeMl: 0 }], {})).toThrow(
      range("nextTest: candidates[0].volumeMl must be above 0 and at most 1000000 ml, got 0"),
    );
    expect(() =>
      nextTest(startKnowledge({ timeS: 1, temperatureC: 20 }), [{ volumeMl: 9, dilution: "1+9" }], {}),
    ).toThrow(
      new TypeError(
        "nextTest: candidates[0].dilution needs baseline.dilution: what was it for the known time?",
      ),
    );
  });
});

describe("tidyRuns", () => {
  it("has no right time for thin and dense where the knowledge agrees, else the nearest", () => {
    const runs: readonly DevelopmentRun[] = [
      { timeS: 300, temperatureC: 20, outcome: { kind: "thin" } },
      { timeS: 600, temperatureC: 20, outcome: { kind: "thin" } },
    ];
    const known = { timeS: 510, temperatureC: 20, logSd: 0.001 };
    const start = startKnowledge(known, { noise: "stated" });
    const rows = tidyRuns(learn(start, runs));
    expect(rows.find(({ timeS }) => timeS === 300)).toMatchObject({ rightS: null, logResidual: null });
    // A quarter step, 1.4^(1/4), beyond 600 s.
    expect(rows.find(({ timeS }) => timeS === 600)).toMatchObject({
      rightS: expect.closeTo(600 * 1.4 ** 0.25, 6),
      logResidual: expect.closeTo(Math.log((600 * 1.4 ** 0.25) / 510), 2),
      logSd: null,
    });
  });
  it("lays each run out as a flat row of the same fields", () => {
    const run: DevelopmentRun = {
      timeS: 600,
      temperatureC: 18,
      dilution: "1+14",
      agitation: { everyS: 30 },
      usedCm2PerL: 100,
      ageH: 2,
      pushStops: 1,
      date: "2024-05-01",
      id: "hut 1",
      thermometer: "slow one",
      by: "friend",
      batch: "second bottle",
      note: "tap water",
      outcome: { kind: "judged", timeRatio: 0.9, logSd: 0.2 },
    };
    const known = learn(stated, [
      run,
      { timeS: 510, temperatureC: 20, agitation: "stand", outcome: { kind: "good" } },
      {
        timeS: 510,
        temperatureC: 20,
        agitation: "continuous",
        outcome: { kind: "failed", note: "stop first" },
      },
      { timeS: 510, temperatureC: 21, outcome: { kind: "fogged" } },
      // Not all name a thermometer: a question without one means none.
      { timeS: 510, temperatureC: 20, outcome: { kind: "good" } },
    ]);
    const fittedS = predict(known, {
      temperatureC: 18,
      dilution: "1+14",
      agitation: { everyS: 30 },
      usedCm2PerL: 100,
      ageH: 2,
      pushStops: 1,
      thermometer: "slow one",
      by: "friend",
      batch: "second bottle",
    }).timeS;
    const rows = tidyRuns(known);
    expect(rows.map(({ run: place }) => place)).toEqual([0, 1, 2, 3, 4]);
    expect(rows.find(({ id }) => id === "hut 1")).toEqual({
      run: expect.any(Number),
      id: "hut 1",
      date: "2024-05-01",
      timeS: 600,
      temperatureC: 18,
      dilution: "1+14",
      concentration: expect.closeTo(1 / 15, 12),
      agitationEveryS: 30,
      usedCm2PerL: 100,
      ageH: 2,
      strength: null,
      pushStops: 1,
      thermometer: "slow one",
      by: "friend",
      batch: "second bottle",
      printed: false,
      outcome: "judged",
      rightS: expect.closeTo(540, 9),
      logSd: 0.2,
      fittedS: expect.closeTo(fittedS, 8),
      logResidual: expect.closeTo(Math.log(540 / fittedS), 10),
      weight: 1,
      reason: null,
      note: "tap water",
    });
    const nothing = {
      id: null,
      date: null,
      dilution: null,
      concentration: null,
      usedCm2PerL: null,
      ageH: null,
      strength: null,
      pushStops: null,
      thermometer: null,
      by: null,
      batch: null,
      printed: false,
    };
    const failed = rows.find(({ outcome }) => outcome === "failed")!;
    expect(failed).toEqual({
      ...nothing,
      run: expect.any(Number),
      timeS: 510,
      temperatureC: 20,
      agitationEveryS: 0,
      outcome: "failed",
      rightS: null,
      logSd: null,
      fittedS: expect.closeTo(compensate(known.baseline, { agitation: "continuous" }, known).timeS, 8),
      logResidual: null,
      weight: 0,
      reason: "failed",
      note: "stop first",
    });
    expect(rows.find(({ outcome }) => outcome === "fogged")).toMatchObject({
      agitationEveryS: null,
      note: null,
      reason: "fogged",
    });
    const stood = rows.find(({ reason }) => reason?.startsWith("stand"));
    expect(stood).toMatchObject({
      agitationEveryS: null,
      rightS: expect.closeTo(510, 9),
      fittedS: null,
      logResidual: null,
      weight: 0,
    });
  });
});
