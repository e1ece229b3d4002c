/* What a rule of use can plausibly be. */
import { describe, expect, it } from "vitest";
import { handbookUse } from "../../src/handbook/use.js";
import { genericUseLaw, type UseLaw } from "../../src/index.js";
import { unusualUseLaw } from "../../src/use/plausible.js";

const ROLL = 516.128;
const rule = (increase: number, perCm2PerL = ROLL, growth: UseLaw["growth"] = "linear"): UseLaw => ({
  increase,
  perCm2PerL,
  growth,
});

describe("unusualUseLaw", () => {
  it("says nothing of the handbook's rules, the generic one and what lies near", () => {
    for (const law of [...Object.values(handbookUse), genericUseLaw, rule(0.2), rule(0.015)])
      expect(unusualUseLaw(law)).toBeUndefined();
  });
  it.each([
    ["ten per cent written as 10", rule(10), "maybe-percent", 1, 10],
    ["half as much again for each roll", rule(0.5), "increase", 0.284, 0.5],
    ["a rule for square centimetres instead of a roll", rule(0.1, 1), "increase", 0.284, 51.6],
    ["no increase at all", rule(0), "increase", 0.012, 0],
    // 1.1^5.16 − 1 is 64 % a roll.
    ["a compound rule for a fifth of a roll", rule(0.1, 100, "compound"), "increase", 0.284, 0.635],
  ] as const)("names %s", (_name, law, reason, limit, actual) => {
    const found = unusualUseLaw(law)!;
    expect(found).toMatchObject({ reason, path: "/increase", limit });
    expect(found.actual).toBeCloseTo(actual, 1);
  });
  it("does not judge what was learned from own runs", () => {
    expect(unusualUseLaw({ ...rule(0.9), shape: 0.08 })).toBeUndefined();
  });
});
