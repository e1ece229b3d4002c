/* Speed point, gradient and contrast index of curves whose answers are known beforehand. */
import { describe, expect, it } from "vitest";
import { averageGradient, contrastIndex, isoSpeed, speedPoint, type DensityStep } from "../../src/index.js";
import { anyOf } from "../helpers.js";
const curveOf = (
  density: (logH: number) => number,
  from = -4,
  to = 0.5,
  step = 0.15,
): readonly DensityStep[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => ({
    logH: from + i * step,
    density: density(from + i * step),
  }));
/** A straight curve with a sharp toe at log H = −2.5, base plus fog 0.2. */
const straight = (slope: number): readonly DensityStep[] =>
  curveOf((x) => 0.2 + Math.max(0, slope * (x + 2.5)), -3.25, 1.5, 0.05);
/** A smooth toe: D = 0.2 + 0.5·g·(x + √(x² + 0.04)), x = log H + 2.2, toward the slope g. */
const toe =
  (g: number) =>
  (logH: number): number =>
    0.2 + 0.5 * g * (logH + 2.2 + Math.hypot(logH + 2.2, 0.2));

describe("speedPoint", () => {
  it("lies 0.10 above base plus fog", () => {
    const point = speedPoint(straight(0.8));
    expect(point.logH).toBeCloseTo(-2.5 + 0.1 / 0.8, 9);
    expect(point.density).toBeCloseTo(0.3, 12);
  });
  it("takes steps in any order, and a base plus fog of its own", () => {
    const mixed = straight(0.8).slice().reverse();
    expect(speedPoint(mixed)).toEqual(speedPoint(straight(0.8)));
    expect(speedPoint({ steps: mixed, basePlusFog: 0.3 }).logH).toBeCloseTo(-2.5 + 0.2 / 0.8, 9);
    expect(speedPoint({ steps: mixed })).toEqual(speedPoint(mixed));
  });
  it("may be the first step itself", () => {
    expect(
      speedPoint({
        steps: [
          { logH: -3, density: 0.3 },
          { logH: -2, density: 0.5 },
          { logH: -1, density: 1 },
        ],
        basePlusFog: 0.2,
      }).logH,
    ).toBeCloseTo(-3, 12);
  });
  it("draws a smooth curve through few steps: within 0.01 of a curve known in full, steps of 0.15 as on a tablet", () => {
    const g = 0.65;
    // D − 0.2 = 0.1: with u = 0.2/g, x = u/2 − 0.02/u.
    const u = 0.2 / g;
    const exact = u / 2 - 0.02 / u - 2.2;
    const found = speedPoint({ steps: curveOf(toe(g)), basePlusFog: 0.2 }).logH;
    expect(Math.abs(found - exact)).toBeLessThan(0.01);
  });
  it("takes a curve that starts at the criterion itself", () => {
    const steps = [0.1, 0.6, 1.2].map((density, i) => ({ logH: i - 3, density }));
    expect(speedPoint({ steps, basePlusFog: 0 }).logH).toBe(-3);
  });
  it("takes a curve that starts or ends at the criterion, however the sum rounds", () => {
    for (let i = 0; i <= 200; i += 1) {
      // Fog and criterion as they are read off, to 0.01: their sum is seldom the same number.
      const fog = i / 100;
      const criterion = (i + 10) / 100;
      expect(
        speedPoint([
          { logH: -3, density: fog },
          { logH: -2, density: fog },
          { logH: -1, density: criterion },
        ]).logH,
      ).toBeCloseTo(-1, 9);
      const steps = [0, 0.5, 1].map((more, j) => ({ logH: j - 3, density: criterion + more }));
      expect(speedPoint({ steps, basePlusFog: fog }).logH).toBe(-3);
    }
  });
  it("says which end of the curve is missing", () => {
    const flat = [-3, -2, -1].map((logH) => ({ logH, density: 0.1 + (logH + 3) / 50 }));
    expect(() => speedPoint(flat)).toThrow(
      new RangeError(
        "speedPoint: curve must be a curve through 0.20, 0.10 over base plus fog, but ends at 0.14: add steps with more exposure",
      ),
    );
    expect(() =>
      speedPoint({ steps: flat.map((step) => ({ ...step, density: step.density + 1 })), basePlusFog: 0.1 }),
    ).toThrow(
      new RangeError(
        "speedPoint: curve must be a curve through 0.20, 0.10 over base plus fog, but starts at 1.10: add steps with less exposure",
      ),
    );
  });

  it("takes a base and fog left out by name for that of the lightest step", () => {
    const steps = [0, 0.5, 1, 1.5, 2].map((logH) => ({ logH, density: 0.1 + 0.3 * logH }));
    expect(speedPoint({ steps, basePlusFog: undefined })).toEqual(speedPoint({ steps }));
  });
});

describe("averageGradient", () => {
  it("is the slope of a straight curve, and below it with a toe", () => {
    expect(averageGradient(straight(0.8))).toBeCloseTo(0.8, 9);
    expect(averageGradient({ steps: curveOf(toe(0.65)), basePlusFog: 0.2 })).toBeLessThan(0.65);
  });
  it("takes a curve that ends 1.30 above the speed point, wherever that is", () => {
    for (let i = 0; i <= 300; i += 1) {
      const logH = -3 + i / 100;
      const steps = [
        { logH: logH - 0.5, density: 0.2 },
        { logH, density: 0.3 },
        { logH: logH + 1.3, density: 1.1 },
      ];
      expect(averageGradient(steps)).toBeCloseTo(0.8 / 1.3, 6);
      // A thousandth less is too short.
      const short = [...steps.slice(0, 2), { logH: logH + 1.299, density: 1.1 }];
      expect(() => averageGradient(short)).toThrow(/^averageGradient: curve must be a curve up to log H/);
    }
  });
  it("needs 1.30 above the speed point", () => {
    const short = straight(0.8).filter((step) => step.logH < -1.22);
    expect(() => averageGradient(short)).toThrow(
      new RangeError(
        "averageGradient: curve must be a curve up to log H -1.07, 1.30 above the speed point, but ends at -1.25",
      ),
    );
    expect(() => averageGradient([-3, -2, -1].map((logH) => ({ logH, density: 0.1 })))).toThrow(
      /^averageGradient: curve must be a curve through 0\.20/,
    );
  });
});

describe("isoSpeed", () => {
  /* ISO 6:1993: S = 0.80/Hm; ISO 100/21° at 0.008 lx s (from memory of the standard; S° = 1 + 10 log10 S). */
  const at = (logHm: number, slope = 0.8 / 1.3): readonly DensityStep[] =>
    curveOf((x) => 0.2 + Math.max(0, slope * (x - (logHm - 0.1 / slope))), -4, 1.5, 0.05);
  it.each([
    [0.008, 100, 21],
    [0.0064, 125, 22],
    [0.005, 160, 23],
    [0.004, 200, 24],
    [0.002, 400, 27],
    [0.001, 800, 30],
    [0.016, 50, 18],
    [0.08, 10, 11],
    [0.0008, 1000, 31],
    // As they are printed: 12 and not 12.5, 6 and not 6.4, but 32 and 64 in full.
    [0.064, 12, 12],
    [0.05, 16, 13],
    [0.0125, 64, 19],
    [0.025, 32, 16],
    [0.125, 6, 9],
    [0.25, 3, 6],
    [0.64, 1.2, 2],
  ])("%d lx s is ISO %d/%d°", (exposure, rated, degrees) => {
    const answer = isoSpeed({ steps: at(Math.log10(exposure)), basePlusFog: 0.2 });
    // The sharp toe between two steps is drawn round, so the speed is good to a few per cent of a third of a
    // stop.
    expect(answer.speed * exposure).toBeCloseTo(0.8, 1);
    expect(answer.rated).toBeCloseTo(rated, 9);
    expect(answer.degrees).toBe(degrees);
    expect(answer.averageGradient).toBeCloseTo(0.8 / 1.3, 2);
    expect(answer.cautions).toEqual([]);
  });
  it("says when the development is not the standard's", () => {
    for (const slope of [0.54, 0.7]) {
      const [caution] = isoSpeed(at(-2.1, slope)).cautions;
      expect(caution).toMatchObject({
        code: "not-iso-contrast",
        severity: "warn",
        message: expect.stringMatching(
          /^Density rises by 0\.[79]\d over 1\.30 in log H, not by 0\.80\. This is a speed for this/,
        ) as string,
        quantity: "density",
        limit: 0.8,
      });
      expect(caution!.actual).toBeCloseTo(1.3 * slope, 1);
    }
    for (const slope of [0.59, 0.64]) expect(isoSpeed(at(-2.1, slope)).cautions).toEqual([]);
  });
  it("takes a rise of 0.75 or 0.85 as the standard's, and 0.74 or 0.86 not", () => {
    const rising = (rise: number, logH: number): number => {
      const steps = [
        [-0.5, 0.1],
        [0, 0.2],
        [1.3, 0.2 + rise],
        [1.5, 0.25 + rise],
      ].map(([x, density]) => ({ logH: logH + x!, density: density! }));
      return isoSpeed(steps).cautions.length;
    };
    for (let i = 0; i <= 100; i += 1) {
      const logH = -3 + i / 100;
      expect([0.74, 0.75, 0.85, 0.86].map((rise) => rising(rise, logH))).toEqual([1, 0, 0, 1]);
    }
  });
  it("names itself when the curve falls short", () => {
    expect(() => isoSpeed(at(-2.1).slice(0, 45))).toThrow(
      /^isoSpeed: curve must be a curve up to log H -0\.80, 1\.30 above the speed point/,
    );
    expect(() => isoSpeed(at(-2.1).slice(0, 20))).toThrow(/^isoSpeed: curve must be a curve through 0\.30/);
  });
});

describe("contrastIndex", () => {
  it("is the slope of a straight curve from base plus fog", () => {
    expect(contrastIndex(straight(0.8))).toBeCloseTo(0.8, 3);
    expect(contrastIndex(straight(0.55))).toBeCloseTo(0.55, 3);
  });
  it("joins points 0.2 and 2.2 from one foot, as drawn with a template on a curve known in full", () => {
    const density = toe(0.65);
    const found = contrastIndex({ steps: curveOf(density, -4, 1.1, 0.05), basePlusFog: 0.2 });
    const angle = Math.atan(found);
    // The crossing of the inner arc fixes the foot; the outer arc must then meet the curve.
    const logHFor = (d: number): number => {
      const u = (2 * (d - 0.2)) / 0.65;
      return u / 2 - 0.02 / u - 2.2;
    };
    const foot = logHFor(0.2 + 0.2 * Math.sin(angle)) - 0.2 * Math.cos(angle);
    expect(logHFor(0.2 + 2.2 * Math.sin(angle))).toBeCloseTo(foot + 2.2 * Math.cos(angle), 2);
  });
  it("says when the curve does not reach", () => {
    expect(() => contrastIndex(straight(0.8).filter((step) => step.logH < -1.5))).toThrow(
      new RangeError(
        "contrastIndex: curve must be a curve that cuts the outer arc, 2.2 from its foot, but ends at 0.96: add steps with more exposure",
      ),
    );
    // Up to 1.0 within 1 in log H, level for 3 and on to 3.0: the arc of 2.2 about a foot near -3 meets the
    // curve nowhere between.
    const level = [
      [-3, 0.1],
      [-2, 1],
      [1, 1],
      [2, 3],
    ].map(([logH, density]) => ({ logH: logH!, density: density! }));
    expect(() => contrastIndex(level)).toThrow(
      new RangeError(
        "contrastIndex: curve must be a curve that cuts the outer arc, 2.2 from its foot, but runs level there",
      ),
    );
    const rise =
      "contrastIndex: curve must be a curve that rises from base plus fog with a slope above 0.1, but";
    const flat = [-3, -2, -1].map((logH) => ({ logH, density: 0.1 }));
    expect(() => contrastIndex(flat)).toThrow(
      new RangeError(`${rise} ends at 0.10: add steps with more exposure`),
    );
    expect(() => contrastIndex({ steps: straight(0.8), basePlusFog: 0.1 })).toThrow(
      new RangeError(`${rise} starts at 0.20: add steps with less exposure`),
    );
    expect(contrastIndex(straight(0.12))).toBeCloseTo(0.12, 2);
  });
});

describe("all of them refuse", () => {
  it.each([
    ["speedPoint", speedPoint],
    ["averageGradient", averageGradient],
    ["isoSpeed", isoSpeed],
    ["contrastIndex", contrastIndex],
  ] as const)("%s: what is no curve", (name, of) => {
    const good = straight(0.8);
    const refuses = (curve: unknown, error: Error): void => {
      expect(() => of(anyOf(curve))).toThrow(error);
    };
    refuses(null, new TypeError(`${name}: curve must be an object, got null`));
    refuses({ steps: 5 }, new TypeError(`${name}: curve.steps must be an array, got 5`));
    refuses(good.slice(0, 2), new RangeError(`${name}: curve.steps must hold at least 3, got 2`));
    refuses([...good.slice(0, 2), 5], new TypeError(`${name}: curve.steps[2] must be an object, got 5`));
    refuses(
      [...good.slice(0, 2), { logH: 11, density: 1 }],
      new RangeError(`${name}: curve.steps[2].logH must be from -10 to 10, got 11`),
    );
    refuses(
      [...good.slice(0, 2), { logH: 0, density: -1 }],
      new RangeError(`${name}: curve.steps[2].density must be from 0 to 10, got -1`),
    );
    refuses(
      [...good, { ...good[0], density: 1 }],
      new RangeError(`${name}: curve.steps must be different in exposure, not two at log H -3.25`),
    );
    refuses(
      { steps: good, basePlusFog: -1 },
      new RangeError(`${name}: curve.basePlusFog must be from 0 to 10, got -1`),
    );
  });
});

describe("a curve that just reaches", () => {
  const curve = (...steps: readonly (readonly [logH: number, density: number])[]): readonly DensityStep[] =>
    steps.map(([logH, density]) => ({ logH, density }));
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

describe("contrastIndex of a flat curve or a veiled one", () => {
  const curve = (...steps: readonly (readonly [logH: number, density: number])[]): readonly DensityStep[] =>
    steps.map(([logH, density]) => ({ logH, density }));
  it("calls for more exposure where a flat curve starts at the inner arc itself", () => {
    // The lowest foot of the inner arc lies 0.2 × sin(atan 0.1) over base plus fog.
    const density = 0.2 * Math.sin(Math.atan(0.1));
    expect(() =>
      contrastIndex({ steps: curve([-3, density], [-2, density], [-1, density]), basePlusFog: 0 }),
    ).toThrow(
      new RangeError(
        "contrastIndex: curve must be a curve that rises from base plus fog with a slope above 0.1, but ends at 0.02: add steps with more exposure",
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
