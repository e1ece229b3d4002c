/* The cautions about the answer as a whole. */
import { describe, expect, it } from "vitest";
import type { Caution } from "../../src/core/caution.js";
import { outcomeJudge } from "../../src/compensate/outcomeCautions.js";
import { type Baseline, compensate, learn, startKnowledge } from "../../src/index.js";
import { anyOf } from "../helpers.js";

describe("the cautions about the answer as a whole", () => {
  const known: Baseline = {
    timeS: 510,
    temperatureC: 20,
    dilution: "1+9",
    agitation: { everyS: 60 },
    gamma: 0.6,
  };
  it("call an interval wide above a ratio of 1.5, not at it", () => {
    const of = (highS: number): readonly Caution[] => {
      const cautions: Caution[] = [];
      outcomeJudge(known, {}, false, [])(cautions, { timeS: 600, lowS: 500, highS }, [], [], {});
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
    expect(compensate(known, { temperatureC: 24 }, anyOf({ temprature: undefined })).cautions).toEqual(
      compensate(known, { temperatureC: 24 }).cautions,
    );
    const learned = learn(startKnowledge(known), []);
    expect(compensate(known, { temperatureC: 24 }, learned).cautions.map(({ code }) => code)).not.toContain(
      "unknown-field",
    );
  });
  it("warn of an age that no law and no known time covers, and not of stock mixed the evening before", () => {
    const warned = (ageH: number, from = known, laws = {}): readonly Caution[] =>
      compensate(from, { ageH }, laws).cautions.filter(({ code }) => code === "age-unknown");
    expect(warned(18)).toEqual([]);
    expect(warned(24)).toEqual([]);
    // Ten years.
    expect(warned(87_600)).toMatchObject([
      { severity: "stop", path: "/conditions/ageH", quantity: "ageH", limit: 24, actual: 87_600 },
    ]);
    expect(compensate(known, { ageH: 241 }).refused).toBe(true);
    expect(compensate(known, { ageH: 240 }).refused).toBe(false);
    expect(warned(330, { ...known, ageH: 300 })).toMatchObject([{ severity: "warn" }]);
    expect(warned(100, known, { age: { kind: "half-life", halfLifeH: 200 } })).toEqual([]);
    expect(warned(100, known, { age: { kind: "life", lifeH: 200 } })).toEqual([]);
    expect(warned(100, known, { age: { kind: "slowing", perRootH: 0.01 } })).toMatchObject([{ limit: 25 }]);
    // The known time was found in such a bath.
    expect(warned(100, { ...known, ageH: 90 })).toEqual([]);
    expect(warned(200, { ...known, ageH: 90 })).toHaveLength(1);
  });
  it("name a field whose name is empty", () => {
    expect(compensate(known, anyOf({ "": 5 })).cautions).toMatchObject([
      { code: "unknown-field", path: "/conditions/", data: { field: "" } },
    ]);
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
