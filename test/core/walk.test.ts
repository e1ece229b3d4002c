import { describe, expect, it } from "vitest";
import { walkKnots, walkOver } from "../../src/core/walk.js";
import { fc, test } from "../property.js";

/** The variance of a row: numbers are independent. */
function varianceOf(walk: ReturnType<typeof walkOver>, from: number, to: number): number {
  const { slopes, beside } = walk.row(from, to);
  const sds = new Map(walk.unknowns.map(({ parameter, sd }) => [parameter, sd]));
  return slopes.reduce((sum, { parameter, slope }) => sum + (slope * sds.get(parameter)!) ** 2, beside);
}

describe("a random walk with knots", () => {
  const walk = walkOver("walk", [0, 1, 3], 0.2);

  it.each([
    ["to a knot", 0, 1, 0.04],
    ["over a knot", 0, 3, 0.12],
    ["between knots", 0, 1.5, 0.06],
    ["backward", 3, 0, 0.12],
    ["beyond the last knot", 0, 5, 0.2],
    ["before the first knot", 1, -1, 0.08],
    ["nowhere", 1, 1, 0],
  ])("has the variance of its length: %s", (_, from, to, variance) => {
    expect(varianceOf(walk, from, to)).toBeCloseTo(variance, 12);
  });
  it("has one number a gap, and its share of a gap that is crossed in part", () => {
    expect(walk.unknowns.map(({ parameter }) => parameter)).toEqual(["walk 0 to 1", "walk 1 to 3"]);
    expect(walk.row(0, 2)).toEqual({
      slopes: [
        { parameter: "walk 0 to 1", slope: 1 },
        { parameter: "walk 1 to 3", slope: 0.5 },
      ],
      beside: expect.closeTo(0.04 * 0.5, 12),
    });
    expect(walk.row(3, 1).slopes).toEqual([{ parameter: "walk 1 to 3", slope: -1 }]);
  });
  it("of one knot is free on both sides", () => {
    expect(walkOver("walk", [2], 0.1).row(2, 4)).toEqual({ slopes: [], beside: expect.closeTo(0.02, 12) });
  });
  test.prop([
    fc.uniqueArray(fc.integer({ min: -50, max: 50 }), { minLength: 1, maxLength: 8 }),
    fc.integer({ min: -80, max: 80 }),
  ])("from a knot, the variance grows with the distance, wherever the knots are", (places, to) => {
    const knots = [...places].sort((a, b) => a - b);
    const placed = walkOver("walk", knots, 0.3);
    for (const from of knots) expect(varianceOf(placed, from, to)).toBeCloseTo(0.09 * Math.abs(to - from), 9);
  });
});

describe("knots for a walk", () => {
  it.each([
    ["the pin alone", [], [1]],
    ["the pin is no knot twice", [1, 1], [1]],
    ["each place once, rising", [3, 2, 3, 0], [0, 1, 2, 3]],
    ["places nearer than the spacing are left out", [1.2, 1.4, 1.6, 2.5], [1, 1.6, 2.5]],
    ["the ends stay", [0.9, 1.1], [0.9, 1, 1.1]],
  ])("%s", (_, places, knots) => {
    const found = walkKnots(1, places, 0.5);
    expect(found).toHaveLength(knots.length);
    knots.forEach((knot, i) => {
      expect(found[i]).toBeCloseTo(knot, 12);
    });
  });
});
