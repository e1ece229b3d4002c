/* Laws learned from a single run, where the answer can be written out by hand. All runs are invented. */
import { describe, expect, it } from "vitest";
import { learn, startKnowledge, tidyRuns, handbookTemperatureLaw, predict } from "../../src/index.js";
import { baseline, good, parameter } from "./start.js";
import { anyOf } from "../helpers.js";

describe("laws learned from one run, by hand", () => {
  /*
   * With the base time known for certain, one run of surprise y and slope h, known to r, moves a number of
   * spread s by y·h·s²/(h²s² + r²) and leaves it the variance 1/(1/s² + h²/r²).
   */
  const moved = (surprise: number, slope: number, sd: number, r: number): number =>
    (surprise * slope * sd ** 2) / (slope ** 2 * sd ** 2 + r ** 2);
  const left = (slope: number, sd: number, r: number): number =>
    Math.sqrt(1 / (1 / sd ** 2 + slope ** 2 / r ** 2));
  it("a compound use law: ln(time) = portions·ln(1 + increase), scaled", () => {
    const use = {
      increase: 0.1,
      sdIncrease: 0.05,
      perCm2PerL: 500,
      growth: "compound",
      sources: ["invented"],
    } as const;
    const known = learn(startKnowledge(baseline, { baseLogSd: 0, noise: "stated", laws: { use } }), [
      good(700, 20, { usedCm2PerL: 1000 }),
    ]);
    // 1000 cm²/l are 2 portions of 500; a good run is known to 0.1.
    const slope = (2 * Math.log(1.1)) / 0.1;
    const value = 0.1 + moved(Math.log(700 / 510) - 2 * Math.log(1.1), slope, 0.05, 0.1);
    expect(parameter(known, "use").value).toBeCloseTo(value, 12);
    expect(known.use?.increase).toBeCloseTo(value, 12);
    expect(known.use?.sdIncrease).toBeCloseTo(left(slope, 0.05, 0.1), 12);
    expect(known.use?.shape).toBe(0.1);
  });
  it("a linear use law from a baseline in a used bath", () => {
    const use = {
      increase: 0.2,
      sdIncrease: 0.05,
      perCm2PerL: 500,
      growth: "linear",
      sources: ["invented"],
    } as const;
    const prior = startKnowledge(
      { ...baseline, usedCm2PerL: 500 },
      { baseLogSd: 0, noise: "stated", laws: { use } },
    );
    const known = learn(prior, [good(700, 20, { usedCm2PerL: 1000 })]);
    // From 1 portion to 2: ln(1.4/1.2), of which 1 of the increase is the 1/0.2.
    const slope = Math.log(1.4 / 1.2) / 0.2;
    expect(known.use?.increase).toBeCloseTo(
      0.2 + moved(Math.log(700 / 510) - Math.log(1.4 / 1.2), slope, 0.05, 0.1),
      12,
    );
    expect(known.use?.sdIncrease).toBeCloseTo(left(slope, 0.05, 0.1), 12);
    // A run in a bath as used as the baseline's says nothing of use.
    expect(parameter(learn(prior, [good(700)]), "use").runs).toBe(0);
  });
  it("an age law from a baseline in an aged bath", () => {
    const age = { kind: "slowing", perRootH: 0.05, sdPerRootH: 0.04, sources: ["invented"] } as const;
    const prior = startKnowledge({ ...baseline, ageH: 4 }, { baseLogSd: 0, noise: "stated", laws: { age } });
    const known = learn(prior, [good(700, 20, { ageH: 16 })]);
    // From √4 to √16: a slope of 2, and 0.05·2 expected.
    expect(parameter(known, "age").value).toBeCloseTo(
      0.05 + moved(Math.log(700 / 510) - 0.1, 2, 0.04, 0.1),
      12,
    );
    expect(parameter(known, "age").sd).toBeCloseTo(left(2, 0.04, 0.1), 12);
    // A run that was not fitted still has a time under the laws.
    expect(
      tidyRuns(learn(prior, [good(510, 20, { ageH: 16, outcome: { kind: "failed" } })]))[0]?.fittedS,
    ).toBeCloseTo(510 * Math.exp(0.1), 9);
  });
  it("a stand run under a baseline that stands; agitation has no place there", () => {
    const standing = startKnowledge({ ...baseline, agitation: "stand" }, { noise: "stated" });
    const known = learn(standing, [
      good(600, 20, { agitation: "stand" }),
      good(600, 20, { agitation: { everyS: 30 } }),
    ]);
    const reason = "stand";
    expect(known.setAside.map(({ run, reason: why }) => [known.runs[run]?.agitation, why])).toEqual([
      [{ everyS: 30 }, reason],
    ]);
    // The base time of spread 0.2 and one run of 0.1: four fifths of the way.
    expect(known.baseline.timeS).toBeCloseTo(510 * Math.exp(0.8 * Math.log(600 / 510)), 9);
  });
  it("a law given without sources has none afterwards either", () => {
    const { sources, ...bare } = handbookTemperatureLaw("pyro-metol");
    expect(sources).not.toHaveLength(0);
    const known = learn(startKnowledge(baseline, { laws: { temperature: anyOf(bare) } }), [good(600, 15)]);
    expect(known.temperature?.runs).toBe(1);
    expect(Object.keys(known.temperature!)).not.toContain("sources");
  });
});

describe("a rule of use that was printed for another dilution", () => {
  it("is learned by the stock in the litre, as compensate counts it", () => {
    const use = { increase: 0.1, perCm2PerL: 516.128, growth: "linear", dilution: "stock" } as const;
    const start = startKnowledge({ ...baseline, dilution: "1+1" }, { baseLogSd: 0.01, laws: { use } });
    // Two rolls in a litre of 1+1 are as four in a litre of stock.
    const known = learn(start, [good(510 * 1.4, 20, { usedCm2PerL: 2 * 516.128 })]);
    expect(known.use?.increase).toBeCloseTo(0.1, 9);
    expect(predict(known, { usedCm2PerL: 2 * 516.128 }).timeS).toBeCloseTo(510 * 1.4, 6);
    expect(tidyRuns(known)[0]?.fittedS).toBeCloseTo(510 * 1.4, 6);
  });
});
