/* The growth law from measurements: NIST's certified data, the two-time method, refusals. */
import { describe, expect, it } from "vitest";
import {
  fitGrowth,
  gammaAt,
  growthFromDoubling,
  timeForGamma,
  type GrowthLaw,
  type FittedGrowth,
  type GrowthPoint,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";
const truth: GrowthLaw = { gammaInfinity: 1.4, ratePerS: 0.004, appearanceS: 30 };
const pointsAt = (times: readonly number[], law = truth): readonly GrowthPoint[] =>
  times.map((timeS) => ({ timeS, gamma: gammaAt(timeS, law) }));
const far = pointsAt([90, 180, 300, 600, 900]);

/* NIST/ITL Statistical Reference Datasets, nonlinear regression, Misra1a (D. Misra, dental research, 1978): y = b1(1 − exp(−b2 x)). */
const misra1a = {
  points: [
    [77.6, 10.07],
    [114.9, 14.73],
    [141.1, 17.94],
    [190.8, 23.93],
    [239.9, 29.61],
    [289, 35.18],
    [332.8, 40.02],
    [378.4, 44.82],
    [434.8, 50.76],
    [477.3, 55.05],
    [536.8, 61.01],
    [593.1, 66.4],
    [689.1, 75.47],
    [760, 81.78],
  ],
  estimate: { gammaInfinity: 238.94212918, ratePerS: 0.00055015643181 },
  sd: { gammaInfinity: 2.7070075241, ratePerS: 7.2668688436e-6 },
  residualSd: 0.1018787633,
};

describe("fitGrowth against NIST StRD Misra1a", () => {
  const points = misra1a.points.map(([timeS, gamma]) => ({ timeS: timeS!, gamma: gamma! }));
  const digits = (found: number, certified: number): number =>
    -Math.log10(Math.abs(found / certified - 1) || 1e-16);
  it("agrees with the certified values to nine digits, six being asked", () => {
    const { law, sd, residualSd, points: count } = fitGrowth(points, { appearanceS: 0 });
    expect(count).toBe(14);
    expect(digits(law.gammaInfinity, misra1a.estimate.gammaInfinity)).toBeGreaterThan(9);
    expect(digits(law.ratePerS, misra1a.estimate.ratePerS)).toBeGreaterThan(9);
    expect(digits(sd.gammaInfinity, misra1a.sd.gammaInfinity)).toBeGreaterThan(8);
    expect(digits(sd.ratePerS, misra1a.sd.ratePerS)).toBeGreaterThan(8);
    expect(digits(residualSd!, misra1a.residualSd)).toBeGreaterThan(8);
    expect(law.appearanceS).toBe(0);
    expect(sd.appearanceS).toBe(0);
    // The spread of the law knows beforehand that gradients are good to 3 %, for two degrees of freedom
    // beside the twelve of these.
    const pooled = Math.sqrt((2 * (0.03 * law.gammaInfinity) ** 2 + 12 * residualSd! ** 2) / 14);
    expect(law.sd.ratePerS / sd.ratePerS).toBeCloseTo(pooled / residualSd!, 9);
    expect(law.sd.gammaInfinity / sd.gammaInfinity).toBeCloseTo(pooled / residualSd!, 9);
  });
  it("knows the product of limit and rate better than either", () => {
    const { law, sd } = fitGrowth(points, { appearanceS: 0 });
    const { limitRate, limitAppearance, rateAppearance } = law.sd.correlation!;
    // From NIST's own figures: the initial slope b1·b2 moves by 1 % of itself far less than either.
    expect(limitRate).toBeLessThan(-0.99);
    expect([limitAppearance, rateAppearance]).toEqual([0, 0]);
    expect(sd.correlation).toEqual(law.sd.correlation);
  });
  it("does not depend on the order of the points", () => {
    expect(fitGrowth(points.slice().reverse(), { appearanceS: 0 })).toEqual(
      fitGrowth(points, { appearanceS: 0 }),
    );
  });
});

describe("fitGrowth", () => {
  it("gives back the law that made the points, appearance seen or fitted", () => {
    for (const fit of [fitGrowth(far, { appearanceS: 30 }), fitGrowth(far)]) {
      expect(fit.law.gammaInfinity).toBeCloseTo(1.4, 8);
      expect(fit.law.ratePerS).toBeCloseTo(0.004, 9);
      expect(fit.law.appearanceS).toBeCloseTo(30, 6);
      expect(fit.residualSd).toBeLessThan(1e-9);
    }
  });
  it("puts an appearance that would come out below 0 at 0", () => {
    const early = [90, 180, 300, 600, 900].map((timeS) => ({
      timeS,
      gamma: 1.4 * -Math.expm1(-0.004 * (timeS + 20)),
    }));
    const fit = fitGrowth(early);
    expect(fit.law.appearanceS).toBe(0);
    expect(fit.sd.appearanceS).toBeGreaterThan(0);
    expect(fit.law.gammaInfinity).toBeCloseTo(fitGrowth(early, { appearanceS: 0 }).law.gammaInfinity, 12);
  });
  it("heeds the points' own errors", () => {
    const wrong = far.map((point, i) => ({
      ...point,
      gamma: point.gamma + (i === 1 ? 0.05 : 0),
      sd: i === 1 ? 1 : 0.001,
    }));
    expect(fitGrowth(wrong, { appearanceS: 30 }).law.gammaInfinity).toBeCloseTo(1.4, 4);
    expect(
      fitGrowth(
        wrong.map(({ timeS, gamma }) => ({ timeS, gamma })),
        { appearanceS: 30 },
      ).law.gammaInfinity,
    ).not.toBeCloseTo(1.4, 2);
  });
  it("has the standard errors that repeated noise shows", () => {
    let state = 4321;
    const uniform = (): number => {
      state = (state * 1103515245 + 12345) % 2147483648;
      return state / 2147483648 - 0.5;
    };
    const noise = (): number => 0.01 * Math.sqrt(3) * (uniform() + uniform() + uniform() + uniform());
    const times = [60, 120, 180, 240, 360, 480, 720];
    const fits = Array.from({ length: 300 }, () =>
      fitGrowth(pointsAt(times).map((point) => ({ ...point, gamma: point.gamma + noise() }))),
    );
    for (const field of ["gammaInfinity", "ratePerS", "appearanceS"] as const) {
      const values = fits.map(({ law }) => law[field]);
      const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
      const spread = Math.sqrt(values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (values.length - 1));
      const told = fits.reduce((sum, { sd }) => sum + sd[field], 0) / fits.length;
      // 300 fits know a spread to 4 %; the estimate from four spare points is 6 % low in the mean.
      expect(told / spread).toBeGreaterThan(0.8);
      expect(told / spread).toBeLessThan(1.2);
    }
    // The three correlations likewise, from the same 300 fits.
    const correlation = (a: "gammaInfinity" | "ratePerS", b: "ratePerS" | "appearanceS"): number => {
      const [xs, ys] = [fits.map(({ law }) => law[a]), fits.map(({ law }) => law[b])];
      const middle = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / 300;
      const [mx, my] = [middle(xs), middle(ys)];
      const product = (u: readonly number[], v: readonly number[], mu: number, mv: number): number =>
        u.reduce((sum, one, i) => sum + (one - mu) * (v[i]! - mv), 0);
      return product(xs, ys, mx, my) / Math.sqrt(product(xs, xs, mx, mx) * product(ys, ys, my, my));
    };
    const told = (pair: "limitRate" | "limitAppearance" | "rateAppearance"): number =>
      fits.reduce((sum, { law }) => sum + law.sd.correlation![pair], 0) / 300;
    expect(Math.abs(told("limitRate") - correlation("gammaInfinity", "ratePerS"))).toBeLessThan(0.05);
    expect(Math.abs(told("limitAppearance") - correlation("gammaInfinity", "appearanceS"))).toBeLessThan(0.1);
    expect(Math.abs(told("rateAppearance") - correlation("ratePerS", "appearanceS"))).toBeLessThan(0.1);
  });
  it("takes a fall that the points' errors allow, near the limit, and none beyond them", () => {
    // 0.02 down between errors of 0.008 and 0.006, which make 0.01 of the difference: twice that is the end.
    const near = (fall: number): readonly GrowthPoint[] => [
      { timeS: 90, gamma: gammaAt(90, truth), sd: 0.01 },
      { timeS: 300, gamma: gammaAt(300, truth), sd: 0.01 },
      { timeS: 1500, gamma: 1.41, sd: 0.008 },
      { timeS: 1800, gamma: 1.41 - fall, sd: 0.006 },
    ];
    const { law, sd } = fitGrowth(near(0.0199), { appearanceS: 30 });
    expect(Math.abs(law.gammaInfinity - 1.4)).toBeLessThan(0.01);
    expect(sd.gammaInfinity).toBeLessThan(0.02);
    expect(() => fitGrowth(near(0.0201), { appearanceS: 30 })).toThrow(
      /^fitGrowth: points must be rising with time, not 1\.41 at 1500 s/,
    );
    // Without errors of their own they are good to 3 % of the highest: 2 · √2 · 0.03 · 1.41 is 0.1196.
    const plain = (fall: number) =>
      fitGrowth(
        near(fall).map(({ timeS, gamma }) => ({ timeS, gamma })),
        { appearanceS: 30 },
      );
    expect(plain(0.1196).law.gammaInfinity).toBeCloseTo(1.35, 1);
    expect(() => plain(0.1197)).toThrow(/^fitGrowth: points must be rising with time/);
  });
  it("has a law whose 90 % interval holds the rate also of few points, at the error that is common", () => {
    let state = 99;
    const uniform = (): number => {
      state = (state * 1103515245 + 12345) % 2147483648;
      return state / 2147483648 - 0.5;
    };
    // Five points of 3 %, drawn 600 times: by their own scatter of three degrees of freedom four in five are
    // held.
    const times = [120, 240, 400, 600, 1000];
    const noise = (): number => 0.03 * 1.4 * Math.sqrt(3) * (uniform() + uniform() + uniform() + uniform());
    const fits = Array.from({ length: 600 }, () =>
      fitGrowth(
        pointsAt(times).map((point) => ({ ...point, gamma: point.gamma + noise(), sd: 0.03 * 1.4 })),
        { appearanceS: 30 },
      ),
    );
    const holding = (of: (fit: FittedGrowth) => number): number =>
      fits.filter((fit) => Math.abs(fit.law.ratePerS - truth.ratePerS) < 1.645 * of(fit)).length / 600;
    expect(holding(({ law }) => law.sd.ratePerS)).toBeGreaterThan(0.84);
    expect(holding(({ law }) => law.sd.ratePerS)).toBeLessThan(0.96);
    expect(holding(({ sd }) => sd.ratePerS)).toBeLessThan(0.83);
  });
  it("takes gradients as good to 3 % of the limit, or to their own sd, where no point is spare", () => {
    const two = pointsAt([180, 600]);
    const plain = fitGrowth(two, { appearanceS: 30 });
    expect(plain.residualSd).toBeUndefined();
    const told = fitGrowth(
      two.map((point) => ({ ...point, sd: 0.042 })),
      { appearanceS: 30 },
    );
    expect(plain.sd.gammaInfinity).toBeCloseTo(told.sd.gammaInfinity, 8);
    expect(
      fitGrowth(
        two.map((point) => ({ ...point, sd: 0.021 })),
        { appearanceS: 30 },
      ).sd.ratePerS,
    ).toBeCloseTo(told.sd.ratePerS / 2, 10);
    // From the two equations by hand: moving γ at 600 s by its error moves the limit by so much.
    const moved = (d180: number, d600: number): number =>
      fitGrowth(
        [
          { timeS: 180, gamma: two[0]!.gamma + d180 },
          { timeS: 600, gamma: two[1]!.gamma + d600 },
        ],
        { appearanceS: 30 },
      ).law.gammaInfinity - 1.4;
    expect(told.sd.gammaInfinity).toBeCloseTo(
      Math.hypot(moved(1e-5, 0) / 1e-5, moved(0, 1e-5) / 1e-5) * 0.042,
      4,
    );
  });
});

describe("fitGrowth refuses", () => {
  const refuses = (points: unknown, error: Error, options?: unknown): void => {
    expect(() => fitGrowth(anyOf(points), anyOf(options))).toThrow(error);
  };
  const [a, b, c] = far as [GrowthPoint, GrowthPoint, GrowthPoint];
  it("what are no points", () => {
    refuses(null, new TypeError("fitGrowth: points must be an array, got null"));
    refuses([a], new RangeError("fitGrowth: points must hold at least 2, got 1"));
    refuses(
      [a, b],
      new RangeError("fitGrowth: points must be at least 3 when appearanceS is not given, got 2"),
    );
    refuses([a, null], new TypeError("fitGrowth: points[1] must be an object, got null"));
    refuses(
      [a, { ...b, timeS: 0 }],
      new RangeError("fitGrowth: points[1].timeS must be above 0 and at most 10000000 s, got 0"),
    );
    refuses(
      [a, { ...b, gamma: 0 }],
      new RangeError("fitGrowth: points[1].gamma must be above 0 and at most 1000, got 0"),
    );
    refuses(
      [a, { ...b, sd: 0 }],
      new RangeError("fitGrowth: points[1].sd must be above 0 and at most 1000, got 0"),
    );
    refuses(
      [a, { ...b, sd: 0.01 }],
      new RangeError("fitGrowth: points must be all with sd, or all without it"),
    );
    refuses(
      [a, b, { ...b, gamma: 1 }],
      new RangeError("fitGrowth: points must be different in time, not two at 180 s"),
    );
  });
  it("points that fall", () => {
    refuses(
      [
        { timeS: 300, gamma: 0.6 },
        { timeS: 600, gamma: 0.7 },
        { timeS: 900, gamma: 0.64 },
      ],
      new RangeError("fitGrowth: points must be rising with time, not 0.7 at 600 s and 0.64 at 900 s"),
    );
  });
  it("options that cannot be", () => {
    refuses(far, new TypeError("fitGrowth: options must be an object, got 30"), 30);
    refuses(far, new RangeError("fitGrowth: appearanceS must be from 0 to 1000000 s, got -1"), {
      appearanceS: -1,
    });
    refuses(far, new RangeError("fitGrowth: appearanceS must be before the first point (90 s), got 90"), {
      appearanceS: 90,
    });
  });
  it("points that cannot carry the fit", () => {
    const bend = new RangeError(
      "fitGrowth: points must be bent toward a limit, but these are not: add a longer time of development, or where they are level a shorter one",
    );
    const line = [100, 200, 300].map((timeS) => ({ timeS, gamma: timeS / 500 }));
    refuses(line, bend);
    refuses(line, bend, { appearanceS: 0 });
    // Level from the first on: it is a shorter time that is missing.
    refuses(
      [600, 900, 1200].map((timeS) => ({ timeS, gamma: 0.7 })),
      bend,
    );
    refuses([a, { timeS: 200, gamma: a.gamma }, { timeS: 300, gamma: 1 }], bend);
    const carry = new RangeError(
      "fitGrowth: points must be precise enough to tell limit and rate: the error of one is larger than itself",
    );
    refuses(pointsAt([40, 50, 60]), carry);
    refuses(
      [b, c].map((point) => ({ ...point, sd: 0.5 })),
      carry,
      { appearanceS: 30 },
    );
  });
});

describe("growthFromDoubling", () => {
  it("gives the handbooks' example: limit 2.0, 0.2 a minute", () => {
    // 1.2642 and 1.7293 at 5 and 10 minutes: worked example of the two-time method (from memory; it follows
    // from the growth law).
    const law = growthFromDoubling({ timeS: 300, gamma: 1.2642, gammaAtDouble: 1.7293 });
    expect(Math.abs(law.gammaInfinity - 2)).toBeLessThan(0.001);
    expect(Math.abs(law.ratePerS * 60 - 0.2)).toBeLessThan(0.0002);
    expect(law.appearanceS).toBe(0);
  });
  it("counts both times from the time of appearance", () => {
    const law = growthFromDoubling({
      timeS: 270,
      gamma: gammaAt(300, truth),
      gammaAtDouble: gammaAt(570, truth),
      appearanceS: 30,
    });
    expect(law.gammaInfinity).toBeCloseTo(1.4, 12);
    expect(law.ratePerS).toBeCloseTo(0.004, 12);
    expect(timeForGamma(1, law)).toBeCloseTo(timeForGamma(1, truth), 9);
  });
  it("refuses pairs that no growth law fits", () => {
    const good = { timeS: 300, gamma: 0.6, gammaAtDouble: 0.9 };
    const refuses = (change: object | null, error: Error): void => {
      expect(() => growthFromDoubling(anyOf(change === null ? null : { ...good, ...change }))).toThrow(error);
    };
    const between = (later: string): RangeError =>
      new RangeError(
        `growthFromDoubling: pair.gammaAtDouble must be between gamma (0.6) and twice gamma, which has no limit, got ${later}`,
      );
    refuses(null, new TypeError("growthFromDoubling: pair must be an object, got null"));
    refuses(
      { timeS: 0 },
      new RangeError("growthFromDoubling: pair.timeS must be above 0 and at most 1000000 s, got 0"),
    );
    refuses(
      { gamma: 0 },
      new RangeError("growthFromDoubling: pair.gamma must be above 0 and at most 1000, got 0"),
    );
    refuses(
      { gammaAtDouble: "1" },
      new TypeError('growthFromDoubling: pair.gammaAtDouble must be a number, got "1"'),
    );
    refuses(
      { appearanceS: -1 },
      new RangeError("growthFromDoubling: pair.appearanceS must be from 0 to 1000000 s, got -1"),
    );
    refuses({ gammaAtDouble: 0.6 }, between("0.6"));
    refuses({ gammaAtDouble: 1.2 }, between("1.2"));
  });

  it("refuses gradients above 1000", () => {
    const good = { timeS: 300, gamma: 0.6, gammaAtDouble: 0.9 };
    expect(() => growthFromDoubling({ ...good, gamma: 1001 })).toThrow(
      new RangeError("growthFromDoubling: pair.gamma must be above 0 and at most 1000, got 1001"),
    );
    expect(() => growthFromDoubling({ ...good, gammaAtDouble: 1001 })).toThrow(
      new RangeError("growthFromDoubling: pair.gammaAtDouble must be above 0 and at most 1000, got 1001"),
    );
  });
});

describe("a growth that goes on without end", () => {
  it("is refused by the name of the number", () => {
    expect(() => growthFromDoubling({ timeS: 300, gamma: 0.5, gammaAtDouble: 0.9998 })).toThrow(
      /^growthFromDoubling: pair.gammaInfinity must be above 0 and at most 1000, got 12/,
    );
    expect(() => growthFromDoubling({ timeS: 0.001, gamma: 1, gammaAtDouble: 1.5 })).toThrow(
      /^growthFromDoubling: pair.ratePerS must be above 0 and at most 100 1\/s, got 693/,
    );
    const points = [
      { timeS: 100, gamma: 400 },
      { timeS: 200, gamma: 700 },
      { timeS: 400, gamma: 999 },
    ];
    expect(() => fitGrowth(points, { appearanceS: 0 })).toThrow(
      /^fitGrowth: fitted\.gammaInfinity must be above 0 and at most 1000, got 12/,
    );
  });
});

describe("fitGrowth of late points", () => {
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
        "fitGrowth: points must be precise enough to tell limit and rate: the error of one is larger than itself",
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
