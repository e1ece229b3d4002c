/*
 * The far ends of learning: outcomes that claim to be exact, runs that are one run over and over, laws so
 * steep that no clock shows their times. Whatever comes in, learning ends, its numbers are numbers, and no
 * number is known better than the runs can tell. All runs are invented.
 */
import { fc } from "../property.js";
import { describe, expect, it } from "vitest";
import { learn, nextTest, predict, startKnowledge, tidyRuns, type Run } from "../../src/index.js";
import { baseline, good, start, stated } from "./start.js";

const numbersIn = (value: unknown): number[] =>
  typeof value === "number"
    ? [value]
    : typeof value === "object" && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];

const edge = (max: number) =>
  fc.oneof(fc.constantFrom(0, max / 1e3, max), fc.double({ min: 0, max, noNaN: true }));
const run: fc.Arbitrary<Run> = fc.record({
  timeS: fc.constantFrom(1, 510, 1e6),
  temperatureC: fc.constantFrom(0, 18, 20, 100),
  dilution: fc.constantFrom("stock", "1+9", "1+1000"),
  usedCm2PerL: edge(1e6),
  ageH: edge(1e6),
  outcome: fc.record({
    kind: fc.constant("good" as const),
    logSd: fc.constantFrom(1e-30, 1e-12, 1e-9, 1e-8, 1e-6, 1e-4, 0.1, 3),
  }),
});

describe("learning from anything", () => {
  it("ends, in numbers, with no spread wider than before", () => {
    const laws = fc.record(
      {
        age: fc.oneof(
          fc.record({
            kind: fc.constant("half-life" as const),
            halfLifeH: fc.constantFrom(1e-30, 1, 24, 1e6),
            sdLog: fc.constantFrom(0, 0.3, 3),
          }),
          fc.record({
            kind: fc.constant("slowing" as const),
            perRootH: fc.constantFrom(-1, 0, 1),
            sdPerRootH: fc.constantFrom(0, 3),
          }),
        ),
        use: fc.record({
          increase: fc.constantFrom(0, 0.08, 10),
          perCm2PerL: fc.constantFrom(0.001, 516, 1e6),
          growth: fc.constantFrom("linear" as const, "compound" as const),
          sdIncrease: fc.constantFrom(0, 10),
        }),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(
        laws,
        fc.constantFrom("estimated" as const, "stated" as const),
        fc.array(run, { maxLength: 3 }),
        fc.integer({ min: 1, max: 4 }),
        (given, noise, few, times) => {
          const before = startKnowledge({ ...baseline, dilution: "1+9" }, { laws: given, noise });
          const known = learn(before, Array.from({ length: times }, () => few).flat());
          expect(
            numbersIn([known.parameters, known.joint, known.scatter, known.setAside]).every(Number.isFinite),
          ).toBe(true);
          known.parameters.forEach(({ sd, priorSd }) => {
            expect(sd).toBeGreaterThanOrEqual(0);
            expect(sd).toBeLessThanOrEqual(priorSd * (1 + 1e-9));
          });
          expect(numbersIn(tidyRuns(known)).every(Number.isFinite)).toBe(true);
          expect(nextTest(known, [{ temperatureC: 18 }], {})[0]!.expectedLogSd).toBeGreaterThanOrEqual(0);
          const { lowS, timeS, highS } = predict(known, { temperatureC: 18 });
          expect(lowS <= timeS && timeS <= highS).toBe(true);
        },
      ),
    );
  });
  it("takes no outcome for better than a tenth of a per cent of time", () => {
    const sure = (logSd: number) =>
      learn(stated, [good(600, 18, { outcome: { kind: "good", logSd } })]).parameters;
    expect(sure(1e-30)).toEqual(sure(1e-3));
    expect(sure(1e-3)[0]!.sd).toBeLessThan(sure(1.1e-3)[0]!.sd);
    // Measured to 1e-9 of density at the wanted one, an outcome is no better either.
    const patch = learn(stated, [
      good(600, 18, { outcome: { kind: "density", density: 0.7, wanted: 0.7, sd: 1e-9 } }),
    ]).parameters;
    expect(patch).toEqual(sure(1e-3));
  });
  it("two exact outcomes that disagree, under conditions that cannot be told apart, meet in the middle", () => {
    const twins = [600, 600.6].map((timeS) => good(timeS, 16, { outcome: { kind: "good", logSd: 1e-9 } }));
    const known = learn(stated, twins);
    expect(predict(known, { temperatureC: 16 }).timeS).toBeCloseTo(Math.sqrt(600 * 600.6), 2);
    expect(known.parameters[1]!.sd).toBeGreaterThan(0.5 * start.parameters[1]!.sd);
    // Not taken at their word they are two runs at 4 %.
    const four = twins.map((run) => ({ ...run, outcome: { kind: "good", logSd: 0.04 } as const }));
    expect(learn(start, twins).parameters).toEqual(learn(start, four).parameters);
  });
});

describe("runs that the laws cannot reach", () => {
  const reason = "past the bath's life of 10 h";
  it.each([
    ["a bath of 200 half-lives", { kind: "half-life", halfLifeH: 1, sdLog: 0.1 } as const, 200],
    [
      "a bath of 50 half-lives known to a factor of e³",
      { kind: "half-life", halfLifeH: 1, sdLog: 3 } as const,
      50,
    ],
  ])("sets aside by name: %s", (_, age, ageH) => {
    const known = learn(startKnowledge(baseline, { laws: { age } }), [
      good(600, 20, { ageH }),
      good(520, 20),
    ]);
    expect(known.setAside).toEqual([
      { run: known.runs.findIndex((each) => each.ageH === ageH), reason, weight: 0 },
    ]);
    expect(known.parameters[0]!.runs).toBe(1);
  });
  it("fits a run at the border and says no time for one past it", () => {
    const from = startKnowledge(baseline, {
      laws: { age: { kind: "half-life", halfLifeH: 1, sdLog: 0 } },
    });
    expect(learn(from, [good(600, 20, { ageH: 10 })])).toMatchObject({ setAside: [], baseline: { runs: 1 } });
    const known = learn(from, [good(600, 20, { ageH: 10.1 })]);
    expect(known.setAside).toEqual([{ run: 0, reason, weight: 0 }]);
    expect(tidyRuns(known)[0]).toMatchObject({ fittedS: null, logResidual: null, reason, weight: 0 });
    expect(() => nextTest(from, [{ ageH: 10.1 }], {})).toThrow(
      new RangeError(`nextTest: candidates[0] has no place in the model: ${reason}`),
    );
  });
});

describe("a number that was known exactly", () => {
  it("is taught by no run and stays as it was given", () => {
    const temperature = {
      kind: "arrhenius",
      activationEnergyKJPerMol: 70,
      sdKJPerMol: 0,
      sources: ["invented"],
    } as const;
    const known = learn(startKnowledge(baseline, { baseLogSd: 0, laws: { temperature } }), [
      good(700, 18),
      good(760, 17),
    ]);
    expect(known.parameters.slice(0, 2)).toEqual([
      { parameter: "baseline", cause: "baseline", value: 0, sd: 0, priorSd: 0, runs: 0 },
      { parameter: "temperature", cause: "temperature", value: 70, sd: 0, priorSd: 0, runs: 0 },
    ]);
    expect(known.temperature).toEqual(temperature);
    const { timeS, factors } = predict(known, { temperatureC: 20 });
    expect(timeS).toBe(baseline.timeS);
    expect(factors[0]).toMatchObject({ basis: "given", logSd: 0 });
  });
});
