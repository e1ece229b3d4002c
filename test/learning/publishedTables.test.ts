/* Published tables as if their rows were runs: does the interval hold the rows that were left out? */
import { describe, expect, it } from "vitest";
import {
  type LearnedKnowledge,
  startKnowledge,
  type DevelopmentRun,
  learn,
  predict,
} from "../../src/index.js";
import { timeTables } from "../reference/temperature.js";
import { dilutionTables } from "../accuracy/tables.js";

describe("published tables as if their rows were runs", () => {
  // The starting time knows nothing of the table: 7 min, the middle of all these tables, which lie within a
  // factor of 1.8 either way at 90 %.
  const startOf = (dilution?: string): LearnedKnowledge =>
    startKnowledge(
      { timeS: 420, temperatureC: 20, ...(dilution !== undefined && { dilution }) },
      { baseLogSd: 0.35 },
    );
  type Row = Omit<DevelopmentRun, "outcome">;
  const byTemperature = timeTables.map(({ unit, rows }): readonly Row[] =>
    rows.map(({ temperature, minutes }) => ({
      timeS: minutes * 60,
      temperatureC: unit === "F" ? (temperature - 32) / 1.8 : temperature,
    })),
  );
  const dilutionRows = (tables: typeof dilutionTables): readonly (readonly Row[])[] =>
    tables.map(({ rows }): readonly Row[] =>
      rows.map(({ at, timeS }) => ({ timeS, temperatureC: 20, dilution: at })),
    );
  const longTables = dilutionTables.filter(({ rows }) => rows.length > 2);
  const byDilution = dilutionRows(longTables);
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, value) => sum + value, 0) / values.length;

  const choices = (tables: readonly (readonly Row[])[], logSd?: number) => {
    const outcome = logSd === undefined ? ({ kind: "good" } as const) : ({ kind: "good", logSd } as const);
    let all = 0;
    const shares: number[] = [];
    const widths: number[] = [];
    for (const rows of tables) {
      const hits: boolean[] = [];
      const start = startOf(rows[0]!.dilution as string | undefined);
      rows.forEach((one, i) => {
        for (const two of rows.slice(i + 1)) {
          const known = learn(start, [
            { ...one, outcome },
            { ...two, outcome },
          ]);
          for (const third of rows.filter((row) => row !== one && row !== two)) {
            const { timeS, ...conditions } = third;
            const [before, after] = [predict(start, conditions), predict(known, conditions)];
            all += 1;
            hits.push(timeS >= after.lowS && timeS <= after.highS);
            widths.push(Math.log(after.highS / after.lowS) / Math.log(before.highS / before.lowS));
          }
        }
      });
      // Each table counts alike, however many rows it has.
      shares.push(mean(hits.map(Number)));
    }
    widths.sort((a, b) => a - b);
    return { all, share: mean(shares), width: widths[Math.floor(all / 2)]! };
  };

  it("two rows judged by eye put the third inside the interval: 97 % of all choices, 0.34 times as wide as before", () => {
    const { all, share, width } = choices([...byTemperature, ...byDilution]);
    expect(all).toBe(456);
    expect(share).toBeCloseTo(0.97, 2);
    // A third was the aim. It is missed by 0.01: an eye is off alike in both rows, and temperature departs from its law.
    expect(width).toBeCloseTo(0.34, 2);
    expect(share).toBeGreaterThan(0.85);
    expect(width).toBeLessThan(0.6);
  });

  it("taken to 4 %, as a known time repeats, 97 % of the choices of temperature, 0.19 times as wide", () => {
    const { all, share, width } = choices(byTemperature, 0.04);
    expect(all).toBe(414);
    expect(share).toBeCloseTo(0.97, 2);
    expect(width).toBeCloseTo(0.19, 2);
  });

  it.each([0.03, 0.04])(
    "and 85 % of dilution, at least the 80 % that are promised, rows to %f: the departure from a power is in the interval",
    (logSd) => {
      const { all, share } = choices(byDilution, logSd);
      expect(all).toBe(42);
      expect(share).toBeCloseTo(0.85, 2);
      expect(share).toBeGreaterThanOrEqual(0.8);
    },
  );

  it("of the five dilution tables that were read 77 %: 3 % short, by one table of pyro; without it 88 %", () => {
    const read = longTables.filter(({ provenance }) => provenance === "read");
    expect(choices(dilutionRows(read), 0.04).share).toBeCloseTo(0.77, 2);
    // Pyro has a law of its own in the handbook, beyond the generic one.
    const others = read.filter(({ family }) => family !== "pyro");
    expect(choices(dilutionRows(others), 0.04).share).toBeCloseTo(0.875, 3);
  });
});
