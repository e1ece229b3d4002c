/* The fit of Newton's law of cooling, and the curve fit under it. */
import { describe, expect, it } from "vitest";
import { fitRelaxation, standardErrors } from "../../src/core/relaxation.js";
import { fitDrift, newtonDrift, type TemperatureLog } from "../../src/index.js";
import { anyOf } from "../helpers.js";
const truth = { startC: 24, ambientC: 14, timeConstantS: 1800 };
const logOf = (
  times: readonly number[],
  drift = truth,
  noise: (i: number) => number = () => 0,
): TemperatureLog => times.map((timeS, i) => ({ timeS, temperatureC: newtonDrift(drift)(timeS) + noise(i) }));
const every = (stepS: number, count: number, fromS = 0): readonly number[] =>
  Array.from({ length: count }, (_, i) => fromS + i * stepS);

describe("fitDrift", () => {
  it("gives back the drift that made the readings, air known", () => {
    const fit = fitDrift(logOf([0, 600]), { ambientC: 14 });
    expect(fit.timeConstantS / 1800).toBeCloseTo(1, 9);
    expect(fit.startC).toBeCloseTo(24, 9);
    expect(fit).toMatchObject({ ambientC: 14, readings: 2 });
    expect(fit.residualSdC).toBeUndefined();
    // By hand: τ = 600/ln(10/8) when 24 °C fall to 22 °C in air of 14 °C.
    expect(
      fitDrift(
        [
          { timeS: 0, temperatureC: 24 },
          { timeS: 600, temperatureC: 22 },
        ],
        { ambientC: 14 },
      ).timeConstantS,
    ).toBeCloseTo(600 / Math.log(1.25), 6);
  });
  it("gives back the drift that made the readings, air unknown", () => {
    const fit = fitDrift(logOf(every(300, 8)));
    expect(fit.timeConstantS / 1800).toBeCloseTo(1, 7);
    expect(fit.ambientC).toBeCloseTo(14, 6);
    expect(fit.startC).toBeCloseTo(24, 7);
    expect(fit.residualSdC).toBeLessThan(1e-9);
    const three = fitDrift(logOf([0, 900, 1800]));
    expect(three.timeConstantS / 1800).toBeCloseTo(1, 7);
    expect(three.residualSdC).toBeUndefined();
  });
  it("fits a bath that warms, and a clock that started earlier", () => {
    const warming = { startC: 12, ambientC: 26, timeConstantS: 900 };
    const fit = fitDrift(logOf(every(120, 10, 600), warming));
    expect(fit.timeConstantS / 900).toBeCloseTo(1, 7);
    expect(fit.startC).toBeCloseTo(12, 6);
    expect(fit.ambientC).toBeCloseTo(26, 6);
  });
  it("has the standard error that repeated noise shows", () => {
    // A fixed sequence of near-normal noise of 0.1 °C: sums of four from a linear congruence.
    let state = 12345;
    const uniform = (): number => {
      state = (state * 1103515245 + 12345) % 2147483648;
      return state / 2147483648 - 0.5;
    };
    const normal = (): number => 0.1 * Math.sqrt(3) * (uniform() + uniform() + uniform() + uniform());
    for (const options of [{ ambientC: 14 }, {}]) {
      const fits = Array.from({ length: 300 }, () => fitDrift(logOf(every(240, 12), truth, normal), options));
      const mean = fits.reduce((sum, fit) => sum + fit.timeConstantS, 0) / fits.length;
      const spread = Math.sqrt(
        fits.reduce((sum, fit) => sum + (fit.timeConstantS - mean) ** 2, 0) / (fits.length - 1),
      );
      const told = fits.reduce((sum, fit) => sum + fit.sdTimeConstantS, 0) / fits.length;
      // 300 fits know a spread to 4 %; the estimate from 9 or 10 spare readings is 3 % low in the mean.
      expect(told / spread).toBeGreaterThan(0.85);
      expect(told / spread).toBeLessThan(1.15);
      expect(Math.abs(mean / 1800 - 1)).toBeLessThan(0.03);
    }
  });
  it("holds the time constant in its 90 % interval also from few readings of a thermometer with tenths", () => {
    let state = 777;
    const uniform = (): number => {
      state = (state * 1103515245 + 12345) % 2147483648;
      return state / 2147483648;
    };
    for (const count of [3, 4, 6]) {
      const held = Array.from({ length: 400 }, () => {
        const drift = { startC: 22 + 4 * uniform(), ambientC: 14, timeConstantS: 1200 + 1800 * uniform() };
        const log = logOf(every(1500 / (count - 1), count), drift).map(({ timeS, temperatureC }) => ({
          timeS,
          temperatureC: Math.round(temperatureC * 10) / 10,
        }));
        const { timeConstantS, sdTimeConstantS } = fitDrift(log, { ambientC: 14 });
        return Math.abs(timeConstantS - drift.timeConstantS) < 1.645 * sdTimeConstantS;
      }).filter(Boolean).length;
      // By the scatter alone three readings hold 73 %. What rounding does is less than the 0.05 °C assumed,
      // so more than nine in ten are held.
      expect(held / 400).toBeGreaterThan(0.9);
    }
    // Readings that lie on a curve: two degrees of freedom of 0.05 °C, two of nothing.
    const sure = fitDrift(logOf([0, 300, 600, 900]), { ambientC: 14 });
    expect(sure.residualSdC).toBeLessThan(1e-9);
    const fall = [0, 300, 600, 900].map((timeS) => Math.exp(-timeS / 1800));
    const [error] = standardErrors([fall.map((each, i) => -10 * 300 * i * each), fall]);
    expect(sure.sdTimeConstantS).toBeCloseTo(1800 ** 2 * 0.05 * Math.sqrt(2 / 4) * error!, 4);
  });
  it("does not care what the clock said at pour-in", () => {
    const noise = (i: number): number => [0.1, -0.1, 0.05, -0.05, 0.1, -0.1, 0.02, -0.02][i]!;
    for (const options of [{ ambientC: 14 }, {}]) {
      const early = fitDrift(logOf(every(300, 8), truth, noise), options);
      const late = fitDrift(
        logOf(every(300, 8), truth, noise).map(({ timeS, temperatureC }) => ({
          timeS: timeS + 600,
          temperatureC,
        })),
        options,
      );
      expect(late.sdTimeConstantS / early.sdTimeConstantS).toBeCloseTo(1, 6);
      expect(late.timeConstantS / early.timeConstantS).toBeCloseTo(1, 6);
    }
  });
  it("refuses a curve that was ice or steam when the clock was at 0", () => {
    // Readings from 2000 s on of a bath that would have been at 105 °C, or below 0 °C in warm air, at the
    // clock's start.
    const hot = every(100, 8, 2000).map((timeS) => ({
      timeS,
      temperatureC: 14 + 91 * Math.exp(-timeS / 900),
    }));
    const cold = every(100, 8, 2000).map((timeS) => ({
      timeS,
      temperatureC: 26 - 30 * Math.exp(-timeS / 900),
    }));
    for (const log of [hot, cold])
      for (const options of [{ ambientC: log === hot ? 14 : 26 }, {}])
        expect(() => fitDrift(log, options)).toThrow(
          new RangeError(
            "fitDrift: log must be a log that tells the time constant, but its curve leaves 0 to 100 °C",
          ),
        );
    expect(
      fitDrift(hot.map(({ timeS, temperatureC }) => ({ timeS: timeS - 2000, temperatureC }))).startC,
    ).toBeCloseTo(14 + 91 * Math.exp(-20 / 9), 5);
  });
  it("takes readings as good to 0.05 °C where none is spare", () => {
    const fit = fitDrift(logOf([0, 600]), { ambientC: 14 });
    // Two readings y0 and y1 above the air: τ = t/ln(y0/y1), so sd(τ) = τ²/t·sd·√(1/y0² + 1/y1²).
    const y1 = 10 * Math.exp(-1 / 3);
    expect(fit.sdTimeConstantS).toBeCloseTo((1800 ** 2 / 600) * 0.05 * Math.sqrt(1 / 100 + 1 / y1 ** 2), 5);
  });
});

describe("fitDrift refuses", () => {
  const refuses = (log: unknown, error: Error, options?: unknown): void => {
    expect(() => fitDrift(anyOf(log), anyOf(options))).toThrow(error);
  };
  const told = (why: string): RangeError =>
    new RangeError(`fitDrift: log must be a log that tells the time constant, but ${why}`);
  const flat = [
    { timeS: 0, temperatureC: 20 },
    { timeS: 600, temperatureC: 20 },
    { timeS: 900, temperatureC: 20 },
  ];
  it("what is no log or no air", () => {
    refuses(null, new TypeError("fitDrift: log must be an array, got null"));
    refuses([flat[0]], new RangeError("fitDrift: log must hold at least 2 readings, got 1"));
    refuses(
      flat.slice(0, 2),
      new RangeError("fitDrift: log must be at least 3 when ambientC is not given, got 2"),
    );
    refuses(flat, new TypeError("fitDrift: options must be an object, got 14"), 14);
    refuses(flat, new RangeError("fitDrift: options.ambientC must be from -50 to 100 °C, got 101"), {
      ambientC: 101,
    });
    refuses(flat, new TypeError('fitDrift: options.ambientC must be a number, got "14"'), { ambientC: "14" });
  });
  it("readings that stay level, run straight, or move away from the air", () => {
    const bend = told("its readings do not bend toward the air");
    refuses(flat, bend);
    refuses(flat, bend, { ambientC: 14 });
    refuses(
      [
        { timeS: 0, temperatureC: 24 },
        { timeS: 300, temperatureC: 23 },
        { timeS: 600, temperatureC: 22 },
      ],
      bend,
    );
    refuses(
      [
        { timeS: 0, temperatureC: 20 },
        { timeS: 600, temperatureC: 22 },
      ],
      bend,
      { ambientC: 14 },
    );
    refuses(flat.slice(0, 2), bend, { ambientC: 20 });
  });
  it("readings within their own error", () => {
    const error = told("its standard error is larger than itself");
    refuses(logOf([0, 150, 300]), error);
    // All of the change between two readings: any short time constant would do.
    refuses(
      [
        { timeS: 0, temperatureC: 24 },
        { timeS: 300, temperatureC: 14 },
        { timeS: 600, temperatureC: 14 },
      ],
      error,
    );
    expect(fitDrift(logOf([0, 450, 900])).timeConstantS).toBeCloseTo(1800, 3);
  });
  it("a curve that leaves what a bath and its air can be", () => {
    refuses(
      logOf(every(300, 6, 9000), { startC: 100, ambientC: 10, timeConstantS: 4000 }).map((one) => ({
        ...one,
        timeS: one.timeS + 9000,
      })),
      told("its curve leaves 0 to 100 °C"),
    );
  });

  it("a bath that hardly cools, by name", () => {
    const log = [
      { timeS: 0, temperatureC: 30 },
      { timeS: 5e6, temperatureC: 27.5 },
      { timeS: 1e7, temperatureC: 25.3 },
    ];
    expect(() => fitDrift(log, { ambientC: 10 })).toThrow(
      /^fitDrift: .*its time constant is longer than a clock shows/,
    );
  });
});

describe("standardErrors", () => {
  it("are those of the normal equations", () => {
    // Straight line through x = 0, 1, 2: intercept √(5/6), slope √(1/2).
    const [intercept, slope] = standardErrors([
      [1, 1, 1],
      [0, 1, 2],
    ]) as [number, number];
    expect(intercept).toBeCloseTo(Math.sqrt(5 / 6), 12);
    expect(slope).toBeCloseTo(Math.sqrt(1 / 2), 12);
    // A parabola through 0, 1, 2, 3: the inverse of its 3 × 3 normal matrix, worked by hand: 19/20, 49/20,
    // 1/4.
    const errors = standardErrors([
      [1, 1, 1, 1],
      [0, 1, 2, 3],
      [0, 1, 4, 9],
    ]);
    expect(errors.map((one) => one ** 2)).toEqual([
      expect.closeTo(19 / 20, 10),
      expect.closeTo(49 / 20, 10),
      expect.closeTo(1 / 4, 10),
    ]);
  });
});

describe("fitRelaxation", () => {
  const points = [0, 1, 2, 3, 5].map((x) => ({ x, y: 3 - 2 * Math.exp(-0.7 * x), weight: 1 }));
  it("finds limit, step and rate, free or held", () => {
    for (const hold of [{}, { limit: 3 }]) {
      const fit = fitRelaxation(points, hold)!;
      expect(fit.rate).toBeCloseTo(0.7, 9);
      expect(fit.limit).toBeCloseTo(3, 9);
      expect(fit.step).toBeCloseTo(-2, 9);
      expect(fit.squares).toBeLessThan(1e-18);
    }
    const zero = Math.log(2 / 3) / 0.7;
    const held = fitRelaxation(points, { zeroAt: zero })!;
    expect(held.rate).toBeCloseTo(0.7, 9);
    expect(held.limit).toBeCloseTo(3, 9);
    expect(held.step).toBeCloseTo(-2, 9);
  });
  it("heeds the weights", () => {
    const bent = points.map((point, i) => (i === 3 ? { ...point, y: point.y + 0.5, weight: 1e-9 } : point));
    expect(fitRelaxation(bent)!.rate).toBeCloseTo(0.7, 5);
    expect(fitRelaxation(bent.map((point) => ({ ...point, weight: 1 })))!.limit).toBeGreaterThan(3.1);
  });
  it("finds nothing in a line that is straight or bends the other way", () => {
    expect(fitRelaxation([0, 1, 2, 3].map((x) => ({ x, y: x, weight: 1 })))).toBeUndefined();
    expect(
      fitRelaxation(
        [0, 1, 2].map((x) => ({ x, y: x * x, weight: 1 })),
        { zeroAt: 0 },
      ),
    ).toBeUndefined();
    // A step within the first interval: the faster, the better, down to rates beyond those that are tried.
    expect(
      fitRelaxation(
        [10, 0, 0, 0].map((y, x) => ({ x, y, weight: 1 })),
        { limit: 0 },
      ),
    ).toBeUndefined();
  });
  it("finds the same rate wherever the clock starts", () => {
    // Rates are tried over the span, 5, not over the last x.
    expect(fitRelaxation(points.map((point) => ({ ...point, x: point.x + 1e5 })))!.rate).toBeCloseTo(0.7, 6);
  });
});

describe("fitDrift in very cold or very warm air", () => {
  it("takes air at the ends of its range", () => {
    // τ = t/ln(difference before/difference after): 80 °C to 40 °C below 100 °C, and 70 °C to 56 °C above −50
    // °C.
    const fit = (first: number, second: number, ambientC: number): number =>
      fitDrift(
        [
          { timeS: 0, temperatureC: first },
          { timeS: 600, temperatureC: second },
        ],
        { ambientC },
      ).timeConstantS;
    expect(fit(20, 60, 100)).toBeCloseTo(600 / Math.log(2), 6);
    expect(fit(20, 6, -50)).toBeCloseTo(600 / Math.log(1.25), 6);
  });
});
