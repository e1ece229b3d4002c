/* The edges of the terms: exact limits, texts that name the field, and rows that hold nothing they should not. */
import { describe, expect, it } from "vitest";
import {
  compensate,
  learn,
  startKnowledge,
  type Baseline,
  type Conditions,
  type Knowledge,
} from "../../src/index.js";
import { outcomeJudge } from "../../src/compensate/outcomeCautions.js";
import type { Caution } from "../../src/core/caution.js";

const anyOf = (value: unknown): any => value;
const known: Baseline = {
  timeS: 510,
  temperatureC: 20,
  dilution: "1+9",
  agitation: { everyS: 60 },
  gamma: 0.6,
};
const knowledge: Knowledge = {
  temperature: { kind: "coefficient", ratio: 2, intervalC: 10 },
  dilution: { kind: "power", exponent: 0.9 },
  agitation: { staleLoss: 0.6, staleTimeS: 60 },
  use: { increase: 0.1, perCm2PerL: 500, growth: "linear" },
  age: { kind: "half-life", halfLifeH: 10 },
  growth: { gammaInfinity: 1.4, ratePerS: 0.004, appearanceS: 0 },
};
const all: Conditions = {
  temperatureC: 21,
  dilution: "1+10",
  agitation: { everyS: 30 },
  usedCm2PerL: 100,
  ageH: 1,
  gamma: 0.65,
};
describe("a row", () => {
  it("has no field for runs where nothing was learned, so that it can be compared field by field", () => {
    const { factors } = compensate(known, all, knowledge);
    expect(factors).toHaveLength(8);
    for (const factor of factors)
      expect(Object.keys(factor), factor.cause).toEqual([
        "cause",
        "value",
        "logSd",
        "basis",
        "sources",
        ...(["baseline", "interaction"].includes(factor.cause) ? [] : ["from", "to"]),
      ]);
  });
  it("stands for age, too, where the bath is past its life", () => {
    const factor = compensate(known, { ageH: 3 }, { age: { kind: "life", lifeH: 2 } }).factors.at(-1);
    // The spread over a whole life is 10 %, however long past it the bath is.
    expect(factor).toEqual({
      cause: "age",
      from: 0,
      to: 3,
      value: 1,
      logSd: 0.1,
      basis: "given",
      sources: [],
    });
  });
  it("goes by the kind of a law, not by the fields that it happens to hold", () => {
    // Ten hours are one half-life: twice the time. A life that was left in the law from before means nothing.
    const answer = compensate(
      known,
      { ageH: 10 },
      anyOf({ age: { kind: "half-life", halfLifeH: 10, lifeH: 1 } }),
    );
    expect(answer.timeS).toBeCloseTo(1020, 9);
    expect(answer.cautions.map((one) => one.code)).not.toContain("bath-past-life");
  });
});

describe("a refusal names the field", () => {
  const sources = { sources: 1 };
  it.each<[Partial<Baseline>, unknown, unknown, Error]>([
    [
      {},
      {},
      { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 201 } },
      new RangeError(
        "compensate: knowledge.temperature.activationEnergyKJPerMol must be from 0 to 200 kJ/mol, got 201",
      ),
    ],
    [
      {},
      { temperatureC: { startC: 20, ambientC: 20, timeConstantS: 9 } },
      { temperature: { ...knowledge.temperature, ...sources } },
      new TypeError("compensate: knowledge.temperature.sources must be an array, got 1"),
    ],
    [
      {},
      { dilution: "1+9" },
      { dilution: { ...knowledge.dilution, ...sources } },
      new TypeError("compensate: knowledge.dilution.sources must be an array, got 1"),
    ],
    [
      {},
      { dilution: "1+9" },
      { dilution: { kind: "power", exponent: 4 } },
      new RangeError("compensate: knowledge.dilution.exponent must be from 0 to 3, got 4"),
    ],
    [
      {},
      { agitation: "stand" },
      { agitation: { ...knowledge.agitation, ...sources } },
      new TypeError("compensate: knowledge.agitation.sources must be an array, got 1"),
    ],
    [
      {},
      { agitation: "stand" },
      { agitation: { staleLoss: 1, staleTimeS: 60 } },
      new RangeError("compensate: knowledge.agitation.staleLoss must be from 0 to 0.99, got 1"),
    ],
    [
      { agitation: { everyS: 0 } },
      { agitation: "stand" },
      {},
      new RangeError("compensate: baseline.agitation.everyS must be above 0 and at most 3600 s, got 0"),
    ],
    [
      {},
      { agitation: { everyS: 3601 } },
      {},
      new RangeError("compensate: conditions.agitation.everyS must be above 0 and at most 3600 s, got 3601"),
    ],
    [
      {},
      { usedCm2PerL: 1 },
      { use: { ...knowledge.use, ...sources } },
      new TypeError("compensate: knowledge.use.sources must be an array, got 1"),
    ],
    [
      {},
      { ageH: 1 },
      { age: { ...knowledge.age, ...sources } },
      new TypeError("compensate: knowledge.age.sources must be an array, got 1"),
    ],
    [
      {},
      { gamma: 0.7 },
      { growth: { ...knowledge.growth, ...sources } },
      new TypeError("compensate: knowledge.growth.sources must be an array, got 1"),
    ],
  ])("%#", (baseline, conditions, laws, error) => {
    expect(() => compensate({ ...known, ...baseline }, anyOf(conditions), anyOf(laws))).toThrow(error);
  });
});

describe("the cautions about the answer as a whole", () => {
  it("call an interval wide above a ratio of 1.5, not at it", () => {
    const of = (highS: number): readonly Caution[] => {
      const cautions: Caution[] = [];
      outcomeJudge([], known, {}, false)(cautions, { timeS: 600, lowS: 500, highS }, 0);
      return cautions;
    };
    // 1.5 × 500 s = 750 s; 751/500 = 1.502.
    expect(of(750)).toEqual([]);
    expect(of(751)).toMatchObject([
      {
        code: "wide-interval",
        severity: "warn",
        limit: 1.5,
        actual: 1.502,
      },
    ]);
  });
  it("name a law that is not read, and take what learn made as it is", () => {
    const law = { kind: "arrhenius", activationEnergyKJPerMol: 30 } as const;
    const misspelt = compensate(known, { temperatureC: 24 }, anyOf({ temprature: law }));
    expect(misspelt.cautions).toContainEqual({
      code: "unknown-field",
      severity: "warn",
      message: 'The field "temprature" is not read. Is temperature meant?',
      path: "/knowledge/temprature",
      data: { field: "temprature", nearest: "temperature" },
    });
    const learned = learn(startKnowledge(known), []);
    expect(compensate(known, { temperatureC: 24 }, learned).cautions.map(({ code }) => code)).not.toContain(
      "unknown-field",
    );
  });
  it("repeat sixty characters of an unknown name, and the whole of it in the path", () => {
    const name = `${"n".repeat(60)}ever`;
    expect(compensate(known, anyOf({ [name]: 1 })).cautions).toMatchObject([
      {
        code: "unknown-field",
        severity: "warn",
        path: `/conditions/${name}`,
      },
    ]);
  });
});

describe("a log", () => {
  it("that ends with the development is not held", () => {
    // At the baseline's own temperature the rate is 1, so 512 s of clock do the work of 512 s; a sixteenth is
    // 32 s, which adds up exactly.
    const at = (lastS: number): readonly string[] => {
      const answer = compensate(
        { timeS: 512, temperatureC: 20 },
        {
          temperatureC: [
            { timeS: 0, temperatureC: 20 },
            { timeS: lastS, temperatureC: 20 },
          ],
        },
        knowledge,
      );
      expect(answer.timeS).toBe(512);
      return answer.cautions.map((one) => one.code);
    };
    expect(at(512)).toEqual([]);
    expect(at(511)).toEqual(["log-held"]);
  });
});

describe("what the baseline says", () => {
  const where = "compensate: baseline.";
  it.each([
    [
      { dilution: "hello" },
      new RangeError(`${where}dilution must be "stock" or parts such as "1+9", got "hello"`),
    ],
    [{ agitation: 30 }, new TypeError(`${where}agitation must be an object, got 30`)],
    [{ usedCm2PerL: -1 }, new RangeError(`${where}usedCm2PerL must be from 0 to 1000000 cm²/l, got -1`)],
    [{ ageH: -1 }, new RangeError(`${where}ageH must be from 0 to 1000000 h, got -1`)],
    [{ gamma: 0 }, new RangeError(`${where}gamma must be above 0 and at most 1000, got 0`)],
  ])("is refused when it is nonsense, even where today does not ask for it: %j", (nonsense, error) => {
    expect(() =>
      compensate(anyOf({ timeS: 480, temperatureC: 20, ...nonsense }), { temperatureC: 18 }),
    ).toThrow(error);
  });
});
