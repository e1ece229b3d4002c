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
  ])("leaves the printed share above %f: $1", (x, share) => {
    expect(normalUpper(x) / share).toBeCloseTo(1, 5);
    expect(normalUpper(-x)).toBeCloseTo(1 - share, 12 - (x === 2.4999 ? 5 : 0));
  });
  it("has the density for its slope, also where the fraction begins", () => {
    for (const x of [0.3, 2.5, 4, 7.07106781186547, 9]) {
      const slope = (normalUpper(x + 1e-4) - normalUpper(x - 1e-4)) / 2e-4;
      expect(slope / -normalDensity(x)).toBeCloseTo(1, x === 7.07106781186547 ? 3 : 6);
    }
  });
  it("agrees with the series and the fraction that it stands for", () => {
    // G. Marsaglia, J. Stat. Softw. 11(4), 2004 (from memory): 1/2 - density * (x + x^3/3 + x^5/(3 * 5) + ...).
    for (let x = 0; x < 5; x += 0.01) {
      let [term, sum] = [x, x];
      for (let odd = 3; term > 1e-17 * sum; odd += 2) sum += term *= (x * x) / odd;
      expect(Math.abs(normalUpper(x) - (0.5 - normalDensity(x) * sum))).toBeLessThan(1e-14);
    }
    for (let x = 3; x < 30; x += 0.1) {
      let fraction = x;
      for (let k = 60; k > 0; k -= 1) fraction = x + k / fraction;
      expect(normalUpper(x) / (normalDensity(x) / fraction)).toBeCloseTo(1, 7);
    }
  });
  it("ends at nothing", () => {
    expect([normalUpper(Infinity), normalUpper(-Infinity), normalDensity(Infinity)]).toEqual([0, 1, 0]);
  });
});
