/* A page of a notebook as people write it: words for figures, remarks for outcomes, days without a year. All of it is invented. */
import { describe, expect, it } from "vitest";
import { readRunNotes, type RunOutcome, type DevelopmentRun } from "../../src/index.js";
import type { Readers } from "../../src/notes/headings.js";
import { beside, main } from "../../src/notes/noteCells.js";
import { readRow } from "../../src/notes/readRow.js";

/** A weekend workshop in a mountain hut: 25 rows, none of them tidy. */
const page = [
  { Date: "3.7.", Temp: "14 °C", Time: "8 1/2 min", Agitation: "1/min", Age: "fresh", Remarks: "too thin" },
  { Date: "3.7.", Temp: "14 °C", Time: "12 min", Agitation: "1/min", Age: "0", Remarks: "perfect" },
  {
    Date: "3.7.",
    Temp: "14,5 °C",
    Time: "11½ min",
    Agitation: "constant",
    Age: "1 h",
    Remarks: "a bit dense",
  },
  { Date: "4.7.", Temp: "15 °C", Time: "11 min", Agitation: "2/min", Age: "fresh", Remarks: "way too dense" },
  {
    Date: "4.7.",
    Temp: "15 °C",
    Time: "10 1/4 min",
    Agitation: "1/min",
    Age: "1 1/2 h",
    Remarks: "thick, fog at the rim",
  },
  { Date: "4.7.", Temp: "59F", Time: "10 min", Agitation: "constantly", Age: "2 h", Remarks: "fine" },
  {
    Date: "10.7.",
    Temp: "16 °C",
    Time: "9:30",
    Dilution: "1+9",
    Result: "slightly thin",
    Remarks: "tap water",
  },
  { Date: "10.7.", Temp: "16 °C", Time: "9:30", Dilution: "1+14", Result: "thin", Printed: "maybe", by: "A" },
  {
    Date: "11.7.",
    Temp: "16 °C",
    Time: "13 min",
    Dilution: "1+14",
    Result: "good",
    Thermometer: "old glass one",
  },
  { Date: "11.7.", Temp: "16 °C", Time: "9'45\"", Result: "OK!", Used: "fresh" },
  { Date: "a Sunday", Temp: "16,5 °C", Time: "9 min", Result: "over 1/2", Remarks: "a little dense." },
  { Date: "18.7.", Temp: "17 °C", Time: "9 min", Result: "under 1", Used: "1 roll/l" },
  { Date: "18.7.", Temp: "17 °C", Time: "9 min", Result: "N+1", Used: "0" },
  { Date: "18.7.", Temp: "17 °C", Time: "8 3/4 min", Result: "x1.2", sd: "who knows" },
  { "Date": "19.7.", "Temp": "17 °C", "Time": "8 min", "Result": "just right", "Gamma (CI)": "soft" },
  { Date: "19.7.", Temp: "18 °C", Time: "8 min", Gradient: "0,5", Wanted: "0,6", Result: "a touch thin" },
  { Date: "1.8.", Temp: "18 °C", Time: "7 1/2 min", Result: "perfect", Appearance: "late" },
  { Date: "1.8.2024", Temp: "18 °C", Time: "7 min", Result: "+1" },
  { Date: "2.8.", Temp: "about room", Time: "a while", Result: "lovely" },
  { Date: "2.8.", Temp: "18,5 °C", Time: "7 min", Result: "dense", Agitation: "stand" },
  {
    Date: "2.8.",
    Temp: "18,5 °C",
    Time: "1/2 h",
    Result: "quite good, I think",
    Agitation: "stand",
    Remarks: "good",
  },
  { Date: "32.8.", Temp: "19 °C", Time: "6 1/2 min", Result: "fogged", Remarks: "safelight" },
  { Date: "9.8.", Temp: "19 °C", Time: "6 min", Result: "failed", Remarks: "lid came off" },
  {
    Date: "9.8.",
    Temp: "66F",
    Time: "6 min",
    Who: "B",
    Agitation: "2 x per min",
    Comments: "very thin; grey",
  },
  { Date: "9.8.", Temp: "19 °C", Time: "7 min", Printed: "yes", Result: "Good" },
];

const { runs, rejected } = readRunNotes(page, { year: 2025 });
const runOf = (row: number): DevelopmentRun => {
  const skipped = rejected.filter((each) => each.row <= row).length;
  return runs[row - skipped]!;
};

describe("a page of a notebook", () => {
  it("gives a run for nearly every row, and a reason for each of the rest", () => {
    expect(page).toHaveLength(25);
    expect(runs.length).toBeGreaterThanOrEqual(22);
    expect(runs.length + rejected.length).toBe(25);
    for (const { problems, reason } of rejected) {
      expect(problems.length).toBeGreaterThan(0);
      expect(reason).not.toBe("");
    }
  });
  it.each([13, 18])("asks which is meant by the sign of row %d", (row) => {
    const bare = rejected.find((each) => each.row === row)!;
    expect(bare.problems).toMatchObject([
      { code: "ambiguous", path: "/Result", expected: { readings: ["over 1", "under 1"] } },
    ]);
  });
  it("names all that is wrong with a row at once", () => {
    expect(rejected.find(({ row }) => row === 19)!.problems.map(({ path }) => path)).toEqual([
      "/Time",
      "/Temp",
      "/Result",
    ]);
  });
  it.each<[number, RunOutcome]>([
    [0, { kind: "thin" }],
    [1, { kind: "good" }],
    [2, { kind: "dense" }],
    [3, { kind: "dense" }],
    [4, { kind: "dense" }],
    [5, { kind: "good" }],
    [6, { kind: "thin" }],
    [10, { kind: "steps", steps: 0.5 }],
    [11, { kind: "steps", steps: -1 }],
    [13, { kind: "judged", timeRatio: 1.2 }],
    [20, { kind: "good" }],
    [15, { kind: "gamma", gamma: 0.5, wanted: 0.6 }],
    [21, { kind: "fogged" }],
    [23, { kind: "thin" }],
  ])("reads the outcome of row %d as $1", (row, outcome) => {
    expect(runOf(row).outcome).toEqual(outcome);
  });
  it("reads halves, quarters, fresh and constant", () => {
    expect([0, 2, 4, 9, 13].map((row) => runOf(row).timeS)).toEqual([510, 690, 615, 585, 525]);
    expect([0, 1, 2, 4].map((row) => runOf(row).ageH)).toEqual([0, 0, 1, 1.5]);
    expect([9, 11].map((row) => runOf(row).usedCm2PerL)).toEqual([0, 516.128]);
    expect([0, 2, 3, 5, 23].map((row) => runOf(row).agitation)).toEqual([
      { everyS: 60 },
      "continuous",
      { everyS: 30 },
      "continuous",
      { everyS: 30 },
    ]);
  });
  it("takes the year of a day from the option, and leaves a day without one in the note", () => {
    expect(runOf(0).date).toBe("2025-07-03");
    expect(runOf(10).date).toBeUndefined();
    expect(runOf(10).note).toBe("Date: a Sunday; a little dense.");
    expect(readRunNotes([page[0]]).runs[0]).toMatchObject({ note: "Date: 3.7.; too thin" });
    expect(readRunNotes([page[0]]).runs[0]!.date).toBeUndefined();
    // The 32nd of August is no day.
    expect(runOf(21).note).toBe("Date: 32.8.; safelight");
    expect(() => readRunNotes([], { year: 25 })).toThrow(
      /^readRunNotes: options.year must be from 1800 to 9999/,
    );
  });
  it("keeps thermometer, person and printed rows", () => {
    expect(runOf(8).thermometer).toBe("old glass one");
    expect(runOf(7)).toMatchObject({ by: "A", note: "Printed: maybe" });
    expect(runOf(23).by).toBe("B");
    expect(runOf(24).printed).toBe(true);
  });
  it("leaves in the note what a side column does not say", () => {
    expect(runOf(13).note).toBe("sd: who knows");
    expect(runOf(14).note).toBe("Gamma (CI): soft");
    expect(runOf(16).note).toBe("Appearance: late");
    expect(runOf(15).note).toBe("Result: a touch thin");
  });
});

describe("a side column", () => {
  const row = { Time: "8:30", Temp: "20C", Outcome: "good" };
  it("that is there twice is left in the note", () => {
    expect(readRunNotes([{ ...row, id: "a", Run: "b" }]).runs).toMatchObject([{ note: "id: a; Run: b" }]);
    expect(readRunNotes([{ ...row, Date: "2024-05-01", date: "2024-05-02" }]).runs[0]!.date).toBeUndefined();
  });
  it("that says no to printed leaves an own run", () => {
    const [run] = readRunNotes([{ ...row, Printed: "no" }]).runs;
    expect(run).toEqual({ timeS: 510, temperatureC: 20, outcome: { kind: "good" } });
  });
  it("does not hide a bug of a reader", () => {
    const bug = (): never => {
      throw new Error("a bug");
    };
    const readers: Readers = new Map([
      ["date", bug],
      ["time", bug],
      ["outcome", bug],
    ]);
    const cell = (field: string) => ({ field, unit: "", heading: field, text: "x", column: 1 });
    expect(() => beside([cell("date")], "date", readers)).toThrow(new Error("a bug"));
    expect(() => main([cell("time")], "time", readers, [])).toThrow(new Error("a bug"));
    expect(() => readRow([cell("outcome")], readers, [])).toThrow(new Error("a bug"));
  });
});

describe("a judgement", () => {
  const judged = (Outcome: string): RunOutcome | string => {
    const read = readRunNotes([{ Time: "8:30", Temp: "20C", Outcome }]);
    return read.runs[0]?.outcome ?? read.rejected[0]!.problems[0]!.code;
  };
  it.each<[string, RunOutcome | string]>([
    ["Perfect!", { kind: "good" }],
    ["Thick", { kind: "dense" }],
    ["too  thin", { kind: "thin" }],
    ["looks a little under-developed", { kind: "thin" }],
    ["-0,5", "ambiguous"],
    ["−1", "ambiguous"],
    ["+2 stops", "ambiguous"],
    ["very good", { kind: "good" }],
    ["good?", { kind: "good" }],
    ["good-ish", { kind: "good" }],
    ["goodish", { kind: "good" }],
    ["good (ish)", { kind: "good" }],
    ["perfect, I think", { kind: "good" }],
    ["gut", { kind: "good" }],
    ["sehr gut!", { kind: "good" }],
    ["passt", { kind: "good" }],
    ["zu dünn", { kind: "thin" }],
    ["etwas zu dünn", { kind: "thin" }],
    ["unterentwickelt", { kind: "thin" }],
    ["etwas zu dicht", { kind: "dense" }],
    ["viel zu dicht", { kind: "dense" }],
    ["ein wenig dicht", { kind: "dense" }],
    ["überentwickelt", { kind: "dense" }],
    ["misslungen", { kind: "failed" }],
    ["verschleiert", { kind: "fogged" }],
    ["over 1 step", { kind: "steps", steps: 1 }],
    ["needs +15%", { kind: "judged", timeRatio: 1.15 }],
    ["needed 15 % more time", { kind: "judged", timeRatio: 1.15 }],
    ["needs -10%", { kind: "judged", timeRatio: 0.9 }],
    ["15% more", { kind: "judged", timeRatio: 1.15 }],
    ["15 % longer", { kind: "judged", timeRatio: 1.15 }],
    ["12,5% shorter", { kind: "judged", timeRatio: 0.875 }],
    ["20% less time", { kind: "judged", timeRatio: 0.8 }],
    ["15 % länger", { kind: "judged", timeRatio: 1.15 }],
    ["10 % kürzer", { kind: "judged", timeRatio: 0.9 }],
    ["braucht 15 % mehr", { kind: "judged", timeRatio: 1.15 }],
    ["1.2x", { kind: "judged", timeRatio: 1.2 }],
    ["1,2 ×", { kind: "judged", timeRatio: 1.2 }],
    ["needs -15% more", "unreadable"],
    ["needs 100% less", "out-of-range"],
    ["15% over", "unreadable"],
    ["15%", "unreadable"],
    ["good but thin", "unreadable"],
    ["under", "unreadable"],
    ["not thin", "unreadable"],
    ["thin and dense", "unreadable"],
    ["x101", "out-of-range"],
  ])("of %s", (text, outcome) => {
    expect(judged(text)).toEqual(outcome);
  });
  it.each<[string, readonly string[]]>([
    ["+1", ["over 1", "under 1"]],
    ["−0,5 steps", ["over 0.5", "under 0.5"]],
    ["N+1", ["over 1", "under 1"]],
    ["n – 1.5", ["over 1.5", "under 1.5"]],
    ["+15%", ["15% less", "15% more"]],
    // A step of a judgement is × 1.4 in time, the first stop of push × 1.25, two stops × 1.63.
    ["over 1 stop", ["over 1", "x0.8"]],
    ["under 2 stops", ["under 2", "x1.65"]],
    ["+2 stops", ["over 2", "x0.6", "under 2", "x1.65"]],
    ["flat", ["thin", "good"]],
    ["a bit flat", ["thin", "good"]],
    ["too contrasty", ["dense", "good"]],
    ["flau", ["thin", "good"]],
  ])("of %s is refused with what it may be", (Outcome, readings) => {
    const { rejected: found } = readRunNotes([{ Time: "8:30", Temp: "20C", Outcome }]);
    expect(found[0]!.problems).toMatchObject([{ code: "ambiguous", expected: { readings } }]);
    // What is offered can be read.
    for (const reading of readings) expect(judged(reading)).toBeTypeOf("object");
  });
  it.each<[Record<string, unknown>, RunOutcome | string]>([
    [
      { Outcome: "gamma 0.58", Wanted: 0.6 },
      { kind: "gamma", gamma: 0.58, wanted: 0.6 },
    ],
    [{ Outcome: "Gamma: 0,58, wanted 0,6" }, { kind: "gamma", gamma: 0.58, wanted: 0.6 }],
    [{ Outcome: "CI 0.58 instead of 0.6" }, { kind: "gamma", gamma: 0.58, wanted: 0.6 }],
    [
      { Outcome: "density 1.1", Wanted: 1.2 },
      { kind: "density", density: 1.1, wanted: 1.2 },
    ],
    [{ Outcome: "gamma 0.58" }, "/wanted"],
  ])("in words that is a measurement: %j", (cells, outcome) => {
    const read = readRunNotes([{ Time: "8:30", Temp: "20C", ...cells }]);
    expect(read.runs[0]?.outcome ?? read.rejected[0]!.problems[0]!.path).toEqual(outcome);
  });
  it("of thin or dense has no spread: the sd beside it stays in the note", () => {
    const [run] = readRunNotes([{ Time: "8:30", Temp: "20C", Outcome: "thin", sd: "0.1" }]).runs;
    expect(run).toMatchObject({ outcome: { kind: "thin" }, note: "sd: 0.1" });
  });
});
