import { describe, expect, it } from "vitest";
import { windowInformation } from "../../src/learning/windowInformation.js";
import { windowLikelihood } from "../../src/learning/windowLikelihood.js";
import { fc, test } from "../property.js";

const density = (x: number): number => Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI);

/** Mass, mean and variance of N(mean, variance) within a window, summed on a grid. */
function summed(low: number, high: number, mean: number, variance: number) {
  const sd = Math.sqrt(variance);
  const from = Math.max(low, mean - 12 * sd);
  const to = Math.min(high, mean + 12 * sd);
  const steps = 20_000;
  let [mass, first, second] = [0, 0, 0];
  for (let i = 0; i < steps; i += 1) {
    const x = from + ((i + 0.5) / steps) * (to - from);
    const p = (density((x - mean) / sd) / sd) * ((to - from) / steps);
    mass += p;
    first += p * x;
    second += p * x * x;
  }
  return { mass, mean: first / mass, variance: second / mass - (first / mass) ** 2 };
}

describe("a window", () => {
  it.each([
    ["about the mean", -0.168, 0.168, 0.02, 0.01],
    ["to one side", 0.25, 0.42, 0, 0.02],
    ["open above", 0.084, Infinity, -0.1, 0.01],
    ["open below", -Infinity, -0.084, 0.3, 0.02],
    ["wide", -3, 3, 0, 0.01],
    ["narrow", 0, 0.01, 0.1, 0.01],
  ])("has the moments of the truncated normal: %s", (_, low, high, mean, variance) => {
    const { probability, slope, curvature } = windowLikelihood(low, high, mean, variance);
    const exact = summed(low, high, mean, variance);
    expect(probability).toBeCloseTo(exact.mass, 6);
    expect(mean + variance * slope).toBeCloseTo(exact.mean, 5);
    expect(variance - variance ** 2 * curvature).toBeCloseTo(exact.variance, 5);
  });
  test.prop([
    fc.double({ min: -3, max: 3, noNaN: true }),
    fc.double({ min: 0.01, max: 2, noNaN: true }),
    fc.double({ min: -20, max: 20, noNaN: true }),
    fc.double({ min: 1e-4, max: 4, noNaN: true }),
  ])("never widens what is known, however far off", (low, width, mean, variance) => {
    const { probability, slope, curvature } = windowLikelihood(low, low + width, mean, variance);
    expect(probability).toBeGreaterThanOrEqual(0);
    expect(curvature).toBeGreaterThan(0);
    expect(curvature * variance).toBeLessThanOrEqual(1);
    expect(Number.isFinite(slope)).toBe(true);
  });
});

describe("a row of windows", () => {
  it("tells as much as a value where the windows are narrow against the noise", () => {
    expect(windowInformation(0, 0.02, 0.05 ** 2) * 0.05 ** 2).toBeCloseTo(1, 1);
  });
  it("tells most of a negative at the limit of two windows, least in the middle of a wide one", () => {
    const told = (off: number): number => windowInformation(off, 0.17, 0.03 ** 2);
    expect(told(0.085)).toBeGreaterThan(5 * told(0));
    expect(told(0.085)).toBeLessThan(1 / 0.03 ** 2);
  });
});
