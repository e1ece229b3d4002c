import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { useFactor, type UseLaw } from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { ROLL, area, useLaw } from "./drawn.js";

describe("useFactor", () => {
  const perFilm = (growth: "linear" | "compound"): UseLaw => ({ increase: 0.1, perCm2PerL: ROLL, growth });
  it("adds or compounds as it is told", () => {
    expect(useFactor(0, 0, perFilm("linear"))).toBe(1);
    expect(useFactor(0, 10 * ROLL, perFilm("linear"))).toBeCloseTo(2, 12);
    expect(useFactor(0, 10 * ROLL, perFilm("compound"))).toBeCloseTo(1.1 ** 10, 12);
    expect(useFactor(0, 0.5 * ROLL, perFilm("compound"))).toBeCloseTo(Math.sqrt(1.1), 12);
  });
  test.prop([useLaw, fc.double({ min: 0, max: 2, noNaN: true }), area])(
    "of an increase that was learned is that of the rule before, to a power",
    (law, share, used) => {
      // Beyond a thousandfold slowing the rule refuses.
      fc.pre((Math.max(1, share) * law.increase * used) / law.perCm2PerL < 6.9);
      const learned = { ...law, increase: share * law.increase, shape: law.increase };
      expect(Math.log(useFactor(0, used, learned))).toBeCloseTo(
        share * Math.log(useFactor(0, used, law)),
        10,
      );
      expect(useFactor(0, used, { ...law, shape: law.increase })).toBe(useFactor(0, used, law));
      // The rule before may have been none: then the increase is one of ln(time) for each portion, whichever
      // way the rule grows.
      expect(Math.log(useFactor(0, used, { ...law, shape: 0 }))).toBeCloseTo(
        (law.increase * used) / law.perCm2PerL,
        9,
      );
    },
  );
  it("refuses values out of range, by message", () => {
    const good = perFilm("linear");
    expect(() => useFactor(0, 1, anyOf(null))).toThrow(
      new TypeError("useFactor: law must be an object, got null"),
    );
    expect(() => useFactor(0, 1, { ...good, increase: -0.1 })).toThrow(
      new RangeError("useFactor: law.increase must be from 0 to 10, got -0.1"),
    );
    expect(() => useFactor(0, 1, { ...good, sdIncrease: NaN })).toThrow(
      new RangeError("useFactor: law.sdIncrease must be from 0 to 10, got NaN"),
    );
    expect(() => useFactor(0, 1, { ...good, shape: 11 })).toThrow(
      new RangeError("useFactor: law.shape must be from 0 to 10, got 11"),
    );
    expect(() => useFactor(0, 1, anyOf({ ...good, shape: null }))).toThrow(
      new TypeError("useFactor: law.shape must be a number, got null"),
    );
    expect(() => useFactor(0, 1, { ...good, perCm2PerL: 0 })).toThrow(
      new RangeError("useFactor: law.perCm2PerL must be from 0.001 to 1000000 cm²/l, got 0"),
    );
    expect(() => useFactor(0, 1, anyOf({ ...good, growth: "fast" }))).toThrow(
      new RangeError('useFactor: law.growth must be "linear" or "compound", got "fast"'),
    );
    expect(() => useFactor(0, -1, good)).toThrow(
      new RangeError("useFactor: toCm2PerL must be from 0 to 1000000 cm²/l, got -1"),
    );
    expect(() => useFactor(0, 1e6, perFilm("compound"))).toThrow(
      new RangeError("useFactor: toCm2PerL must be such that the bath slows at most 1000 times, got 1000000"),
    );
  });
  it("may reach 1000", () => {
    // 1 + 9 × 111.
    expect(useFactor(0, 111, { increase: 9, perCm2PerL: 1, growth: "linear" })).toBeCloseTo(1000, 9);
    expect(() => useFactor(0, 111.001, { increase: 9, perCm2PerL: 1, growth: "linear" })).toThrow(
      /at most 1000 times, got 111.001$/,
    );
  });
});
