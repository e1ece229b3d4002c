/* Push and pull against a maker's table and the trade's rule. */
import { describe, expect, it } from "vitest";
import { effect, pushCautions, pushFactor } from "../../src/index.js";
import { anyOf } from "../helpers.js";

/*
 * ILFORD, ILFOTEC DD-X 1+4 development times at 20 °C, in minutes by stops over the film's speed (plain-text
 * transcription of the maker's table, 2022). Films: HP5 PLUS, DELTA 400, SFX 200, T-MAX 400, T-MAX 100, PAN F
 * PLUS, DELTA 100.
 */
const table: readonly { readonly film: string; readonly minutes: readonly number[] }[] = [
  { film: "HP5 PLUS", minutes: [9, 10, 13, 20] },
  { film: "DELTA 400", minutes: [8, 10.5, 13.5, 18] },
  { film: "SFX 200", minutes: [10, 14] },
  { film: "T-MAX 400", minutes: [8, 10, 13] },
  { film: "T-MAX 100", minutes: [7, 9] },
  { film: "PAN F PLUS", minutes: [8, 9] },
  { film: "DELTA 100", minutes: [12, 14] },
];

describe("pushFactor against print", () => {
  const misses = table.flatMap(({ minutes }) =>
    minutes
      .slice(1)
      .map((one, i) => Math.log(one / minutes[0]! / pushFactor(i + 1)) / effect("push", 0, i + 1).logSd),
  );
  it("keeps the maker's twelve pushed times within two standard deviations and near the middle", () => {
    expect(misses).toHaveLength(12);
    // Seven films in one developer are not twelve independent draws; all within two standard deviations,
    // their mean near 0.
    for (const miss of misses) expect(Math.abs(miss)).toBeLessThan(2);
    expect(Math.abs(misses.reduce((sum, one) => sum + one, 0) / misses.length)).toBeLessThan(0.4);
  });
  it("keeps pulls of the same table: DELTA 100 at half its speed, FP4 PLUS at 50 against 125", () => {
    for (const [stops, ratio] of [
      [-1, 9.5 / 12],
      [Math.log2(50 / 125), 8 / 10],
    ] as const) {
      expect(Math.abs(Math.log(ratio / pushFactor(stops)) / effect("push", 0, stops).logSd)).toBeLessThan(
        1.645,
      );
    }
  });
  it("agrees with the rule of the zone system: N+1 1.3 to 1.5, N−1 0.7 to 0.8 (common practice), within its spread", () => {
    expect(Math.abs(Math.log(1.4 / pushFactor(1)) / effect("push", 0, 1).logSd)).toBeLessThan(1.645);
    expect(Math.abs(Math.log(0.75 / pushFactor(-1)) / effect("push", 0, -1).logSd)).toBeLessThan(1.645);
  });
});

describe("pushFactor", () => {
  it("is 1 for no push, and its steps grow", () => {
    expect(pushFactor(0)).toBe(1);
    const steps = [1, 2, 3, 4, 5].map((s) => pushFactor(s) / pushFactor(s - 1));
    for (let i = 1; i < steps.length; i += 1) expect(steps[i]!).toBeGreaterThan(steps[i - 1]!);
    expect(pushFactor(1)).toBeCloseTo(Math.exp(0.222), 12);
    expect(pushFactor(3)).toBeCloseTo(Math.exp(0.798), 12);
    expect(pushFactor(-2)).toBeCloseTo(Math.exp(-0.4), 12);
  });
  it("takes a constant factor where one is given", () => {
    expect(pushFactor(2, { perStop: 1.4 })).toBeCloseTo(1.96, 12);
    expect(pushFactor(-1, { perStop: 1.25 })).toBeCloseTo(0.8, 12);
    expect(pushFactor(3, { perStop: 1 })).toBe(1);
  });
  it("has a spread that grows by the stop", () => {
    expect(effect("push", 0, 0).logSd).toBe(0);
    expect(effect("push", 0, 3).logSd).toBeCloseTo(Math.sqrt(0.18 ** 2 + 3 * 0.067 ** 2), 12);
    expect(effect("push", 0, -1).logSd).toBeCloseTo(Math.sqrt(0.06 ** 2 + 0.067 ** 2), 12);
  });
  it("refuses what cannot be", () => {
    expect(() => pushFactor(-3.5)).toThrow(
      new RangeError("pushFactor: stops must be from -3 to 5 stops, got -3.5"),
    );
    expect(() => pushFactor(6)).toThrow(
      new RangeError("pushFactor: stops must be from -3 to 5 stops, got 6"),
    );
    expect(() => pushFactor(1, { perStop: 0.8 })).toThrow(
      new RangeError("pushFactor: law.perStop must be from 1 to 3, got 0.8"),
    );
    expect(() => pushFactor(1, { perStop: anyOf("2") })).toThrow(
      new TypeError('pushFactor: law.perStop must be a number, got "2"'),
    );
    expect(() => effect("push", 0, NaN).logSd).toThrow(
      new RangeError("effect: to must be from -3 to 5 stops, got NaN"),
    );
    expect(() => pushCautions(9)).toThrow(
      new RangeError("pushCautions: stops must be from -3 to 5 stops, got 9"),
    );
  });
});

describe("pushCautions", () => {
  it("says what a push does not do", () => {
    expect(pushCautions(0)).toEqual([]);
    expect(pushCautions(-2)).toEqual([]);
    expect(pushCautions(1)).toEqual([
      {
        code: "push-shadows",
        severity: "note",
        message: "A push lifts the middle tones. The shadows gain at most 0.67 of a stop.",
        quantity: "stops",
        actual: 1,
        data: { shadowStops: 2 / 3 },
      },
    ]);
    expect(pushCautions(3)[0]!.code).toBe("push-shadows");
    expect(pushCautions(3.5)).toEqual([
      {
        code: "push-far",
        severity: "warn",
        message: "Beyond a push of 3 stops published times hardly exist, and the shadows stay empty.",
        quantity: "stops",
        limit: 3,
        actual: 3.5,
      },
    ]);
    expect(pushCautions(-2.5)).toEqual([
      {
        code: "pull-far",
        severity: "warn",
        message: "A pull beyond 2 stops leaves a flat negative.",
        quantity: "stops",
        limit: -2,
        actual: -2.5,
      },
    ]);
  });
});
