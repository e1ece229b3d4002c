/* The rows of an answer: what they hold, and nothing else. */
import { describe, expect, it } from "vitest";
import { compensate, genericTemperatureLaw, type Conditions } from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { knowledge, known } from "./everyLaw.js";

describe("a row of the answer", () => {
  const all: Conditions = {
    temperatureC: 21,
    dilution: "1+10",
    agitation: { everyS: 30 },
    usedCm2PerL: 100,
    ageH: 1,
    gamma: 0.65,
  };
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

  it("rest on a generic law however it came", () => {
    const known = { timeS: 510, temperatureC: 20 };
    const handed = JSON.parse(JSON.stringify(genericTemperatureLaw)) as typeof genericTemperatureLaw;
    const plain = compensate(known, { temperatureC: 18 });
    for (const temperature of [genericTemperatureLaw, handed])
      expect(compensate(known, { temperatureC: 18 }, { temperature })).toEqual(plain);
    expect(plain.factors[1]).toMatchObject({ basis: "default" });
    expect(plain.factors[1]).not.toHaveProperty("runs");
    expect(plain.cautions.some(({ code }) => code === "default-law")).toBe(true);
  });
});
