import { describe, expect, it } from "vitest";
import { ageFactor, ageLogSd, compensate, type AgeLaw, type Baseline, type Conditions, type JointSpread, type Knowledge } from "../../src/index.js";

const anyOf = (value: unknown): any => value;
const baseline: Baseline = { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 }, ageH: 4, logSd: 0.1 };
const CAUSES = ["baseline", "temperature", "dilution", "agitation", "use", "age", "strength"];
const variance = (conditions: Conditions, knowledge: Knowledge, base: Baseline = baseline): number => {
  const { timeS, highS } = compensate(base, conditions, knowledge);
  return (Math.log(highS / timeS) / 1.6448536269514722) ** 2;
};
/** All pairs uncorrelated but one. */
const joint = (a: string, b: string, rho: number, timeS = 510): JointSpread => ({
  timeS,
  causes: CAUSES,
  correlation: CAUSES.map((x) => CAUSES.map((y) => (x === y ? 1 : (x === a && y === b) || (x === b && y === a) ? rho : 0))),
});

describe("laws that were learned together", () => {
  const laws: Knowledge = { age: { kind: "slowing", perRootH: -0.1, sdPerRootH: 0.05 } };
  const strength = { cause: "strength", value: 0.8, logSd: 0.2, basis: "given", sources: [] } as const;
  // Conditions under which each number acts with the sign given: up in the cold, when thinner, when still, when used, when old.
  const acts: readonly (readonly [cause: string, conditions: Conditions, sign: number])[] = [
    ["baseline", {}, 1],
    ["temperature", { temperatureC: 15 }, 1],
    ["temperature", { temperatureC: 25 }, -1],
    ["dilution", { dilution: "1+19" }, 1],
    ["dilution", { dilution: "1+4" }, -1],
    ["agitation", { agitation: { everyS: 120 } }, 1],
    ["agitation", { agitation: "continuous" }, -1],
    ["use", { usedCm2PerL: 1000 }, 1],
    ["age", { ageH: 16 }, 1],
    ["age", { ageH: 1 }, -1],
    ["strength", { strength }, 1],
  ];
  for (const [one, first, s] of acts)
    for (const [other, second, t] of acts.filter(([cause]) => CAUSES.indexOf(cause) > CAUSES.indexOf(one)))
      it(`${one} (${s}) and ${other} (${t}): adds 2·ρ·sd·sd with the sign of their slopes`, () => {
        const conditions = { ...first, ...second };
        const rows = compensate(baseline, conditions, laws).factors;
        const sd = (cause: string): number => rows.find((row) => row.cause === cause)!.logSd;
        const alone = rows.reduce((sum, row) => sum + row.logSd ** 2, 0);
        expect(variance(conditions, laws)).toBeCloseTo(alone, 12);
        expect(variance(conditions, { ...laws, joint: joint(one, other, -0.4) })).toBeCloseTo(alone - 0.8 * s * t * sd(one) * sd(other), 12);
      });

  it("leaves a base time out that was not learned with them, and causes that the spread does not know", () => {
    const conditions = { temperatureC: 15 };
    expect(variance(conditions, { joint: joint("baseline", "temperature", -0.9, 500) })).toBe(variance(conditions, {}));
    // Written by hand, without a schema, the joint spread is a field that is read.
    const { cautions } = compensate(baseline, conditions, { joint: joint("baseline", "temperature", -0.9) });
    expect(cautions.map(({ code }) => code)).not.toContain("unknown-field");
    expect(variance(conditions, { joint: { timeS: 510, causes: ["baseline"], correlation: [[1]] } })).toBe(variance(conditions, {}));
  });
  it("takes the age from 0 where the baseline is silent", () => {
    const young: Baseline = { timeS: 510, temperatureC: 20, logSd: 0.1 };
    const knowledge = { ...laws, joint: joint("baseline", "age", 0.5) };
    expect(variance({ ageH: 1 }, knowledge, young)).toBeCloseTo(0.01 + 0.0025 + 2 * 0.5 * 0.1 * 0.05, 12);
  });
  it("never goes below 0", () => {
    const sure = { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 60, sdKJPerMol: 10 } } as const;
    const sd = compensate(baseline, { temperatureC: 15 }, sure).factors[1]!.logSd;
    const { timeS, lowS, highS } = compensate({ ...baseline, logSd: sd }, { temperatureC: 15 }, { ...sure, joint: joint("baseline", "temperature", -1) });
    expect([lowS / timeS, highS / timeS]).toEqual([expect.closeTo(1, 6), expect.closeTo(1, 6)]);
  });
  it("refuses a correlation that is none", () => {
    expect(() => compensate(baseline, {}, { joint: anyOf({ timeS: 510, causes: CAUSES, correlation: [] }) })).toThrow(new TypeError("compensate: knowledge.joint must be a number, got undefined"));
    expect(() => compensate(baseline, { temperatureC: 15 }, { joint: joint("baseline", "temperature", 1.5) })).toThrow(new RangeError("compensate: knowledge.joint must be from -1 to 1, got 1.5"));
  });
  it("says how many runs a learned base time stands on", () => {
    expect(compensate({ ...baseline, runs: 3 }, {}).factors[0]).toMatchObject({ basis: "own runs", runs: 3, sources: [] });
    expect(compensate({ ...baseline, runs: 3 }, {}).cautions.map(({ code }) => code)).not.toContain("unknown-field");
  });
});

describe("a bath that slows with the root of its age", () => {
  const law: AgeLaw = { kind: "slowing", perRootH: 0.1 };
  it("takes e^(perRootH·√age), and no longer after 25 h", () => {
    expect(ageFactor(law, 4)).toBeCloseTo(Math.exp(0.2), 12);
    expect(ageFactor(law, 25)).toBeCloseTo(Math.exp(0.5), 12);
    expect(ageFactor(law, 1000)).toBe(ageFactor(law, 25));
    expect(ageFactor({ kind: "slowing", perRootH: -0.1 }, 4)).toBeCloseTo(Math.exp(-0.2), 12);
    expect(ageFactor(law, 0)).toBe(1);
  });
  it("has a spread of 0.1 for the root of an hour unless it says otherwise", () => {
    expect(ageLogSd(law, 0, 4)).toBeCloseTo(0.2, 12);
    expect(ageLogSd({ ...law, sdPerRootH: 0.03 }, 16, 4)).toBeCloseTo(0.06, 12);
    expect(ageLogSd(law, 100, 25)).toBe(0);
  });
  it("refuses by message", () => {
    expect(() => ageFactor({ kind: "slowing", perRootH: 2 }, 1)).toThrow(new RangeError("ageFactor: law.perRootH must be from -1 to 1, got 2"));
    expect(() => ageLogSd({ ...law, sdPerRootH: 4 }, 0, 1)).toThrow(new RangeError("ageLogSd: law.sdPerRootH must be from 0 to 3, got 4"));
  });
});
