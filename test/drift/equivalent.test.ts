/* Equivalent time against an independent integrator, against other trades' worked examples, and by law. */
import { describe, expect, it } from "vitest";
import {
  compensate,
  equivalentTime,
  rateFunction,
  temperatureFactor,
  type TemperatureLaw,
  type TemperatureLog,
} from "../../src/index.js";
import { odexIntegral } from "./odex.js";
import { anyOf } from "../helpers.js";
const laws: readonly TemperatureLaw[] = [
  { kind: "arrhenius", activationEnergyKJPerMol: 60 },
  { kind: "arrhenius", activationEnergyKJPerMol: 200 },
  { kind: "arrhenius", activationEnergyKJPerMol: 0 },
  // so little that ln(rate) hardly changes over a stretch, while its slope does; the second changes by 0.016
  // over the 13.5 °C of a stretch
  { kind: "arrhenius", activationEnergyKJPerMol: 0.0167 },
  { kind: "arrhenius", activationEnergyKJPerMol: 0.8 },
  { kind: "coefficient", ratio: 1.4, intervalC: 7 },
  { kind: "coefficient", ratio: Math.E, intervalC: 1 },
  { kind: "coefficient", ratio: 1, intervalC: 10 },
  {
    kind: "table",
    rows: [
      { temperatureC: 24, timeS: 330 },
      { temperatureC: 16, timeS: 720 },
      { temperatureC: 20, timeS: 480 },
    ],
  },
];
const logs: readonly TemperatureLog[] = [
  [
    { timeS: 0, temperatureC: 24 },
    { timeS: 600, temperatureC: 15 },
  ],
  [
    { timeS: 0, temperatureC: 100 },
    { timeS: 600, temperatureC: 0 },
  ],
  [
    { timeS: 30, temperatureC: 20 },
    { timeS: 90, temperatureC: 20 },
    { timeS: 600, temperatureC: 20.001 },
  ],
  [
    { timeS: 0, temperatureC: 14 },
    { timeS: 200, temperatureC: 22 },
    { timeS: 210, temperatureC: 20.5 },
    { timeS: 900, temperatureC: 18 },
  ],
  // a deep fall and back, then stretches over which ln(rate) changes by nearly 1, 0.65 and a little
  [
    { timeS: 0, temperatureC: 90 },
    { timeS: 300, temperatureC: 0 },
    { timeS: 900, temperatureC: 90 },
  ],
  [
    { timeS: 0, temperatureC: 21 },
    { timeS: 300, temperatureC: 20.01 },
    { timeS: 900, temperatureC: 21 },
  ],
  [
    { timeS: 0, temperatureC: 20 },
    { timeS: 600, temperatureC: 20.65 },
    { timeS: 1200, temperatureC: 20 },
  ],
  [
    { timeS: 0, temperatureC: 20 },
    { timeS: 600, temperatureC: 20.66 },
    { timeS: 1200, temperatureC: 20.63 },
  ],
  // as far apart as two slopes are still trusted, and just beyond, and far beyond
  [
    { timeS: 0, temperatureC: 0 },
    { timeS: 300, temperatureC: 1.49 },
    { timeS: 600, temperatureC: 3 },
    { timeS: 900, temperatureC: 16.5 },
  ],
];

describe("equivalentTime against an independent integrator", () => {
  it.each(laws.flatMap((law) => logs.map((log) => ({ law, log }))))(
    "agrees to 1e-9 for $law.kind",
    ({ law, log }) => {
      const rate = rateFunction(20, law);
      const expected = log.slice(1).reduce((sum, to, i) => {
        const from = log[i]!;
        const at = (t: number): number =>
          from.temperatureC +
          ((to.temperatureC - from.temperatureC) * (t - from.timeS)) / (to.timeS - from.timeS);
        // ODEX steps over corners in the curvature of a table, so its stretch is cut at the rows as well.
        const rows = law.kind === "table" ? law.rows.map((row) => row.temperatureC) : [];
        const cuts = rows
          .map(
            (c) =>
              from.timeS +
              ((c - from.temperatureC) * (to.timeS - from.timeS)) / (to.temperatureC - from.temperatureC),
          )
          .filter((t) => t > from.timeS && t < to.timeS);
        const ends = [from.timeS, ...cuts.sort((a, b) => a - b), to.timeS];
        const clamp = (c: number): number => Math.min(100, Math.max(0, c));
        return ends
          .slice(1)
          .reduce((part, end, j) => part + odexIntegral((t) => rate(clamp(at(t))), ends[j]!, end), sum);
      }, 0);
      const given = equivalentTime(log, 20, law);
      expect(Math.abs(given / expected - 1)).toBeLessThan(1e-9);
    },
  );
  it("keeps 1e-9 with a hundred degrees in one stretch and the steepest law", () => {
    const log = logs[1]!;
    const whole = equivalentTime(log, 20, laws[1]);
    const fine = Array.from({ length: 4001 }, (_, i) => ({
      timeS: (600 * i) / 4000,
      temperatureC: 100 - (100 * i) / 4000,
    }));
    expect(Math.abs(whole / equivalentTime(fine, 20, laws[1]) - 1)).toBeLessThan(1e-9);
  });
});

describe("equivalentTime under a table of many rows", () => {
  it("keeps 1e-9 over all of them in one stretch", () => {
    // A tenth of a degree from row to row, each step another: the stretch is the sum of its parts from row to
    // row.
    const rows = Array.from({ length: 1001 }, (_, i) => ({
      temperatureC: i / 10,
      timeS: 5000 * Math.exp(-0.006 * i + 0.0001 * Math.sin(i)),
    }));
    const table: TemperatureLaw = { kind: "table", rows: [...rows].reverse() };
    const fine = rows.map(({ temperatureC }) => ({ timeS: 6 * temperatureC, temperatureC }));
    const whole = [fine[0]!, fine[1000]!];
    expect(Math.abs(equivalentTime(whole, 20, table) / equivalentTime(fine, 20, table) - 1)).toBeLessThan(
      1e-9,
    );
    expect(
      equivalentTime(
        [...whole].reverse().map(({ temperatureC }) => ({ timeS: 600 - 6 * temperatureC, temperatureC })),
        20,
        table,
      ),
    ).toBeCloseTo(equivalentTime(whole, 20, table), 8);
  });
});

describe("long logs and long tables", () => {
  const rowsOf = (count: number): TemperatureLaw => ({
    kind: "table",
    rows: Array.from({ length: count }, (_, i) => ({
      temperatureC: 5 + (30 * i) / (count - 1),
      timeS: 2000 * Math.exp((-0.08 * 30 * i) / (count - 1)),
    })),
  });
  const swing = (count: number): TemperatureLog =>
    Array.from({ length: count }, (_, i) => ({ timeS: i, temperatureC: 18 + 5 * Math.sin(i) }));
  /** Best of three, ms: a busy machine slows one now and then. */
  const best = (work: () => unknown): number =>
    Math.min(
      ...Array.from({ length: 3 }, () => {
        const start = performance.now();
        work();
        return performance.now() - start;
      }),
    );
  it.each([
    ["equivalentTime", (log: TemperatureLog, law: TemperatureLaw) => equivalentTime(log, 20, law)],
    [
      "compensate",
      (log: TemperatureLog, law: TemperatureLaw) =>
        compensate({ timeS: 600, temperatureC: 20 }, { temperatureC: log }, { temperature: law }).timeS,
    ],
  ])("%s prepares a table once, whatever the log", (_, work) => {
    // Three readings under 10,000 rows took 38 s when the table was prepared at each look.
    expect(best(() => work(swing(3), rowsOf(10_000)))).toBeLessThan(2000);
    expect(best(() => work(swing(10_000), rowsOf(10_000)))).toBeLessThan(4000);
  });
  it("agrees with the law that a fine table was made from", () => {
    const law = { kind: "coefficient", ratio: Math.exp(0.8), intervalC: 10 } as const;
    // The curve runs in 1/T, the law in °C: over steps of 0.03 °C they are the same to 1e-7.
    expect(equivalentTime(swing(200), 20, rowsOf(1001)) / equivalentTime(swing(200), 20, law)).toBeCloseTo(
      1,
      6,
    );
  });
});

describe("equivalentTime by law", () => {
  it.each(laws)("is the constant-temperature time for a steady log, $kind", (law) => {
    const steady = [
      { timeS: 10, temperatureC: 15 },
      { timeS: 70, temperatureC: 15 },
      { timeS: 610, temperatureC: 15 },
    ];
    expect(equivalentTime(steady, 20, law) / (600 / temperatureFactor(20, 15, law))).toBeCloseTo(1, 13);
  });
  it("counts only from the first reading to the last", () => {
    const log = [
      { timeS: 1000, temperatureC: 20 },
      { timeS: 1480, temperatureC: 20 },
    ];
    expect(equivalentTime(log, 20, laws[0])).toBe(480);
  });
});

describe("equivalentTime refuses", () => {
  const good = logs[0]!;
  const refuses = (log: unknown, error: Error, law: unknown = laws[0], referenceC: unknown = 20): void => {
    expect(() => equivalentTime(anyOf(log), anyOf(referenceC), anyOf(law))).toThrow(error);
  };
  it("what is no log", () => {
    refuses("20", new TypeError('equivalentTime: log must be an array, got "20"'));
    refuses([], new RangeError("equivalentTime: log must hold at least 2 readings, got 0"));
    refuses([good[0]], new RangeError("equivalentTime: log must hold at least 2 readings, got 1"));
    refuses([good[0], null], new TypeError("equivalentTime: log[1] must be an object, got null"));
    refuses([5, good[1]], new TypeError("equivalentTime: log[0] must be an object, got 5"));
    refuses([undefined, good[1]], new TypeError("equivalentTime: log[0] is missing: an object"));
  });
  it("readings out of order or at one time", () => {
    refuses(
      [good[1], good[0]],
      new RangeError("equivalentTime: log[1].timeS must be above the one before (600), got 0"),
    );
    refuses(
      [good[0], good[0]],
      new RangeError("equivalentTime: log[1].timeS must be above the one before (0), got 0"),
    );
  });
  it("times and temperatures that cannot be", () => {
    refuses(
      [{ timeS: -1, temperatureC: 20 }, good[1]],
      new RangeError("equivalentTime: log[0].timeS must be from 0 to 10000000 s, got -1"),
    );
    refuses(
      [good[0], { timeS: 1e8, temperatureC: 20 }],
      new RangeError("equivalentTime: log[1].timeS must be from 0 to 10000000 s, got 100000000"),
    );
    refuses(
      [good[0], { timeS: NaN, temperatureC: 20 }],
      new RangeError("equivalentTime: log[1].timeS must be from 0 to 10000000 s, got NaN"),
    );
    refuses(
      [good[0], { timeS: "60", temperatureC: 20 }],
      new TypeError('equivalentTime: log[1].timeS must be a number, got "60"'),
    );
    refuses(
      [good[0], { timeS: 60, temperatureC: "20" }],
      new TypeError('equivalentTime: log[1].temperatureC must be a number, got "20"'),
    );
    refuses(
      [good[0], { timeS: 60, temperatureC: -0.1 }],
      new RangeError("equivalentTime: log[1].temperatureC must be from 0 to 100 °C, got -0.1"),
    );
    refuses(
      [good[0], { timeS: 60, temperatureC: 100.1 }],
      new RangeError("equivalentTime: log[1].temperatureC must be from 0 to 100 °C, got 100.1"),
    );
    refuses(
      [good[0], { timeS: 60, temperatureC: NaN }],
      new RangeError("equivalentTime: log[1].temperatureC must be from 0 to 100 °C, got NaN"),
    );
  });
  it("what is no law or reference", () => {
    refuses(good, new TypeError("equivalentTime: law must be an object, got null"), null);
    refuses(
      good,
      new RangeError("equivalentTime: referenceC must be from 0 to 100 °C, got 101"),
      laws[0],
      101,
    );
  });
});
