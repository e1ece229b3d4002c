/* The edges: curves that just reach, limits hit to the last bit, and fits that just do not carry. */
import { describe, expect, it } from "vitest";
import {
  effect,
  averageGradient,
  contrastIndex,
  fitGrowth,
  gammaAt,
  growthFromDoubling,
  speedPoint,
  type DensityStep,
  type GrowthLaw,
} from "../../src/index.js";

const curve = (...steps: readonly (readonly [logH: number, density: number])[]): readonly DensityStep[] =>
  steps.map(([logH, density]) => ({ logH, density }));

describe("a curve that just reaches", () => {
  it("the speed point with its last step", () => {
    const steps = curve([-3, 0], [-2, 0.05], [-1, 0.1]);
    expect(speedPoint({ steps, basePlusFog: 0 }).logH).toBeCloseTo(-1, 12);
  });
  it("1.30 above the speed point with its last step", () => {
    // The first step is the speed point itself, 0.1 over 0; the last lies at 0 + 1.3.
    const steps = curve([0, 0.1], [0.65, 0.5], [1.3, 0.9]);
    expect(averageGradient({ steps, basePlusFog: 0 })).toBeCloseTo(0.8 / 1.3, 12);
  });
});

describe("contrastIndex", () => {
  it("calls for more exposure where a flat curve starts at the inner arc itself", () => {
    // The lowest foot of the inner arc lies 0.2 × sin(atan 0.1) over base plus fog.
    const density = 0.2 * Math.sin(Math.atan(0.1));
    expect(() =>
      contrastIndex({ steps: curve([-3, density], [-2, density], [-1, density]), basePlusFog: 0 }),
    ).toThrow(
      new RangeError(
        "contrastIndex: curve must rise from base plus fog with a slope above 0.1, but ends at 0.02: add steps with more exposure",
      ),
    );
  });
  it("is not misled by what lies below base plus fog", () => {
    // A veil that grows by 0.04 for each unit of log H up to base plus fog, then a straight part of slope
    // 0.8.
    const veil = [-6, -5, -4, -3].map((logH) => [logH, 0.2 + 0.04 * (logH + 2.5)] as const);
    const straight = Array.from({ length: 13 }, (_, i) => [-2.5 + i / 4, 0.2 + (0.8 * i) / 4] as const);
    const steps = curve(...veil, ...straight);
    // The corner between the two is drawn round, and the inner arc crosses the curve near it.
    expect(contrastIndex({ steps, basePlusFog: 0.2 })).toBeCloseTo(0.8, 1);
  });
});

describe("contrastLogSd", () => {
  it("is 0 for one and the same gradient, however little is known of the law", () => {
    const law: GrowthLaw = {
      gammaInfinity: 1.4,
      ratePerS: 0.004,
      appearanceS: 30,
      sd: { gammaInfinity: 1000, ratePerS: 100, appearanceS: 1e6 },
    };
    expect(effect("contrast", 0.6, 0.6, law).logSd).toBe(0);
  });
});

describe("fitGrowth", () => {
  it("refuses points so late that they tell the limit and not the rate", () => {
    // Five and six time constants: with f = e^-5 and e^-6 the points, good to 0.02, tell the limit by
    // Cramer's rule to
    // 0.02·√(t1²f1² + t2²f2²)/|D| = 0.04 and the rate to 0.02·√((1 − f1)² + (1 − f2)²)/(1.4·|D|) = 0.0043 a
    // second, more than the 0.004 it
    // is; D = (1 − f1)·t2·f2 − (1 − f2)·t1·f1 = −4.7 s.
    const law: GrowthLaw = { gammaInfinity: 1.4, ratePerS: 0.004, appearanceS: 0 };
    const pointsGoodTo = (sd: number) =>
      [1250, 1500].map((timeS) => ({ timeS, gamma: gammaAt(timeS, law), sd }));
    expect(() => fitGrowth(pointsGoodTo(0.02), { appearanceS: 0 })).toThrow(
      new RangeError(
        "fitGrowth: points must carry the fit, but its standard error is larger than the limit or rate itself",
      ),
    );
    // Ten times better points carry it, and the errors are a tenth of those above.
    const { sd } = fitGrowth(pointsGoodTo(0.002), { appearanceS: 0 });
    const [f1, f2] = [Math.exp(-5), Math.exp(-6)];
    const determinant = Math.abs((1 - f1) * 1500 * f2 - (1 - f2) * 1250 * f1);
    expect(sd.gammaInfinity / ((0.002 * Math.hypot(1250 * f1, 1500 * f2)) / determinant)).toBeCloseTo(1, 6);
    expect(sd.ratePerS / ((0.002 * Math.hypot(1 - f1, 1 - f2)) / (1.4 * determinant))).toBeCloseTo(1, 6);
    expect(sd.ratePerS).toBeCloseTo(0.00043, 5);
  });
});

describe("growthFromDoubling", () => {
  it("refuses gradients above 1000", () => {
    const good = { timeS: 300, gamma: 0.6, gammaAtDouble: 0.9 };
    expect(() => growthFromDoubling({ ...good, gamma: 1001 })).toThrow(
      new RangeError("growthFromDoubling: gamma must be above 0 and at most 1000, got 1001"),
    );
    expect(() => growthFromDoubling({ ...good, gammaAtDouble: 1001 })).toThrow(
      new RangeError("growthFromDoubling: gammaAtDouble must be above 0 and at most 1000, got 1001"),
    );
  });
});
