import { describe, expect, it } from "vitest";
import { ageFactor, bathState, bathVerdict, compensate, handbookUseLaw, parseAge } from "../../src/index.js";
import { anyOf } from "../helpers.js";
const ROLL = 516.128;

describe("bathState", () => {
  // An invented afternoon at the hut: half a litre mixed at nine, a roll at ten, two plates at eleven.
  const ledger = {
    volumeMl: 500,
    mixedAtH: 9,
    processed: [
      { atH: 10, areaCm2: 516.128 },
      { atH: 11, areaCm2: 216 },
    ],
  };
  it("counts what was processed up to the hour asked about", () => {
    expect(bathState(ledger, 9)).toEqual({ usedCm2PerL: 0, ageH: 0 });
    expect(bathState(ledger, 9.999)).toEqual({ usedCm2PerL: 0, ageH: expect.closeTo(0.999, 9) });
    expect(bathState(ledger, 10)).toEqual({ usedCm2PerL: 1032.256, ageH: 1 });
    expect(bathState(ledger, 12)).toEqual({ usedCm2PerL: expect.closeTo(1464.256, 9), ageH: 3 });
    expect(bathState({ ...ledger, processed: [] }, 12).usedCm2PerL).toBe(0);
  });
  it("loses nothing to the rounding of sums: fifteen rolls a litre are a capacity of fifteen, and an hour and a half is one", () => {
    // 30 × 516.128 one by one is 15483.840000000007, and 2.2 − 0.7 is 1.5000000000000002.
    const rolls = Array.from({ length: 30 }, () => ({ atH: 1, areaCm2: ROLL }));
    const { usedCm2PerL, ageH } = bathState({ volumeMl: 2000, mixedAtH: 0.7, processed: rolls }, 2.2);
    expect(usedCm2PerL).toBe(7741.92);
    expect(ageH).toBe(1.5);
    const laws = { use: handbookUseLaw("phenidone-ascorbate"), age: { kind: "life", lifeH: 1.5 } } as const;
    // At the end of its life the bath is not past it, and does not live until the pour-out.
    expect(
      compensate({ timeS: 510, temperatureC: 20 }, { usedCm2PerL, ageH }, laws)
        .cautions.filter(({ severity }) => severity === "stop")
        .map(({ code, data }) => [code, data]),
    ).toEqual([["bath-past-life", { at: "pour-out" }]]);
    expect(bathVerdict({ usedCm2PerL, ageH, ...laws }).verdict).toBe("more-time");
  });
  it("rounds nothing up past a limit: forty minutes are a life of two thirds of an hour", () => {
    const age = { kind: "life", lifeH: parseAge("40 min") } as const;
    const { ageH } = bathState({ volumeMl: 500, mixedAtH: 0, processed: [] }, 40 / 60);
    expect(ageFactor(0, ageH, age)).toBe(1);
    expect(bathVerdict({ ageH, age }).verdict).toBe("usable");
    // Two rolls in a litre and a half, under a capacity of as much.
    const { usedCm2PerL } = bathState(
      { volumeMl: 1500, mixedAtH: 0, processed: [{ atH: 0, areaCm2: 2 * ROLL }] },
      1,
    );
    expect(usedCm2PerL).toBeLessThanOrEqual((2 * ROLL) / 1.5);
  });
  it("refuses values out of range, by message", () => {
    expect(() => bathState(anyOf([]), 9)).toThrow(
      new TypeError("bathState: ledger must be an object, got an array"),
    );
    expect(() => bathState({ ...ledger, volumeMl: 0 }, 9)).toThrow(
      new RangeError("bathState: ledger.volumeMl must be above 0 and at most 10000000 ml, got 0"),
    );
    expect(() => bathState({ ...ledger, mixedAtH: Infinity }, 9)).toThrow(
      new RangeError("bathState: ledger.mixedAtH must be from -10000000 to 10000000 h, got Infinity"),
    );
    expect(() => bathState(ledger, 8)).toThrow(
      new RangeError("bathState: atH must be at least mixedAtH (9 h), got 8"),
    );
    expect(() => bathState(ledger, NaN)).toThrow(
      "bathState: atH must be from -10000000 to 10000000 h, got NaN",
    );
    expect(() => bathState({ ...ledger, processed: anyOf(1) }, 9)).toThrow(
      new TypeError("bathState: ledger.processed must be an array, got 1"),
    );
    expect(() => bathState({ ...ledger, processed: anyOf([1]) }, 9)).toThrow(
      new TypeError("bathState: ledger.processed[0] must be an object, got 1"),
    );
    expect(() => bathState({ ...ledger, processed: [{ atH: 8, areaCm2: 1 }] }, 9)).toThrow(
      new RangeError("bathState: ledger.processed[0].atH must be at least mixedAtH (9 h), got 8"),
    );
    expect(() => bathState({ ...ledger, processed: [{ atH: 1e8, areaCm2: 1 }] }, 9)).toThrow(
      "bathState: ledger.processed[0].atH must be from -10000000 to 10000000 h, got 100000000",
    );
    expect(() => bathState({ ...ledger, processed: [{ atH: 9, areaCm2: 0 }] }, 9)).toThrow(
      new RangeError("bathState: ledger.processed[0].areaCm2 must be above 0 and at most 1000000 cm², got 0"),
    );
  });
});
