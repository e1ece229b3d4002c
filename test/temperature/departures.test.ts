/* How a temperature law departs from its energy, or from its table. All figures are invented. */
import { describe, expect, it } from "vitest";
import {
  compensate,
  effect,
  equivalentTime,
  fitTemperatureLaw,
  rateFunction,
  temperatureFactor,
  type TemperatureLaw,
} from "../../src/index.js";
import { DEPARTURE_LOG_SD } from "../../src/temperature/law.js";

const departures = [
  { at: 14, log: 0, sd: 0 },
  { at: 18, log: 0.1, sd: 0.02 },
  { at: 20, log: -0.05, sd: 0.01 },
];
const energy = { kind: "arrhenius", activationEnergyKJPerMol: 60, sdKJPerMol: 0, runs: 3 } as const;
const table = {
  kind: "table",
  rows: [
    { temperatureC: 16, timeS: 700 },
    { temperatureC: 18, timeS: 600 },
    { temperatureC: 20, timeS: 510 },
  ],
} as const;
const taught: readonly TemperatureLaw[] = [
  { ...energy, departures },
  {
    ...table,
    departures: [
      { at: 14, log: 0.05, sd: 0.01 },
      { at: 18, log: 0.04, sd: 0.01 },
      { at: 19, log: 0.02, sd: 0.01 },
    ],
  },
];

describe("the departures of a temperature law", () => {
  it("add to the energy: all of a gap, or the share of it, as warmth grows", () => {
    const [law] = taught as [TemperatureLaw];
    const more = (from: number, to: number): number =>
      Math.log(temperatureFactor(from, to, law) / temperatureFactor(from, to, energy));
    expect(more(14, 18)).toBeCloseTo(0.1, 12);
    expect(more(20, 14)).toBeCloseTo(-0.05, 12);
    expect(more(18, 16)).toBeCloseTo(-0.05, 12);
    // Known gaps, and the walk of 0.03 over the five degrees beyond them.
    expect(effect("temperature", 14, 18, law).logSd).toBeCloseTo(0.02, 12);
    expect(effect("temperature", 20, 25, law).logSd).toBeCloseTo(DEPARTURE_LOG_SD * Math.sqrt(5), 12);
    expect(effect("temperature", 20, 20, law)).toEqual({ factor: 1, logSd: 0 });
  });
  it("add to the table: at a row, between two rows and beyond them", () => {
    const [, law] = taught as [TemperatureLaw, TemperatureLaw];
    const more = (from: number, to: number): number =>
      Math.log(temperatureFactor(from, to, law) / temperatureFactor(from, to, table));
    expect(more(16, 18)).toBeCloseTo(0.04, 12);
    expect(more(20, 18)).toBeCloseTo(0.04, 12);
    expect(more(20, 19)).toBeCloseTo(0.02 + 0.04 / 2, 12);
    expect(more(16, 14)).toBeCloseTo(0.05, 12);
    expect(more(16, 10)).toBeCloseTo(0.05, 12);
    const known = { ...law, sdKJPerMol: 0, runs: 3 };
    expect(effect("temperature", 16, 14, known).logSd).toBeCloseTo(0.01, 12);
    expect(effect("temperature", 16, 12, law).logSd).toBeGreaterThan(0.03);
  });
  it("without any learned, leave a table its times, and its spread from row to row and beyond", () => {
    const law: TemperatureLaw = { ...table, departures: [] };
    expect(temperatureFactor(20, 16, law)).toBeCloseTo(700 / 510, 12);
    for (const [from, to] of [
      [20, 16],
      [18, 16],
      [16, 12],
      [20, 24],
    ] as const) {
      const spread = (one: TemperatureLaw): number => effect("temperature", from, to, one).logSd;
      expect(spread(law)).toBeCloseTo(spread(table), 12);
    }
  });
  it.each(taught)("are one function for factors, rates and drifting baths: %#", (law) => {
    const rate = rateFunction(20, law);
    for (const c of [10, 14, 15, 17.3, 18, 19.5, 23])
      expect(rate(c) * temperatureFactor(20, c, law)).toBeCloseTo(1, 12);
    const log = [
      { timeS: 0, temperatureC: 22 },
      { timeS: 600, temperatureC: 12 },
    ];
    const steps = 20_000;
    let sum = 0;
    for (let i = 0; i < steps; i += 1) sum += rate(22 - (10 * (i + 0.5)) / steps);
    expect(equivalentTime(log, 20, law)).toBeCloseTo((600 * sum) / steps, 4);
    const drift = compensate({ timeS: 510, temperatureC: 20 }, { temperatureC: log }, { temperature: law });
    expect(equivalentTime([...log, { timeS: 6000, temperatureC: 12 }], 20, law)).toBeGreaterThan(510);
    expect(drift.timeS).toBeGreaterThan(510);
    expect(drift.highS).toBeGreaterThan(drift.timeS);
  });
  it.each(["arrhenius", "table"] as const)("are refused out of order or out of range: %s", (kind) => {
    const law = (given: readonly object[]): TemperatureLaw =>
      ({ ...(kind === "table" ? table : energy), departures: given }) as never;
    const [first, second] = departures as unknown as [object, object];
    expect(() => temperatureFactor(20, 18, law([second, first]))).toThrow(
      expect.objectContaining({
        path: "/law/departures/1/at",
        expected: expect.objectContaining({ must: "rising" }),
      }),
    );
    for (const wrong of [{ at: 101 }, { at: -1 }, { log: NaN }, { sd: -1 }])
      expect(() => temperatureFactor(20, 18, law([{ ...first, ...wrong }]))).toThrow(RangeError);
  });
});

describe("a fitted energy", () => {
  const rows = [18, 19, 20, 21, 22, 23, 24].map((temperatureC) => ({
    temperatureC,
    timeS: 510 * temperatureFactor(20, temperatureC, energy),
  }));
  const { law } = fitTemperatureLaw(rows);
  it("has no departure at its rows, no two nearer than 2 °C, and the walk beyond them", () => {
    expect(law.departures.map(({ at }) => Math.round(at))).toEqual([18, 20, 22, 24]);
    expect(law.departures.every(({ log, sd }) => log === 0 && sd === 0)).toBe(true);
    const { departures: _, ...alone } = law;
    const spread = (one: TemperatureLaw, to: number): number => effect("temperature", 20, to, one).logSd;
    expect(spread(law, 24)).toBeCloseTo(spread(alone, 24), 12);
    expect(spread(law, 10)).toBeCloseTo(Math.hypot(spread(alone, 10), DEPARTURE_LOG_SD * Math.sqrt(8)), 9);
    // The same rows as a table leave more open still: its slope there rests on two of them.
    expect(spread(law, 10)).toBeLessThan(spread({ kind: "table", rows }, 10));
  });
  it("may be the prior of another fit, as wide as it is about the rows", () => {
    const pair = [
      { temperatureC: 10, timeS: 1100 },
      { temperatureC: 12, timeS: 950 },
    ];
    const again = fitTemperatureLaw(pair, { prior: law });
    expect(again.law.sdKJPerMol).toBeGreaterThan(law.sdKJPerMol);
  });
});
