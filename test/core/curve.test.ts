/* The curve through a table: exact, monotone, smooth, straight on outside. */
import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { monotoneCurve, type Knot } from "../../src/core/curve.js";
import { tableSpread, timeCurve } from "../../src/core/table.js";

const slopeAt = (curve: (x: number) => number, x: number, side: 1 | -1): number => {
  const h = 1e-6 * side;
  // Second order from one side, so that a jump of slope at a knot would show.
  return (-3 * curve(x) + 4 * curve(x + h) - curve(x + 2 * h)) / (2 * h);
};

/** Knots a whole number apart, values free, any sign, flat stretches included. */
const knots = fc
  .array(
    fc.record({
      step: fc.integer({ min: 1, max: 9 }),
      y: fc.oneof(fc.integer({ min: -3, max: 3 }), fc.double({ min: -5, max: 5, noNaN: true })),
    }),
    {
      minLength: 2,
      maxLength: 8,
    },
  )
  .map((parts) => {
    let x = 0;
    // Adding 0 turns −0 into 0: the sign of zero is not a matter of curves.
    return parts.map(({ step, y }): Knot => ({ x: (x += step), y: y + 0 }));
  });

describe("monotoneCurve", () => {
  it("goes straight on outside its knots, along those that lie so far apart", () => {
    const knots = [0, 1, 2, 4].map((x, i) => ({ x, y: [0, 1, 3, 4][i]! }));
    const at = (reach: number): readonly [number, number] => {
      const curve = monotoneCurve(knots, reach);
      return [curve(-2), curve(6)];
    };
    expect(at(0)).toEqual([-2, 5]);
    expect(at(2)).toEqual([-3, 5]);
    expect(at(3)).toEqual([-2, 6]);
    // Where no two lie so far apart, the two ends.
    expect(at(9)).toEqual([-2, 6]);
  });
  it("is a straight line through two knots, inside and outside", () => {
    const curve = monotoneCurve([
      { x: 1, y: 2 },
      { x: 3, y: 8 },
    ]);
    for (const x of [-4, 0.5, 1, 1.7, 2, 3, 11]) expect(curve(x)).toBeCloseTo(3 * x - 1, 12);
  });
  it("keeps a straight table straight", () => {
    const curve = monotoneCurve([
      { x: 0, y: 0 },
      { x: 1, y: 2 },
      { x: 5, y: 10 },
      { x: 6, y: 12 },
    ]);
    for (const x of [-1, 0.25, 3, 5.5, 9]) expect(curve(x)).toBeCloseTo(2 * x, 12);
  });
  it("has the weighted harmonic slope at an inner knot", () => {
    // Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5, 1984, p. 300: intervals 1 and 2,
    // slopes 1 and 4: (w1 + w2)/(w1/1 + w2/4) with w1 = 2·2 + 1 = 5 and w2 = 2 + 2·1 = 4, that is 9/6 = 1.5.
    const curve = monotoneCurve([
      { x: 0, y: 0 },
      { x: 1, y: 1 },
      { x: 3, y: 9 },
    ]);
    expect(slopeAt(curve, 1, -1)).toBeCloseTo(1.5, 6);
    expect(slopeAt(curve, 1, 1)).toBeCloseTo(1.5, 6);
    // Intervals 3 and 2, slopes 1 and 4: w1 = 2·2 + 3 = 7, w2 = 2 + 2·3 = 8, so 15/(7 + 2) = 5/3.
    expect(
      slopeAt(
        monotoneCurve([
          { x: 0, y: 0 },
          { x: 3, y: 3 },
          { x: 5, y: 11 },
        ]),
        3,
        1,
      ),
    ).toBeCloseTo(5 / 3, 5);
    // The cubic of Hermite with end slopes 1 and 1.5 over the first interval, at its middle: (y0 + y1)/2 +
    // h(m0 − m1)/8.
    expect(curve(0.5)).toBeCloseTo(0.5 + (1 - 1.5) / 8, 12);
    expect(curve(2)).toBeCloseTo(5 + (2 * (1.5 - 4)) / 8, 12);
  });
  it("is level at a summit and where the table is flat", () => {
    const summit = monotoneCurve([
      { x: 0, y: 0 },
      { x: 1, y: 1 },
      { x: 2, y: 0 },
    ]);
    expect(slopeAt(summit, 1, -1)).toBeCloseTo(0, 6);
    const flat = monotoneCurve([
      { x: 0, y: 3 },
      { x: 1, y: 2 },
      { x: 2, y: 2 },
      { x: 3, y: 1 },
    ]);
    for (const x of [1, 1.25, 1.5, 1.75, 2]) expect(flat(x)).toBe(2);
    // ln 300 is a figure for which a(1 − t) + a·t misses a by a bit.
    const level = monotoneCurve([
      { x: -3.4, y: Math.log(300) },
      { x: -3.3, y: Math.log(300) },
    ]);
    for (let x = -3.4; x < -3.3; x += 0.0007) expect(level(x)).toBe(Math.log(300));
  });
  it("goes on outside with the slope of the nearest interval", () => {
    const curve = monotoneCurve([
      { x: 0, y: 0 },
      { x: 1, y: 1 },
      { x: 3, y: 9 },
    ]);
    expect(curve(-2)).toBe(-2);
    expect(curve(4)).toBe(13);
    expect(slopeAt(curve, 0, -1)).toBeCloseTo(slopeAt(curve, 0, 1), 6);
    expect(slopeAt(curve, 3, -1)).toBeCloseTo(slopeAt(curve, 3, 1), 5);
  });
  test.prop([knots])("is exact at every knot", (points) => {
    const curve = monotoneCurve(points);
    for (const { x, y } of points) expect(curve(x)).toBe(y);
  });
  test.prop([knots, fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 2, maxLength: 6 })])(
    "between two knots it never leaves their values and never turns",
    (points, shares) => {
      const curve = monotoneCurve(points);
      shares.sort((a, b) => a - b);
      points.slice(1).forEach((to, i) => {
        const from = points[i]!;
        const values = shares.map((share) => curve(from.x + share * (to.x - from.x)));
        const [low, high] = from.y < to.y ? [from.y, to.y] : [to.y, from.y];
        for (const value of values) {
          expect(value).toBeGreaterThanOrEqual(low);
          expect(value).toBeLessThanOrEqual(high);
        }
        const rising = Math.sign(to.y - from.y);
        values.slice(1).forEach((value, k) => {
          expect(rising * (value - values[k]!)).toBeGreaterThanOrEqual(-1e-14 * Math.max(1, Math.abs(value)));
        });
      });
    },
  );
  test.prop([knots])("has one value and one slope at every join", (points) => {
    const curve = monotoneCurve(points);
    for (const { x } of points) {
      expect(Math.abs(curve(x + 1e-9) - curve(x - 1e-9))).toBeLessThan(1e-6);
      expect(Math.abs(slopeAt(curve, x, 1) - slopeAt(curve, x, -1))).toBeLessThan(1e-3);
    }
  });
});

describe("a long table", () => {
  let looks = 0;
  const rows = Array.from({ length: 100_000 }, (_, i) => ({
    get x(): number {
      looks += 1;
      return i / 1000;
    },
    timeS: 300 + i / 100,
  }));
  const looksOf = (work: () => void): number => {
    looks = 0;
    work();
    return looks;
  };
  it("is walked once, and then rows are found by bisection", () => {
    const timeAt = timeCurve(rows, 0);
    const spread = tableSpread(rows, { perX: 1, perRootX: 0, reach: 0 });
    expect(looksOf(() => timeAt(61.2345))).toBeLessThan(50);
    expect(looksOf(() => spread(3.0001, 61.2345))).toBeLessThan(50);
    expect(timeAt(61.234)).toBe(300 + 612.34);
  });
  it("has the spread of its nearest rows, wherever the two places lie", () => {
    const spread = tableSpread(rows, { perX: 1, perRootX: 0, reach: 0 });
    // Two places beyond either end, a row and a place between rows; rows lie 0.001 apart.
    expect(spread(-0.5, 0)).toBeCloseTo(Math.hypot(0.025 * Math.SQRT2 * 500, 0.5), 9);
    expect(spread(99.999, 100.499)).toBeCloseTo(Math.hypot(0.025 * Math.SQRT2 * 500, 0.5), 6);
    expect(spread(5, 7)).toBeCloseTo(0.025 * Math.SQRT2, 9);
    expect(spread(5, 7.0004)).toBeCloseTo(Math.hypot(0.025 * Math.SQRT2 * 1.4, 0.0004), 9);
    expect(spread(5, 7.0006)).toBeCloseTo(Math.hypot(0.025 * Math.SQRT2 * 1.4, 0.0004), 9);
  });
});
