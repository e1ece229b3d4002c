import { Matrix, inverse } from "ml-matrix";
import { errorFunction } from "simple-statistics";
import { describe, expect, it } from "vitest";
import type { Row } from "../../src/core/row.js";
import type { Reading, Said } from "../../src/learning/reading.js";
import { fitRegression } from "../../src/learning/regression.js";
import { seeded } from "../worlds/random.js";
import { type Certified, norris, pontius } from "../reference/nist.js";

const row = (slopes: Readonly<Record<string, number>>, beside = 0): Row => ({
  slopes: Object.entries(slopes).map(([parameter, slope]) => ({ parameter, slope })),
  beside,
});
const value = (log: number, sd = 0.1): Said => ({ kind: "value", log, sd });
const window = (low: number, high: number, sd = 0.07): Said => ({
  kind: "window",
  low,
  high,
  log: Number.isFinite(low + high) ? (low + high) / 2 : Math.sign(low + high) * 0.25,
  sd,
});
const base = { parameter: "base", sd: 0.2 };
const slope = { parameter: "slope", sd: 2 };

describe("values of stated noise", () => {
  it("give the posterior of the normal equations", () => {
    const random = seeded(1);
    const readings = Array.from({ length: 12 }, (): Reading => ({
      row: row({ base: 1, slope: random.normal() }, 0.01),
      said: value(random.normal(), 0.1 + random.uniform()),
    }));
    const fit = fitRegression([base, slope], readings, "stated");
    const x = new Matrix(readings.map(({ row: { slopes } }) => slopes.map((each) => each.slope)));
    const weights = Matrix.diag(readings.map(({ said }) => 1 / (said.sd ** 2 + 0.01)));
    const precision = x
      .transpose()
      .mmul(weights)
      .mmul(x)
      .add(Matrix.diag([1 / 0.2 ** 2, 1 / 2 ** 2]));
    const covariance = inverse(precision);
    const mean = covariance.mmul(
      x
        .transpose()
        .mmul(weights)
        .mmul(Matrix.columnVector(readings.map(({ said }) => said.log))),
    );
    expect(fit.mean("base")).toBeCloseTo(mean.get(0, 0), 10);
    expect(fit.mean("slope")).toBeCloseTo(mean.get(1, 0), 10);
    expect(fit.sd("slope")).toBeCloseTo(Math.sqrt(covariance.get(1, 1)), 10);
    expect(fit.covariance(row({ base: 1 }), row({ slope: 3 }))).toBeCloseTo(3 * covariance.get(0, 1), 10);
    expect(fit.along(row({ base: 1, slope: 2 })).mean).toBeCloseTo(mean.get(0, 0) + 2 * mean.get(1, 0), 10);
    expect([fit.scatter, ...fit.weights]).toEqual(Array.from({ length: 13 }, () => 1));
  });
  it("leave the prior where there are none", () => {
    const fit = fitRegression([base], []);
    expect([fit.mean("base"), fit.sd("base"), fit.scatter]).toEqual([0, expect.closeTo(0.2, 15), 1]);
  });
  it("may say the same a thousand times without a spread below nothing", () => {
    const readings = Array.from({ length: 1000 }, () => ({
      row: row({ base: 1, slope: 1 }),
      said: value(0.3, 1e-3),
    }));
    const fit = fitRegression([base, { parameter: "slope", sd: 100 }], readings, "stated");
    expect(fit.along(row({ base: 1, slope: 1 })).mean).toBeCloseTo(0.3, 6);
    expect(fit.along(row({ base: 1, slope: 1 })).variance).toBeGreaterThanOrEqual(0);
  });
});

describe("values of estimated noise", () => {
  const good = Array.from({ length: 9 }, (_, i) => ({ row: row({ base: 1 }), said: value(0.01 * (i - 4)) }));

  it("hold back the one that disagrees", () => {
    const fit = fitRegression([base], [...good, { row: row({ base: 1 }), said: value(2) }]);
    expect(fit.weights.slice(0, 9)).toEqual(good.map(() => 1));
    expect(fit.weights[9]).toBeLessThan(0.01);
    expect(fit.mean("base")).toBeCloseTo(0, 3);
    // Where it is no slip of the pen, as P. J. Huber's rule says: two standard deviations over its distance.
    const near = fitRegression([base], [...good, { row: row({ base: 1 }), said: value(0.2) }]);
    const away = (0.2 - near.mean("base")) / (0.1 * near.scatter);
    expect(near.weights[9]! * away).toBeGreaterThan(1.8);
    expect(near.weights[9]! * away).toBeLessThan(2);
    const trusting = fitRegression([base], [...good, { row: row({ base: 1 }), said: value(2) }], "stated");
    expect(Math.abs(fit.mean("base"))).toBeLessThan(trusting.mean("base") / 3);
  });
  it("find the scatter: less where runs agree, more where they do not", () => {
    expect(fitRegression([base], good).scatter).toBeLessThan(0.8);
    const wild = good.map((each, i) => ({ ...each, said: value(i % 2 ? 0.3 : -0.3) }));
    expect(fitRegression([base], wild).scatter).toBeGreaterThan(1.8);
  });
  it("never tell more than a development repeats, 4 %", () => {
    const exact = { row: row({ base: 1 }), said: value(0, 0.001) };
    const alone = fitRegression([base], [exact]);
    // The scatter that one reading leaves is in it.
    expect(alone.sd("base")).toBeCloseTo(1 / Math.hypot(1 / 0.2, 1 / (0.04 * alone.scatter)), 6);
    expect(alone.scatter).toBeGreaterThan(1);
    // However often it is said: a thousand readings bring the scatter itself below 1.
    const often = fitRegression([base], new Array(1000).fill(exact));
    expect(often.sd("base")).toBeCloseTo(0.04 / Math.sqrt(1000), 5);
  });
});

describe("windows", () => {
  it("one window gives the moments of prior times window", () => {
    const [low, high] = [0.1, 0.4];
    const fit = fitRegression([base], [{ row: row({ base: 1 }), said: window(low, high) }], "stated");
    let [mass, first, second] = [0, 0, 0];
    for (let x = -1.5; x < 1.5; x += 1e-4) {
      const upper = (z: number): number => 1 / (1 + Math.exp(-1.5976 * z - 0.070566 * z ** 3));
      const p = Math.exp(-((x / 0.2) ** 2) / 2) * (upper((high - x) / 0.07) - upper((low - x) / 0.07));
      mass += p;
      first += p * x;
      second += p * x * x;
    }
    const mean = first / mass;
    expect(fit.mean("base")).toBeCloseTo(mean, 3);
    expect(fit.sd("base")).toBeCloseTo(Math.sqrt(second / mass - mean ** 2), 3);
  });
  it("repeated often tell far less than values of the same noise", () => {
    const sdAfter = (said: Said, count: number): number =>
      fitRegression(
        [{ parameter: "base", sd: 0.5 }],
        Array.from({ length: count }, () => ({ row: row({ base: 1 }), said })),
        "stated",
      ).sd("base");
    for (const count of [1, 10, 100])
      expect(sdAfter(window(-0.168, 0.168), count)).toBeGreaterThan(1.6 * sdAfter(value(0, 0.07), count));
  });
  it.each([1, 10, 100, 1000, 10_000])(
    "%i that all hold settle at the scatter that equals its own estimate",
    (count) => {
      const half = 0.168;
      const eye = 0.07;
      // By bisection: (2 + n) s² = 4 + n s² (1 − 2bφ(b)/(2Φ(b) − 1)), b = half/(eye s), as for any truncated normal
      // (Johnson, Kotz and Balakrishnan, Continuous Univariate Distributions, vol. 1, New York, 1994, sec. 13.10).
      let [low, high] = [0.01, 10];
      while (high - low > 1e-9) {
        const s = (low + high) / 2;
        const b = half / (eye * s);
        const cut =
          (2 * b * Math.exp((-b * b) / 2)) / (Math.sqrt(2 * Math.PI) * errorFunction(b / Math.SQRT2));
        if (s * s * (2 + count * cut) < 4) low = s;
        else high = s;
      }
      const readings = Array.from({ length: count }, () => ({
        row: row({ base: 1 }),
        said: window(-half, half, eye),
      }));
      const fit = fitRegression([{ parameter: "base", sd: 1e-4 }], readings);
      expect(fit.scatter / low).toBeCloseTo(1, 3);
    },
  );
  it("open to one side push only that way", () => {
    const thin = { row: row({ base: 1 }), said: window(0.084, Infinity) };
    const fit = fitRegression([base], [thin]);
    expect(fit.mean("base")).toBeGreaterThan(0.1);
    expect(fit.sd("base")).toBeLessThan(0.35);
    const far = fitRegression([{ parameter: "base", sd: 0.01 }], [{ ...thin, said: window(3, Infinity) }]);
    expect(Number.isFinite(far.mean("base"))).toBe(true);
  });
  it("of a row that nothing moves say nothing", () => {
    const fit = fitRegression([base], [{ row: row({}), said: window(-0.168, 0.168) }]);
    expect([fit.mean("base"), fit.sd("base")]).toEqual([0, expect.closeTo(0.2, 12)]);
    expect(Number.isFinite(fit.scatter)).toBe(true);
  });
});

describe("an unknown whose variance is learned", () => {
  it("may lie many of its first standard deviations off", () => {
    const readings = Array.from({ length: 30 }, (_, i) => ({
      row: row({ trend: i }),
      said: value(0.02 * i, 0.1),
    }));
    const held = fitRegression([{ parameter: "trend", sd: 0.0005 }], readings).mean("trend");
    const free = fitRegression([{ parameter: "trend", sd: 0.0005, tail: "student" }], readings).mean("trend");
    expect(free).toBeGreaterThan(0.018);
    expect(held).toBeLessThan(0.8 * free);
  });
});

it("a row with a name that is no unknown's is a bug, and is not passed over", () => {
  expect(() => fitRegression([base], [{ row: row({ bass: 1 }), said: value(0) }])).toThrow("bass");
});

describe("against certified fits (NIST StRD, linear least squares)", () => {
  // A prior 1e6 times as wide as the certified standard error, in each number, is flat to twelve digits.
  const flat = (set: Certified, powers: readonly number[]) => {
    const scale = set.sd.map((sd) => (1e6 * sd) / set.residualSd);
    const rows = set.points.map(([x]) => powers.map((power, j) => x ** power * scale[j]!));
    const y = set.points.map(([, each]) => each);
    const unknowns = powers.map((power) => ({ parameter: `x^${power}`, sd: 1 }));
    const fit = fitRegression(
      unknowns,
      rows.map((slopes, i) => ({
        row: {
          slopes: slopes.map((slope, j) => ({ parameter: unknowns[j]!.parameter, slope })),
          beside: 0,
        },
        said: { kind: "value", log: y[i]!, sd: 1 },
      })),
      "stated",
    );
    const mean = unknowns.map(({ parameter }) => fit.mean(parameter));
    const residual = rows.reduce(
      (sum, row, i) => sum + (y[i]! - row.reduce((total, each, j) => total + each * mean[j]!, 0)) ** 2,
      0,
    );
    const residualSd = Math.sqrt(residual / (y.length - powers.length));
    return {
      residualSd,
      estimate: mean.map((u, j) => u * scale[j]!),
      sd: unknowns.map(({ parameter }, j) => residualSd * scale[j]! * fit.sd(parameter)),
    };
  };
  it.each([
    ["Norris", norris, [0, 1]],
    ["Pontius", pontius, [0, 1, 2]],
  ] as const)("%s to six digits, with the prior flat", (_, set, powers) => {
    const found = flat(set, powers);
    expect(found.residualSd / set.residualSd).toBeCloseTo(1, 6);
    set.estimate.forEach((certified, j) => {
      expect(found.estimate[j]! / certified).toBeCloseTo(1, 6);
      expect(found.sd[j]! / set.sd[j]!).toBeCloseTo(1, 6);
    });
  });
});
