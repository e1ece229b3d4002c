import { describe, expect, it } from "vitest";
import { compensate, effect, type AgeLaw } from "../../src/index.js";
import { fc, test } from "../property.js";
import { anyOf } from "../helpers.js";

describe("the spread of age", () => {
  it("grows with the root of the hours where nothing is known, to 8 %", () => {
    expect(effect("age", 2, 2).logSd).toBe(0);
    expect(effect("age", 0, 1).logSd).toBeCloseTo(0.02, 12);
    expect(effect("age", 5, 1).logSd).toBeCloseTo(0.04, 12);
    expect(effect("age", 0, 16).logSd).toBeCloseTo(0.08, 12);
    expect(effect("age", 0, 24).logSd).toBe(0.08);
  });
  // Each further day is worth 8 %, one-sided: a half-normal of scale x adds 0.8 x to ln(time), and 0.75 x to its spread.
  it("grows in proportion to the age past the day that the general rule covers, to the slow side", () => {
    const at = (fromH: number, toH: number, law?: AgeLaw): readonly [number, number] => {
      const { factor, logSd } = effect("age", fromH, toH, law);
      return [Math.log(factor), logSd];
    };
    const about = (log: number, logSd: number): unknown[] => [
      expect.closeTo(log, 12),
      expect.closeTo(logSd, 12),
    ];
    expect(at(0, 24.001)).toEqual([expect.closeTo(0, 4), expect.closeTo(0.08, 4)]);
    // Six hours are a quarter of a day: x = 0.02.
    expect(at(0, 30)).toEqual(about(0.016, Math.hypot(0.08, 0.015)));
    // Twenty days: x = 1.6.
    expect(at(0, 504)).toEqual(about(1.28, Math.hypot(0.08, 1.2)));
    expect(at(504, 0)).toEqual(about(-1.28, Math.hypot(0.08, 1.2)));
    // The known time was found in such a bath: an hour more, a twenty-fourth of 0.08.
    expect(at(500, 501)).toEqual(about((0.8 * 0.08) / 24, Math.hypot(0.02, (0.75 * 0.08) / 24)));
    // A wider spread says nothing more: x = 3 - 0.08.
    expect(at(0, 87_600)).toEqual(about(2.336, Math.hypot(0.08, 2.19)));
    const days = (coversH: number) => ({ kind: "speeding", perDay: 0, coversH, runs: 0 }) as const;
    expect(at(0, 504, days(1000))).toEqual(about(0, 0.08));
    expect(at(0, 2000, days(1000))).toEqual(about(0.064, 0.1));
    // An hour is known to 2 %: x = 4 × 0.02 - 0.02, and four hours as far as an hour is.
    expect(at(0, 4, days(1))).toEqual(about(0.048, Math.hypot(0.02, 0.045)));
    // Younger, within the hours that are covered, and on from there: nothing jumps.
    expect(at(24, 24 + 1e-9)[0]).toBeCloseTo(0, 9);
    expect(at(12, 24)).toEqual(about(0, 0.02 * Math.sqrt(12)));
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
  it("refuses values out of range, by message", () => {
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
    // 975 h past its end are 39 times the 25 h that it covers: held at x = 3 - 0.08.
    expect(
      effect("age", 25, 1000, { kind: "slowing", perRootH: 0, sdPerRootH: 0.1, runs: 1 }).logSd,
    ).toBeCloseTo(Math.hypot(0.08, 0.75 * 2.92), 12);
    expect(effect("age", 0, 25, { kind: "slowing", perRootH: 0, sdPerRootH: 0.1 }).logSd).toBeCloseTo(
      0.5,
      12,
    );
    const speeding = { kind: "speeding", perDay: 0.1, sdPerDay: 0.04, runs: 3 } as const;
    expect(effect("age", 0, 24, speeding).logSd).toBeCloseTo(0.04, 12);
    expect(effect("age", 6, 0, speeding).logSd).toBeCloseTo(0.04 / 8, 12);
    // Past a day no number tells, so that the spread of no law is added, for the hours beyond it.
    expect(effect("age", 0, 25, speeding).logSd).toBeCloseTo(Math.hypot(0.04, 0.02, 0.06 / 24), 12);
    expect(effect("age", 30, 46, speeding).logSd).toBeCloseTo(Math.hypot(0.08, (0.06 * 16) / 24), 12);
    // From 30 to 150 h: x = 0.08 × 120/24 = 0.4.
    expect(effect("age", 30, 150, speeding).logSd).toBeCloseTo(Math.hypot(0.08, 0.3), 12);
    expect(effect("age", 30, 150, speeding).factor).toBeCloseTo(Math.exp(0.32), 12);
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

describe("an old bath", () => {
  const at = (ageH: number) => compensate({ timeS: 540, temperatureC: 20, dilution: "1+9" }, { ageH });
  const minutes = (timeS: number): number => Math.round(timeS / 6) / 10;
  it("of three days and of ten is slower, and never four times as fast", () => {
    const shown = (ageH: number): readonly number[] => {
      const { lowS, timeS, highS } = at(ageH);
      return [lowS, timeS, highS].map(minutes);
    };
    // x = 0.16 and 0.72; the spread with the 4 % of any time is 0.150 and 0.547.
    expect(shown(72)).toEqual([8, 10.2, 13.1]);
    expect(shown(240)).toEqual([6.5, 16, 39.4]);
  });
  it("has a long end that sinks by little more than 3 % against a spread on both sides", () => {
    for (let ageH = 24; ageH <= 1000; ageH += 12) {
      const twoSided = 540 * Math.exp(1.6449 * Math.hypot(0.04, Math.min(3, (0.08 * ageH) / 24)));
      expect(at(ageH).highS).toBeGreaterThan(0.969 * twoSided);
    }
  });
  const hours = fc.double({ min: 0, max: 2000, noNaN: true });
  const covers = fc.constantFrom(undefined, 1, 100, 1000);
  test.prop([hours, hours, hours, covers])("only slows with age, and turns round", (from, a, b, coversH) => {
    const law: AgeLaw = { kind: "speeding", perDay: 0, coversH, runs: 0 };
    const [young, old] = [Math.min(a, b), Math.max(a, b)];
    expect(effect("age", from, old, law).factor).toBeGreaterThanOrEqual(
      effect("age", from, young, law).factor,
    );
    const [there, back] = [effect("age", from, a, law), effect("age", a, from, law)];
    expect(there.factor * back.factor).toBeCloseTo(1, 12);
    expect(there.logSd).toBe(back.logSd);
    expect(effect("age", 0, old, law).logSd).toBeGreaterThanOrEqual(effect("age", 0, young, law).logSd);
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
