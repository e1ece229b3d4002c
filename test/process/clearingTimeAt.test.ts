import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import {
  clearingTimeAt,
  compensate,
  genericTemperatureLaw,
  handbookTemperatureLaw,
} from "../../src/index.js";
import { handbookTemperature } from "../../src/handbook/temperature.js";
import { anyOf } from "../helpers.js";
import { refusal } from "./helpers.js";

const celsius = fc.double({ min: 0, max: 20, noNaN: true });

describe("clearingTimeAt", () => {
  it("is slowed by cold at least as much as development, whatever the developer", () => {
    // The order is printed: L. P. Clerc, Photography: Theory and Practice, c. 1937, sec. 392, after C. E. K.
    // Mees, 1921. Development from this package's own laws: the generic one, and each of the handbook.
    const developers = Object.keys(handbookTemperature) as (keyof typeof handbookTemperature)[];
    expect(developers.length).toBeGreaterThan(8);
    for (const [lowC, highC] of [
      [10, 20],
      [14, 20],
      [18, 20],
      [5, 15],
    ] as const) {
      const slower = clearingTimeAt({ clearingS: 60, fromC: highC, toC: lowC }) / 60;
      for (const temperature of [genericTemperatureLaw, ...developers.map(handbookTemperatureLaw)]) {
        const known = { timeS: 1, temperatureC: highC };
        const { timeS } = compensate(known, { temperatureC: lowC }, { temperature });
        expect(slower).toBeGreaterThanOrEqual(timeS);
      }
    }
  });

  it("is slowed by at least the rule of doubling for 18 °F below 68 °F", () => {
    // US War Department, TM 11-2323, sec. 33 c: twice. Missed on purpose, by a third toward the longer time,
    // because the order above contradicts it.
    expect(clearingTimeAt({ clearingS: 60, fromC: 20, toC: 10 })).toBeGreaterThanOrEqual(120);
    expect(clearingTimeAt({ clearingS: 60, fromC: 20, toC: 10 })).toBeCloseTo(162, 9);
    // What was measured in the cold is quicker in a warmer bath by no more than the rule.
    expect(clearingTimeAt({ clearingS: 120, fromC: 10, toC: 20 })).toBe(60);
  });

  it("takes a warm bath as no quicker than one at 20 °C, and a colder one as slower always", () => {
    expect(clearingTimeAt({ clearingS: 60, fromC: 20, toC: 30 })).toBe(60);
    expect(clearingTimeAt({ clearingS: 60, fromC: 10, toC: 30 })).toBe(30);
    expect(clearingTimeAt({ clearingS: 60, fromC: 30, toC: 20 })).toBeCloseTo(162, 9);
    expect(clearingTimeAt({ clearingS: 60, fromC: 24, toC: 28 })).toBe(60);
  });

  test.prop([celsius, celsius])(
    "never calls a cold bath quicker than it was, there and back",
    (fromC, toC) => {
      const there = clearingTimeAt({ clearingS: 60, fromC, toC });
      expect(clearingTimeAt({ clearingS: there, fromC: toC, toC: fromC })).toBeGreaterThanOrEqual(
        60 * (1 - 1e-12),
      );
      expect(toC >= fromC ? there <= 60 : there >= 60).toBe(true);
    },
  );

  it.each([
    ["no object", null, "TypeError clearingTimeAt /question missing"],
    [
      "two hours and more",
      { clearingS: 7201, fromC: 20, toC: 20 },
      "RangeError clearingTimeAt /question/clearingS out-of-range",
    ],
    ["ice", { clearingS: 60, fromC: -1, toC: 20 }, "RangeError clearingTimeAt /question/fromC out-of-range"],
    ["steam", { clearingS: 60, fromC: 20, toC: 101 }, "RangeError clearingTimeAt /question/toC out-of-range"],
    ["no wanted temperature", { clearingS: 60, fromC: 20 }, "TypeError clearingTimeAt /question/toC missing"],
  ])("refuses %s", (_, question, fault) => {
    expect(refusal(() => clearingTimeAt(anyOf(question)))).toBe(fault);
  });
});
