/* Room: exhaustion. The largest factor, and whose law it is. */
import { describe, expect, it } from "vitest";
import { basisOf } from "../../src/core/term.js";
import { handbookUseLaw, useFactor } from "../../src/index.js";

describe("useFactor", () => {
  it("may reach 1000", () => {
    // 1 + 9 × 111.
    expect(useFactor(0, 111, { increase: 9, perCm2PerL: 1, growth: "linear" })).toBeCloseTo(1000, 9);
    expect(() => useFactor(0, 111.001, { increase: 9, perCm2PerL: 1, growth: "linear" })).toThrow(
      /at most 1000 times, got 111.001$/,
    );
  });
});

describe("handbookUseLaw", () => {
  it("says that it is of the handbook", () => {
    expect(basisOf(handbookUseLaw("phenidone-ascorbate"))).toBe("handbook");
  });
});
