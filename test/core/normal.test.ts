import { describe, expect, it } from "vitest";
import { normalDensity, normalUpper } from "../../src/core/normal.js";

describe("the normal distribution", () => {
  // M. Abramowitz, I. A. Stegun (eds.), Handbook of Mathematical Functions, Washington, 1964, table 26.1, and
  // for the tail table 26.2: −log10 Q (from memory).
  it.each([
    [0, 0.5],
    [0.5, 0.308537538725987],
    [1, 0.158655253931457],
    [1.6448536269514722, 0.05],
    [2, 0.0227501319481792],
    [2.4999, 0.00621142],
    [3, 0.00134989803163009],
    [5, 2.86651571879194e-7],
    [10, 7.61985302416053e-24],
  ])("leaves the printed share above %f", (x, share) => {
    expect(normalUpper(x) / share).toBeCloseTo(1, 5);
    expect(normalUpper(-x)).toBeCloseTo(1 - share, 12 - (x === 2.4999 ? 5 : 0));
  });
  it("meets itself where the series ends and the fraction begins", () => {
    const slope = (normalUpper(2.5 + 1e-6) - normalUpper(2.5 - 1e-6)) / 2e-6;
    expect(slope).toBeCloseTo(-normalDensity(2.5), 7);
  });
  it("ends at nothing", () => {
    expect([normalUpper(Infinity), normalUpper(-Infinity), normalDensity(Infinity)]).toEqual([0, 1, 0]);
  });
});
