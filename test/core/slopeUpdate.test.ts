/* The slope of ln(time) after some rows: against the closed formula, and with rows of unlike precision. */
import { describe, expect, it } from "vitest";
import { fc, test, real } from "../property.js";
import { fitRows, slopeUpdate, withShownScatter, type FitRow } from "../../src/core/slopeUpdate.js";

const rows: fc.Arbitrary<readonly FitRow[]> = fc
  .uniqueArray(fc.record({ x: fc.integer({ min: -50, max: 50 }), y: real(-3, 3), sd: real(0.01, 0.5) }), {
    minLength: 2,
    maxLength: 12,
    selector: ({ x }) => x,
  })
  .map((some) => some.map((row) => ({ ...row, x: row.x / 10 })).sort((a, b) => a.x - b.x));

/** a = 1/τ² + Σp(x − x̄)² and so on, as it is printed beside the function. */
function byFormula(some: readonly FitRow[], mean: number, tau: number): { slope: number; sd: number } {
  const p = some.map(({ sd }) => 1 / sd ** 2);
  const total = p.reduce((sum, one) => sum + one, 0);
  const x = some.reduce((sum, row, i) => sum + p[i]! * row.x, 0) / total;
  const y = some.reduce((sum, row, i) => sum + p[i]! * row.y, 0) / total;
  const a = 1 / tau ** 2 + some.reduce((sum, row, i) => sum + p[i]! * (row.x - x) ** 2, 0);
  const moved = some.reduce((sum, row, i) => sum + p[i]! * (row.x - x) * (row.y - y), 0);
  return { slope: (mean / tau ** 2 + moved) / a, sd: 1 / Math.sqrt(a) };
}

describe("slopeUpdate", () => {
  test.prop([rows, real(-2, 2), real(0.05, 5)])(
    "is the closed formula where there is no walk",
    (some, mean, tau) => {
      const wanted = byFormula(some, mean, tau);
      const found = slopeUpdate(some, { slope: mean, sd: tau });
      expect(found.slope).toBeCloseTo(wanted.slope, 7);
      expect(found.sd).toBeCloseTo(wanted.sd, 7);
    },
  );
  test.prop([rows, real(-2, 2), real(0.05, 5), real(0, 1)])(
    "never leaves the slope less sure, and a walk never makes it surer",
    (some, mean, tau, walk) => {
      const { sd } = slopeUpdate(some, { slope: mean, sd: tau }, walk);
      expect(sd).toBeLessThanOrEqual(tau * (1 + 1e-12));
      expect(sd).toBeGreaterThanOrEqual(slopeUpdate(some, { slope: mean, sd: tau }).sd * (1 - 1e-9));
    },
  );
  test.prop([rows, real(-2, 2), real(0.05, 5), real(0, 1), real(-5, 5)])(
    "does not mind the level of the times, nor from which end the rows are read",
    (some, mean, tau, walk, level) => {
      const prior = { slope: mean, sd: tau };
      const found = slopeUpdate(some, prior, walk);
      const moved = slopeUpdate(
        some.map((row) => ({ ...row, y: row.y + level })),
        prior,
        walk,
      );
      expect(moved.slope).toBeCloseTo(found.slope, 7);
      const turned = slopeUpdate(
        some.map((row) => ({ ...row, x: -row.x })).reverse(),
        { slope: -mean, sd: tau },
        walk,
      );
      expect(-turned.slope).toBeCloseTo(found.slope, 7);
      expect(turned.sd).toBeCloseTo(found.sd, 7);
    },
  );
});

describe("fitRows", () => {
  it("knows a row to 2.5 %, or to its printed step and 0.8 % beside it", () => {
    const [plain, half, second] = fitRows([
      { x: 1, timeS: 360 },
      { x: 2, timeS: 360, stepS: 30 },
      { x: 3, timeS: 360, stepS: 1 },
    ]);
    expect(plain).toEqual({ x: 1, y: Math.log(360), sd: 0.025 });
    // Half a minute on six minutes: 8.3 % evenly, which is 2.4 %.
    expect(half!.sd).toBeCloseTo(Math.hypot(1 / 12 / Math.sqrt(12), 0.008), 14);
    expect(second!.sd).toBeCloseTo(0.00804, 5);
  });
});

describe("withShownScatter", () => {
  const on = (miss: number): readonly FitRow[] =>
    [0, 1, 2, 3].map((x) => ({ x, y: 2 * x + (x === 1 || x === 2 ? miss : -miss), sd: 0.025 }));
  it("leaves rows alone that lie within what they state", () => {
    expect(withShownScatter(on(0.01))).toEqual(on(0.01));
  });
  it("raises them where they scatter more, to that and the doubt about it", () => {
    // Misses of 0.1 about the line y = 2x, whose slope they do not change: 4 × 16 in units of 0.025².
    for (const { sd } of withShownScatter(on(0.1)))
      expect(sd).toBeCloseTo(0.025 * Math.sqrt(((1 + 3 / 2) * 64) / 2), 12);
  });
  it("sees no scatter in two rows", () => {
    const two = [0, 3].map((x) => ({ x, y: x ** 2, sd: 0.025 }));
    expect(withShownScatter(two)).toEqual(two);
  });
});
