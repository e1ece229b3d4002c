import { describe, expect, it } from "vitest";
import type { Row } from "../../src/core/row.js";
import type { PlacedTerm, RunMarks } from "../../src/learning/runTerms/runTerm.js";
import { runTerms } from "../../src/learning/runTerms/runTerms.js";

const term = (name: string, runs: readonly RunMarks[]): PlacedTerm =>
  runTerms.find((each) => each.name === name)!.over(runs, {});
const days = (count: number): RunMarks[] =>
  Array.from({ length: count }, (_, i) => ({
    date: new Date(Date.UTC(2020, 0, 1 + i)).toISOString().slice(0, 10),
  }));
const slopesOf = ({ slopes }: Row): Record<string, number> =>
  Object.fromEntries(slopes.map(({ parameter, slope }) => [parameter, slope]));
const variance = (placed: PlacedTerm, row: Row, without = ""): number =>
  row.slopes.reduce(
    (sum, { parameter, slope }) =>
      parameter === without
        ? sum
        : sum + (slope * placed.unknowns.find((unknown) => unknown.parameter === parameter)!.sd) ** 2,
    row.beside,
  );

describe("drift over the dates", () => {
  it("is none without dates, on one day, and for printed rows alone", () => {
    const printed = days(3).map((marks) => ({ ...marks, printed: true }));
    for (const runs of [[{}], days(1), [...days(1), ...days(1)], printed])
      expect(term("drift", runs).unknowns).toEqual([]);
  });
  it("is 0 at the newest date and for a question", () => {
    const drift = term("drift", days(5));
    expect(variance(drift, drift.run(days(5)[4]!))).toBe(0);
    expect(drift.question({ date: "2020-01-01" })).toEqual({ slopes: [], beside: 0 });
  });
  it("wanders by 1.2 % a date, at the knots of the walk", () => {
    const drift = term("drift", days(9));
    for (const [i, age] of [
      [7, 1],
      [6, 2],
      [4, 4],
      [0, 8],
    ] as const)
      expect(variance(drift, drift.run(days(9)[i]!), "trend")).toBeCloseTo(age * 0.012 ** 2, 12);
  });
  it("rises toward the present with the trend", () => {
    const drift = term("drift", days(5));
    expect(slopesOf(drift.run(days(5)[0]!))["trend"]).toBe(-4);
    expect(drift.steady).toEqual({ slopes: [{ parameter: "trend", slope: -4 }], beside: 0 });
    expect(drift.unknowns.at(-1)).toEqual({ parameter: "trend", sd: 0.005, tail: "student" });
  });
  it("has ten gaps and a trend for a thousand dates", () => {
    expect(term("drift", days(1000)).unknowns.length).toBeLessThanOrEqual(12);
  });
  it("takes an undated run in the middle, and a day's hours as one date", () => {
    const drift = term("drift", [...days(5), { date: "2020-01-05T18:30Z" }, {}]);
    expect(slopesOf(drift.run({}))["trend"]).toBe(-2);
    expect(drift.run({ date: "2020-01-05T18:30Z" })).toEqual(drift.run({ date: "2020-01-05" }));
    expect(drift.run({ printed: true, date: "2020-01-01" })).toEqual({ slopes: [], beside: 0 });
  });
});

describe("thermometers and people", () => {
  it.each([
    ["thermometer", 0.06],
    ["by", 0.15],
  ])("each %s has an offset of its own, 0 ± %f", (field, sd) => {
    const placed = term(field, [{ [field]: "b" }, { [field]: "a" }, { [field]: "b" }, {}]);
    expect(placed.unknowns).toEqual(["a", "b"].map((name) => ({ parameter: `${field} ${name}`, sd })));
    expect(slopesOf(placed.run({ [field]: "b" }))).toEqual({ [`${field} b`]: 1 });
    expect(placed.question({ [field]: "a" })).toEqual(placed.run({ [field]: "a" }));
    expect(placed.run({})).toEqual({ slopes: [], beside: 0 });
    expect(placed.question({ [field]: "new" })).toEqual({ slopes: [], beside: sd ** 2 });
  });
});

describe("printed rows", () => {
  it("share one number, the maker's base against mine", () => {
    const placed = term("printed", [{ printed: true }, { printed: true }, {}]);
    expect(placed.unknowns).toEqual([{ parameter: "printed", sd: 0.2 }]);
    expect(slopesOf(placed.run({ printed: true }))).toEqual({ printed: 1 });
    expect(placed.run({ printed: false })).toEqual({ slopes: [], beside: 0 });
    expect(placed.question({ printed: true })).toEqual({ slopes: [], beside: 0 });
    expect(term("printed", [{}]).unknowns).toEqual([]);
  });
});

it("no two terms share a number", () => {
  const runs = [...days(9), { thermometer: "trend", by: "printed" }, { printed: true }];
  const names = runTerms.flatMap((each) => each.over(runs, {}).unknowns.map(({ parameter }) => parameter));
  expect(new Set(names).size).toBe(names.length);
});
