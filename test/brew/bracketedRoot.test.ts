/* The root finder of the balance keeps to its bracket. */
import { describe, expect, it } from "vitest";
import { bracketedRoot } from "../../src/brew/bracketedRoot.js";

describe("bracketedRoot", () => {
  it("never looks outside its bracket", () => {
    // From 9 the first Newton's step of −atan(x − 3) would go to 9 − 37·atan 6, about −43.
    const seen: number[] = [];
    const root = bracketedRoot(
      (x) => (seen.push(x), { residual: -Math.atan(x - 3), slope: -1 / (1 + (x - 3) ** 2) }),
      0,
      10,
      9,
      1e-12,
    );
    expect(root).toBeCloseTo(3, 11);
    expect(Math.min(...seen)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...seen)).toBeLessThanOrEqual(10);
  });
});
