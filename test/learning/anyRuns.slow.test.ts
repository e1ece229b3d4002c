/* Runs at the ends of every range, and outcomes taken as exact. All invented. */
import { describe, expect, it } from "vitest";
import { fc } from "../property.js";
import { type DevelopmentRun, startKnowledge, learn, tidyRuns, nextTest, predict } from "../../src/index.js";
import { baseline, stated, good, start } from "./start.js";

describe("learning from anything", () => {
  const numbersIn = (value: unknown): number[] =>
    typeof value === "number"
      ? [value]
      : typeof value === "object" && value !== null
        ? Object.values(value).flatMap(numbersIn)
        : [];
  const edge = (max: number) =>
    fc.oneof(fc.constantFrom(0, max / 1e3, max), fc.double({ min: 0, max, noNaN: true }));
  const run: fc.Arbitrary<DevelopmentRun> = fc.record({
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
  it("ends, in numbers, with no spread wider than before, but three times that of a base time at most", () => {
    const laws = fc.record(
      {
        age: fc.oneof(
          fc.record({
            kind: fc.constant("half-life" as const),
            halfLifeH: fc.constantFrom(1e-3, 1, 24, 1e6),
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
          known.parameters.forEach(({ parameter, sd, priorSd }) => {
            // Runs that contradict the known time make it less sure than it was said to be.
            const most = parameter === "baseline" && noise === "estimated" ? 3 : 1;
            expect(sd).toBeGreaterThanOrEqual(0);
            expect(sd).toBeLessThanOrEqual(most * priorSd * (1 + 1e-9));
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
    ]).parameters.filter(({ cause }) => cause !== "outcome");
    expect(patch).toEqual(
      sure(1e-3).map((one) => ({
        ...one,
        value: expect.closeTo(one.value, 9) as number,
        sd: expect.closeTo(one.sd, 9) as number,
      })),
    );
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
