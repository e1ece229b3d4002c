/* Room: exhaustion. The largest factor, and whose law it is. */
import { describe, expect, it } from "vitest";
import { basisOf } from "../../src/core/term.js";
import { handbookUseLaw, useFactor } from "../../src/index.js";

describe("useFactor", () => {
  it("may reach 1000", () => {
    // 1 + 9 × 111.
    expect(useFactor({ increase: 9, perCm2PerL: 1, growth: "linear" }, 111)).toBeCloseTo(1000, 9);
    expect(() => useFactor({ increase: 9, perCm2PerL: 1, growth: "linear" }, 111.001)).toThrow(
      /at most 1000 times, got 111.001$/,
    );
  });
});

describe("handbookUseLaw", () => {
  it("says that it is of the handbook", () => {
    expect(basisOf(handbookUseLaw("phenidone-ascorbate"))).toBe("handbook");
  });
});
