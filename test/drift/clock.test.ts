/* Newton's law of cooling and the clock time that a drifting bath needs. */
import { describe, expect, it } from "vitest";
import {
  developUntil,
  equivalentTime,
  newtonDrift,
  rateFunction,
  remainingTime,
  steer,
  temperatureFactor,
  type TemperatureLaw,
  compensate,
} from "../../src/index.js";
import { clockTime } from "../../src/drift/developUntil.js";
import { logTemperature } from "../../src/drift/log.js";
import { odexIntegral } from "./odex.js";
import { anyOf, thrown } from "../helpers.js";
const law: TemperatureLaw = { kind: "arrhenius", activationEnergyKJPerMol: 60 };
const drift = { startC: 24, ambientC: 14, timeConstantS: 1800 };
const cooling = newtonDrift(drift);

describe("newtonDrift", () => {
  it("starts at the start, has 1/e of the difference left after one time constant, ends at the air's temperature", () => {
    expect(cooling(0)).toBe(24);
    expect(cooling(1800)).toBeCloseTo(14 + 10 / Math.E, 12);
    expect(cooling(1e7)).toBe(14);
  });
  it("warms as it cools", () => {
    expect(newtonDrift({ startC: 10, ambientC: 30, timeConstantS: 600 })(600)).toBeCloseTo(
      30 - 20 / Math.E,
      12,
    );
  });
  it("takes the ends of its ranges", () => {
    expect(newtonDrift({ startC: 0, ambientC: 100, timeConstantS: 1e7 })(0)).toBe(0);
    expect(newtonDrift({ startC: 100, ambientC: -50, timeConstantS: 1 })(1000)).toBe(-50);
  });
  it("refuses what cannot be", () => {
    const refuses = (drift: unknown, error: Error): void => {
      expect(() => newtonDrift(anyOf(drift))).toThrow(error);
    };
    const good = { startC: 24, ambientC: 14, timeConstantS: 1800 };
    refuses(null, new TypeError("newtonDrift: drift must be an object, got null"));
    refuses(
      { ...good, startC: -1 },
      new RangeError("newtonDrift: drift.startC must be from 0 to 100 °C, got -1"),
    );
    refuses(
      { ...good, ambientC: -51 },
      new RangeError("newtonDrift: drift.ambientC must be from -50 to 100 °C, got -51"),
    );
    refuses(
      { ...good, timeConstantS: 0 },
      new RangeError("newtonDrift: drift.timeConstantS must be above 0 and at most 10000000 s, got 0"),
    );
    refuses(
      { ...good, timeConstantS: "1" },
      new TypeError('newtonDrift: drift.timeConstantS must be a number, got "1"'),
    );
    expect(() => cooling(-1)).toThrow(
      new RangeError("newtonDrift: timeS must be from 0 to 10000000 s, got -1"),
    );
    expect(() => cooling(NaN)).toThrow(
      new RangeError("newtonDrift: timeS must be from 0 to 10000000 s, got NaN"),
    );
  });
});

describe("developUntil", () => {
  it("is the factor's time in a steady bath", () => {
    const until = developUntil({ equivalentS: 480, referenceC: 20, law, temperatureAt: 14 });
    expect(until / (480 * temperatureFactor(20, 14, law))).toBeCloseTo(1, 10);
  });
  it("gives back what an independent integrator counted, to 1e-9", () => {
    const rate = rateFunction(20, law);
    const done = odexIntegral((t) => rate(cooling(t)), 0, 700);
    expect(
      Math.abs(developUntil({ equivalentS: done, referenceC: 20, law, temperatureAt: drift }) / 700 - 1),
    ).toBeLessThan(1e-9);
  });
  it("counts from a later moment on the same clock", () => {
    const rate = rateFunction(20, law);
    const done = odexIntegral((t) => rate(cooling(t)), 250, 700);
    expect(
      Math.abs(
        developUntil({ equivalentS: done, referenceC: 20, law, temperatureAt: drift, fromS: 250 }) / 700 - 1,
      ),
    ).toBeLessThan(1e-9);
  });
  it("sees a corner and a step in the course", () => {
    const step = (t: number): number => (t < 123.4 ? 20 : 14);
    const expected = 123.4 + (480 - 123.4) * temperatureFactor(20, 14, law);
    const rate = rateFunction(20, law);
    expect(Math.abs(clockTime((t) => rate(step(t)), 480, 0) / expected - 1)).toBeLessThan(1e-9);
    const log = [
      { timeS: 0, temperatureC: 20 },
      { timeS: 100, temperatureC: 18 },
      { timeS: 900, temperatureC: 18 },
    ];
    const until = developUntil({
      equivalentS: equivalentTime(log, 20, law),
      referenceC: 20,
      law,
      temperatureAt: log,
    });
    expect(Math.abs(until / 900 - 1)).toBeLessThan(1e-9);
  });
  it("ends with a course that is noise at every scale, near the mean", () => {
    const noise = (t: number): number => 20 + Math.sin(t * 1e9);
    const rate = rateFunction(20, law);
    const until = clockTime((t) => rate(noise(t)), 480, 0);
    expect(Math.abs(until / 480 - 1)).toBeLessThan(0.02);
  });
  it("sees a pulse as short as a sixteenth of the time", () => {
    // Ten degrees warmer for 30 of the seconds, at twice the rate: 30 s of work saved.
    const pulse = { kind: "coefficient", ratio: 2, intervalC: 10 } as const;
    for (const atS of [35, 100, 205, 290, 330, 415]) {
      const temperatureAt = (t: number): number => (t >= atS && t < atS + 30 ? 30 : 20);
      const rate = rateFunction(20, pulse);
      expect(clockTime((t) => rate(temperatureAt(t)), 480, 0)).toBeCloseTo(450, 6);
    }
  });
  it("reads a log forward, backward and outside its ends", () => {
    const at = logTemperature([
      { timeS: 10, temperatureC: 20 },
      { timeS: 20, temperatureC: 22 },
      { timeS: 40, temperatureC: 18 },
      { timeS: 50, temperatureC: 18.5 },
    ]);
    const seen: readonly (readonly [number, number])[] = [
      [5, 20],
      [10, 20],
      [15, 21],
      [20, 22],
      [30, 20],
      [40, 18],
      [45, 18.25],
      [50, 18.5],
      [60, 18.5],
    ];
    for (const [timeS, temperatureC] of [
      ...seen,
      ...[...seen].reverse(),
      seen[8]!,
      seen[2]!,
      seen[6]!,
      seen[0]!,
    ])
      expect(at(timeS)).toBeCloseTo(temperatureC, 12);
  });
  it("hands back the start where what is left is less than the clock can show", () => {
    expect(developUntil({ equivalentS: 1e-12, referenceC: 20, law, temperatureAt: 20, fromS: 1e6 })).toBe(
      1e6,
    );
  });
  it("refuses what cannot be", () => {
    const good = { equivalentS: 480, referenceC: 20, law, temperatureAt: 20 };
    const refuses = (change: object | null, error: Error): void => {
      expect(() => developUntil(anyOf(change === null ? null : { ...good, ...change }))).toThrow(error);
    };
    refuses(null, new TypeError("developUntil: options must be an object, got null"));
    refuses(
      { equivalentS: 0 },
      new RangeError("developUntil: options.equivalentS must be above 0 and at most 10000000 s, got 0"),
    );
    refuses(
      { fromS: -1 },
      new RangeError("developUntil: options.fromS must be from 0 to 10000000 s, got -1"),
    );
    refuses(
      { temperatureAt: () => 20 },
      new TypeError(
        "developUntil: options.temperatureAt must be a number or a log or a drift, got a function",
      ),
    );
    refuses(
      { temperatureAt: NaN },
      new RangeError("developUntil: options.temperatureAt must be from 0 to 100 °C, got NaN"),
    );
    refuses(
      { temperatureAt: [{ timeS: 0, temperatureC: 20 }] },
      new RangeError("developUntil: options.temperatureAt must hold at least 2 readings, got 1"),
    );
    refuses(
      { temperatureAt: { ...drift, ambientC: 101 } },
      new RangeError("developUntil: options.temperatureAt.ambientC must be from -50 to 100 °C, got 101"),
    );
    const freezing = { startC: 1, ambientC: -20, timeConstantS: 600 };
    expect(() => developUntil({ ...good, temperatureAt: freezing })).toThrow(
      /^developUntil: options.temperatureAt must be from 0 to 100 °C, got -/,
    );
    refuses(
      { referenceC: 101 },
      new RangeError("developUntil: options.referenceC must be from 0 to 100 °C, got 101"),
    );
    refuses(
      { equivalentS: 9e6, temperatureAt: 0 },
      new RangeError(
        "developUntil: options.equivalentS must be reached by clock time 10000000 s, got 9000000",
      ),
    );
  });
});

describe("a forecast that swings", () => {
  /** The integral of the rate to `endS` by 100,000 midpoints, as an independent judge. */
  function done(
    law: TemperatureLaw,
    referenceC: number,
    temperatureAt: (timeS: number) => number,
    endS: number,
  ): number {
    const rate = rateFunction(referenceC, law);
    let sum = 0;
    for (let i = 0; i < 1e5; i += 1) sum += rate(temperatureAt(((i + 0.5) * endS) / 1e5));
    return (sum * endS) / 1e5;
  }
  const swing = (meanC: number, byC: number, periodS: number, phase: number) => (timeS: number) =>
    meanC + byC * Math.sin((2 * Math.PI * timeS) / periodS + phase);
  it.each([
    [3600, 4, swing(18, 15, 600, 1.5)],
    [900, 2.25, swing(18, 8, 120, 2)],
    [900, 4, swing(18, 5, 300, 0)],
    [5000, 4.5, swing(18, 18, 1958, 5.481)],
  ])("is followed to the end: %d s at a coefficient of %d", (equivalentS, ratio, temperatureAt) => {
    const law = { kind: "coefficient", ratio, intervalC: 10 } as const;
    const rate = rateFunction(20, law);
    const endS = clockTime((timeS) => rate(temperatureAt(timeS)), equivalentS, 0);
    expect(done(law, 20, temperatureAt, endS) / equivalentS).toBeCloseTo(1, 6);
    // A reading every second, with straight lines between them.
    const log = Array.from({ length: Math.ceil(endS) + 2 }, (_, i) => ({
      timeS: i,
      temperatureC: temperatureAt(i),
    }));
    const { timeS, lowS, highS } = compensate(
      { timeS: equivalentS, temperatureC: 20 },
      { temperatureC: log },
      { temperature: law },
    );
    expect(timeS / endS).toBeCloseTo(1, 3);
    expect(lowS).toBeLessThan(timeS);
    expect(highS).toBeGreaterThan(timeS);
  });
  it("from a frozen bath that warms up is followed too", () => {
    const law = { kind: "arrhenius", activationEnergyKJPerMol: 200 } as const;
    const temperatureAt = { startC: 0, ambientC: 40, timeConstantS: 600 };
    const endS = developUntil({ equivalentS: 3600, referenceC: 40, law, temperatureAt });
    expect(done(law, 40, newtonDrift(temperatureAt), endS) / 3600).toBeCloseTo(1, 6);
  });
  it("that never gets there is refused", () => {
    const law = { kind: "arrhenius", activationEnergyKJPerMol: 200 } as const;
    expect(() => developUntil({ equivalentS: 1e6, referenceC: 40, law, temperatureAt: 0 })).toThrow(
      new RangeError(
        "developUntil: options.equivalentS must be reached by clock time 10000000 s, got 1000000",
      ),
    );
  });
});

describe("a forecast that cannot be followed", () => {
  it("that jumps about at every scale is given up", () => {
    const law = { kind: "arrhenius", activationEnergyKJPerMol: 200 } as const;
    const rate = rateFunction(0, law);
    expect(thrown(() => clockTime((timeS) => rate(50 + 50 * Math.sin(timeS * 1e9)), 1e4, 0))).toMatch(
      /^RangeError: developUntil: options\.temperatureAt must be smooth enough: no end was found in \d+ steps$/,
    );
  });
  it("that tells each asker something else is given up after a million looks", () => {
    const law = { kind: "arrhenius", activationEnergyKJPerMol: 200 } as const;
    let looks = 0;
    // Hot where a step's length is asked for, cold where the step is taken.
    const rate = rateFunction(0, law);
    expect(thrown(() => clockTime(() => rate((looks += 1) % 10 === 1 ? 100 : 0), 1e4, 0))).toMatch(
      /no end was found in 1000001 steps$/,
    );
  });
});

describe("the longest clock time", () => {
  const law: TemperatureLaw = { kind: "coefficient", ratio: 2, intervalC: 10 };
  // At the reference temperature the rate is 1, and clock and work are the same.
  it("may be reached", () => {
    expect(developUntil({ equivalentS: 1e7, referenceC: 20, law, temperatureAt: 20 })).toBe(1e7);
  });
  it("may stand in a log", () => {
    expect(
      equivalentTime(
        [
          { timeS: 0, temperatureC: 20 },
          { timeS: 1e7, temperatureC: 20 },
        ],
        20,
        law,
      ),
    ).toBe(1e7);
  });
});

describe("a forecast along a long log", () => {
  it("has looks to spare for every reading", () => {
    // Rate 1 throughout, so 100 s of work take 100 s, whatever readings follow: those of a day, one in 2 s.
    const corners = Array.from({ length: 43_200 }, (_, i) => 2 * i);
    expect(clockTime(() => 1, 100, 0, corners)).toBeCloseTo(100, 9);
  });
});

describe("a clock that would never end", () => {
  it("is refused in the name of the function that was called", () => {
    const law = { kind: "arrhenius", activationEnergyKJPerMol: 200 } as const;
    const known = { timeS: 1e6, temperatureC: 40 };
    const cold = [
      { timeS: 0, temperatureC: 0 },
      { timeS: 60, temperatureC: 0 },
    ];
    const drifting = thrown(() => compensate(known, { temperatureC: cold }, { temperature: law }));
    expect(drifting).toMatch(
      /^RangeError: compensate: conditions\.temperatureC must be reached by clock time/,
    );
    const steered = thrown(() =>
      steer({
        baseline: known,
        conditions: {},
        knowledge: { temperature: law },
        log: [{ timeS: 0, temperatureC: 1 }],
      }),
    );
    expect(steered).toMatch(/^RangeError: steer: conditions\.temperatureC must be reached by clock time/);
    const left = thrown(() =>
      remainingTime({ targetS: 1e6, referenceC: 40, law, log: cold, temperatureAt: 0 }),
    );
    expect(left).toMatch(/^RangeError: remainingTime: options\.targetS must be reached by clock time/);
  });
});
