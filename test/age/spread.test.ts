import { describe, expect, it } from "vitest";
import { compensate, effect } from "../../src/index.js";
import { anyOf } from "../helpers.js";

describe("the spread of age", () => {
  it("grows with the root of the hours where nothing is known, to 8 %", () => {
    expect(effect("age", 2, 2).logSd).toBe(0);
    expect(effect("age", 0, 1).logSd).toBeCloseTo(0.02, 12);
    expect(effect("age", 5, 1).logSd).toBeCloseTo(0.04, 12);
    expect(effect("age", 0, 16).logSd).toBeCloseTo(0.08, 12);
    expect(effect("age", 0, 24).logSd).toBe(0.08);
  });
  it("grows in proportion to the age past the day that the general rule covers", () => {
    expect(effect("age", 0, 24.001).logSd).toBeCloseTo(0.08, 4);
    expect(effect("age", 0, 30).logSd).toBeCloseTo(0.1, 12);
    expect(effect("age", 0, 504).logSd).toBeCloseTo(21 * 0.08, 12);
    // The known time was found in such a bath.
    expect(effect("age", 500, 501).logSd).toBeCloseTo(0.02, 12);
    // A wider spread says nothing more.
    expect(effect("age", 0, 87_600).logSd).toBe(3);
    const days = (coversH: number) => ({ kind: "speeding", perDay: 0, coversH, runs: 0 }) as const;
    expect(effect("age", 0, 504, days(1000)).logSd).toBe(0.08);
    expect(effect("age", 0, 2000, days(1000)).logSd).toBeCloseTo(0.16, 12);
    expect(effect("age", 0, 4, days(1)).logSd).toBeCloseTo(0.08, 12);
    // A half-life is its owner's word.
    expect(effect("age", 0, 504, { kind: "half-life", halfLifeH: 1000, sdLog: 0 }).logSd).toBe(0);
  });
  it("follows the law where one is known", () => {
    expect(effect("age", 0, 1, { kind: "life", lifeH: 2 }).logSd).toBeCloseTo(0.05, 12);
    expect(effect("age", 5, 0, { kind: "half-life", halfLifeH: 10 }).logSd).toBeCloseTo(
      0.3 * Math.LN2 * 0.5,
      12,
    );
    expect(effect("age", 0, 10, { kind: "half-life", halfLifeH: 10, sdLog: 0.1 }).logSd).toBeCloseTo(
      0.1 * Math.LN2,
      12,
    );
  });
  it("refuses values out of range, by code and path", () => {
    expect(() => effect("age", -1, 0).logSd).toThrow("effect: from must be from 0 to 1000000 h, got -1");
    expect(() => effect("age", 0, -1).logSd).toThrow("effect: to must be from 0 to 1000000 h, got -1");
    expect(() => effect("age", 0, 0, { kind: "half-life", halfLifeH: 1, sdLog: 4 }).logSd).toThrow(
      "effect: law.sdLog must be from 0 to 3, got 4",
    );
    expect(() => effect("age", 0, 0, anyOf({ kind: "cliff" })).logSd).toThrow("effect: law.kind must be");
  });
});

describe("a law of an unknown bath that nothing has taught", () => {
  it.each([
    { kind: "speeding", perDay: 0, sdPerDay: 0.08, runs: 0 },
    { kind: "slowing", perRootH: 0, sdPerRootH: 0.1, runs: 0 },
  ] as const)("has the spread of no law at any age: $kind", (law) => {
    for (const [from, to] of [
      [0, 1],
      [0, 30],
      [24, 25],
      [30, 1000],
      [5, 5],
    ] as const)
      expect(effect("age", from, to, law).logSd).toBe(effect("age", from, to).logSd);
  });
  it("is checked all the same", () => {
    const law = { kind: "slowing", perRootH: 0, sdPerRootH: 0.1, runs: 0 } as const;
    expect(() => effect("age", 0, 1, anyOf({ ...law, perRootH: {} })).logSd).toThrow(
      "effect: law.perRootH must be a number, got an object",
    );
    expect(() => effect("age", 0, 1, { ...law, sdPerRootH: NaN }).logSd).toThrow(
      "effect: law.sdPerRootH must be from 0 to 3, got NaN",
    );
    const speeding = { kind: "speeding", perDay: 0, sdPerDay: 0.08, runs: 0 } as const;
    expect(() => effect("age", 0, 1, { ...speeding, sdPerDay: NaN }).logSd).toThrow(
      "effect: law.sdPerDay must be from 0 to 3, got NaN",
    );
    expect(() => effect("age", 0, 1, anyOf(null)).logSd).toThrow("effect: law must be an object, got null");
  });
  it("once runs have taught it, has the spread of its number", () => {
    expect(effect("age", 30, 1000, { kind: "slowing", perRootH: 0, sdPerRootH: 0.1, runs: 1 }).logSd).toBe(3);
    expect(effect("age", 0, 25, { kind: "slowing", perRootH: 0, sdPerRootH: 0.1 }).logSd).toBeCloseTo(
      0.5,
      12,
    );
    const speeding = { kind: "speeding", perDay: 0.1, sdPerDay: 0.04, runs: 3 } as const;
    expect(effect("age", 0, 24, speeding).logSd).toBeCloseTo(0.04, 12);
    expect(effect("age", 6, 0, speeding).logSd).toBeCloseTo(0.04 / 8, 12);
    // Past a day no number tells, so that the spread of no law is added, for the hours beyond it.
    expect(effect("age", 0, 25, speeding).logSd).toBeCloseTo(Math.hypot(0.04, 0.02), 12);
    expect(effect("age", 30, 46, speeding).logSd).toBeCloseTo(0.08, 12);
    expect(effect("age", 30, 150, speeding).logSd).toBeCloseTo(0.4, 12);
  });
});

describe("an age that is stated, without a law", () => {
  it("moves no time, and leaves the answer usable: stock of the evening before, 18 h old, for 8:00", () => {
    const { timeS, lowS, highS } = compensate({ timeS: 480, temperatureC: 20 }, { ageH: 18 });
    expect(timeS).toBe(480);
    // 4 % of the time itself and 8 % of the age: 6:54 to 9:16.
    expect(Math.round(lowS)).toBe(414);
    expect(Math.round(highS)).toBe(556);
  });
});

describe("the spread of a life", () => {
  it("is a tenth over the whole of it, and in proportion to the hours between two ages", () => {
    const law = { kind: "life", lifeH: 4 } as const;
    expect(effect("age", 0, 4, law).logSd).toBeCloseTo(0.1, 12);
    expect(effect("age", 1, 3, law).logSd).toBeCloseTo(0.05, 12);
    expect(effect("age", 3, 3, law).logSd).toBe(0);
  });
});
