/* Cells at the border of what can be read. All rows are invented. */
import { describe, expect, it } from "vitest";
import { readRunNotes, type DevelopmentRun } from "../../src/index.js";
import { readHeading } from "../../src/notes/headings.js";

describe("cells of notes", () => {
  const base = { Time: "8:30", Temp: "20C", Outcome: "good" };
  const read = (cells: Record<string, unknown>) => readRunNotes([{ ...base, ...cells }]);
  it("repeats a bare number as it stands when no unit says what it counts", () => {
    expect(read({ Time: "510" }).rejected[0]!.reason).toMatch(/, got "510"$/);
  });
  it.each(["unknown", "Unbekannt", "?", "??", "not known"])(
    "keeps a run of a bath whose age is %j, without the age, and says so",
    (age) => {
      const { runs, rejected, unread } = read({ Age: age });
      expect(rejected).toEqual([]);
      expect(runs).toEqual([
        { timeS: 510, temperatureC: 20, outcome: { kind: "good" }, note: `Age: ${age}` },
      ]);
      expect(unread).toMatchObject([{ heading: "Age", row: 1, text: age, whole: false }]);
    },
  );
  it.each<[Record<string, unknown>, Partial<DevelopmentRun>]>([
    // 8.75 × 60 s: no clock has 75 seconds.
    [{ Time: undefined, time_min: "8.75" }, { timeS: 525 }],
    [{ "Time": undefined, "Zeit (min)": "8,5" }, { timeS: 510 }],
    [{ "Time": undefined, "Time (min)": 8.75 }, { timeS: 525 }],
    [{ every_s: "every  30" }, { agitation: { everyS: 30 } }],
    [{ used: "516.25 cm2/l" }, { usedCm2PerL: 516.25 }],
    // A cell that holds a number has no thousands in it.
    [{ "Benutzt (cm2/l)": 1.032 }, { usedCm2PerL: 1.032 }],
    [{ "Time": undefined, "Zeit (s)": 510.125 }, { timeS: 510.125 }],
    // What is said roughly is told in the note too.
    [
      { Rolls: "ca. 1 roll", Volume: "1 l" },
      { usedCm2PerL: 516.128, note: "Rolls: ca. 1 roll/1000 ml; Volume: 1 l" },
    ],
    // A day has 24 h.
    [{ Age: "10 days" }, { ageH: 240 }],
    [{ Age: "1.25 d" }, { ageH: 30 }],
    [{ Age: "3d" }, { ageH: 72 }],
    [{ Outcome: "over  1" }, { outcome: { kind: "steps", steps: 1 } }],
    [{ Outcome: "over 1.25" }, { outcome: { kind: "steps", steps: 1.25 } }],
    [{ Outcome: "under 1 step" }, { outcome: { kind: "steps", steps: -1 } }],
    [{ Outcome: "x10" }, { outcome: { kind: "judged", timeRatio: 10 } }],
    [{ Outcome: "x2" }, { outcome: { kind: "judged", timeRatio: 2 } }],
    // A negative that failed says nothing, whatever was measured on it; that is kept as it was written.
    [
      { Outcome: "failed", Gradient: "0,5", wanted: 0.6, note: "fog" },
      { outcome: { kind: "failed" }, note: "Gradient: 0,5; wanted: 0.6; fog" },
    ],
    // The first of gradient, density and appearance is the outcome, with its own spread.
    [
      { Outcome: "over 1", density: 1.1, gamma: 0.5, wanted: 0.6, sd: 0.02 },
      {
        outcome: { kind: "gamma", gamma: 0.5, wanted: 0.6, sd: 0.02 },
        note: "density: 1.1; Outcome: over 1",
      },
    ],
    [
      { Outcome: undefined, gamma: 0.5, wanted: 0.6, appearance: "50 s", factor: 10, note: "good" },
      {
        outcome: { kind: "gamma", gamma: 0.5, wanted: 0.6 },
        note: "appearance: 50 s; factor: 10; good",
      },
    ],
    // A judgement of the finished negative goes before what its first image foretold.
    [
      { "Outcome": "good", "appearance s": 50, "factor": 10, "wanted": "much" },
      { note: "appearance s: 50; factor: 10; wanted: much" },
    ],
    [
      { Outcome: "halbe Stufe zu dünn", Erscheinen: "60 s", Faktor: "10", sd: 0.3 },
      { outcome: { kind: "steps", steps: -0.5, logSd: 0.3 }, note: "Erscheinen: 60 s; Faktor: 10" },
    ],
    [
      { Outcome: undefined, appearance: "50 s", factor: 10, note: "too thin, red lamp" },
      { outcome: { kind: "thin" }, note: "appearance: 50 s; factor: 10; too thin, red lamp" },
    ],
    // Words that may mean two things judge nothing: they are told as unread.
    [
      { Outcome: "+1", appearance: "50 s", factor: 10, note: "good" },
      { outcome: { kind: "appearance", appearanceS: 50, factor: 10 }, note: "good; Outcome: +1" },
    ],
    // Two columns of one kind are refused where they are read, and kept where they are not.
    [
      { "Lamp 1": "red", "Lens": "50 mm", "Lamp 2": "green" },
      { note: "Lamp 1: red; Lens: 50 mm; Lamp 2: green" },
    ],
    [{ id: "1,5" }, { id: "1,5" }],
  ])("reads %j", (cells, expected) => {
    expect(read(cells)).toEqual({
      runs: [{ timeS: 510, temperatureC: 20, outcome: { kind: "good" }, ...expected }],
      rows: [1],
      rejected: [],
      unread: expect.any(Array),
      leftAside: [],
      cautions: [],
    });
  });
  it.each([
    // The reason shows the cell as it was read, its decimal comma a point.
    [{ Temp: "cold, 14,5C" }, 'Temp must be a temperature such as "20 °C" or "68F", got "cold, 14.5C"'],
    [{ Temp: "20 cold" }, 'Temp must be a temperature such as "20 °C" or "68F", got "20 cold"'],
    [
      { Agitation: "x every 30 s" },
      'Agitation must be an agitation such as "every 30 s", "continuous" or "stand", got "x every 30 s"',
    ],
    // Two figures behind minutes may be seconds.
    [
      { "Time": undefined, "Time (min)": "8.30" },
      'Time (min) must be "8:30" or "8 min 18 s", got "8.30 min"',
    ],
    [
      { "Time": undefined, "Zeit (min)": "8,30" },
      'Zeit (min) must be "8:30" or "8 min 18 s", got "8.30 min"',
    ],
    [{ Time: "8.30" }, 'Time must be "8:30", "8 min 18 s" or "8.30 s", got "8.30"'],
    [{ Time: "8.30 min" }, 'Time must be "8:30" or "8 min 18 s", got "8.30 min"'],
    [{ "every (min)": "0.30" }, 'every (min) must be "0:30" or "18 s", got "0.30 min"'],
    // No unit in the cell, and none in a heading that has none.
    [{ Temp: "293" }, 'Temp must be "293 °C" or "293 °F", got "293"'],
    [{ Agitation: "every 30" }, 'Agitation must be "every 30 min" or "every 30 s", got "every 30"'],
    // A German table parts thousands by a point.
    [
      { "Benutzt (cm2/l)": "1.032" },
      'Benutzt (cm2/l) must be "1.0320 cm2/l" or "1032 cm2/l", got "1.032 cm2/l"',
    ],
    [
      { "Benutzt (cm2/l)": "1,032" },
      'Benutzt (cm2/l) must be "1.0320 cm2/l" or "1032 cm2/l", got "1,032 cm2/l"',
    ],
    [
      { Benutzt: "1.080 cm2", Volumen: "750 ml" },
      'Benutzt must be "1.08 cm2" or "1080 cm2", got "1.080 cm2"',
    ],
    [{ "Alter (min)": "1.440" }, 'Alter (min) must be "1.44 min" or "1440 min", got "1.440 min"'],
    [{ "Time": undefined, "Zeit (s)": "1,050" }, 'Zeit (s) must be "1.05 s" or "1050 s", got "1,050 s"'],
    [{ "Age h": "2:30" }, 'Age h must be an age such as "2 h" or "3 days", got "2:30 h"'],
  ])("rejects %j", (cells, reason) => {
    expect(read(cells).rejected.map((each) => each.reason)).toEqual([reason]);
  });
  it("rejects steps with a word before them, and shows sixty letters of a long outcome", () => {
    const forms = 'an outcome such as "good", "thin", "dense", "over 1", "under 0.5", "x1.2" or "15% more"';
    const reason = (Outcome: string) => read({ Outcome }).rejected[0]?.reason;
    expect(reason("very over 1")).toBe(`Outcome must be ${forms}, got "very over 1"`);
    expect(reason("o".repeat(61))).toBe(`Outcome must be ${forms}, got "${"o".repeat(60)}"`);
  });
  it("leaves out what a row does not say", () => {
    expect(read({}).runs).toStrictEqual([{ timeS: 510, temperatureC: 20, outcome: { kind: "good" } }]);
    expect(read({ gamma: 0.5, wanted: 0.6 }).runs[0]?.outcome).toStrictEqual({
      kind: "gamma",
      gamma: 0.5,
      wanted: 0.6,
    });
  });
  it("finds no field and no unit where a heading has none", () => {
    expect(readHeading("Time")).toEqual({ field: "time", unit: "" });
    expect(readHeading("Temp")).toEqual({ field: "temperature", unit: "" });
    expect(readHeading("°")).toEqual({ field: "°", unit: "" });
    expect(readHeading(" : ")).toEqual({ field: "", unit: "" });
    expect(readHeading("My dev time")).toEqual({ field: "my", unit: "dev time" });
    expect(readHeading("developed")).toEqual({ field: "developed", unit: "" });
    expect(readHeading("Development time [sec]")).toEqual({ field: "time", unit: "sec" });
    expect(readHeading("usedCm2PerL")).toEqual({ field: "used", unit: "cm2 per l" });
    expect(readHeading("constructor")).toEqual({ field: "constructor", unit: "" });
  });
  it.each<[Record<string, unknown>, Partial<DevelopmentRun>]>([
    [{ Outcome: "over 0,5" }, { outcome: { kind: "steps", steps: 0.5 } }],
    [{ Outcome: "over 1,5" }, { outcome: { kind: "steps", steps: 1.5 } }],
    [{ Outcome: "x1,25" }, { outcome: { kind: "judged", timeRatio: 1.25 } }],
    [{ Agitation: "every 0,5 min" }, { agitation: { everyS: 30 } }],
  ])("reads the decimal comma in %j", (cells, expected) => {
    expect(read(cells)).toMatchObject({ runs: [expected], rejected: [] });
  });
  it.each<[Record<string, unknown>, Partial<DevelopmentRun>]>([
    [{ Agitation: "10s/min" }, { agitation: { everyS: 60 } }],
    [{ Agitation: "2/min" }, { agitation: { everyS: 30 } }],
    [{ Agitation: "rotary" }, { agitation: "continuous" }],
    [{ Temp: "19°" }, { temperatureC: 19 }],
    [{ Temp: "19 deg" }, { temperatureC: 19 }],
    [{ Temp: "104°" }, { temperatureC: 40 }],
  ])("reads the short forms in %j", (cells, expected) => {
    expect(read(cells)).toMatchObject({ runs: [expected], rejected: [] });
  });
  it("asks which scale 68° has", () => {
    const [row] = read({ Temp: "68°" }).rejected;
    expect(row?.problems).toMatchObject([{ code: "ambiguous", expected: { readings: ["68 °C", "68 °F"] } }]);
  });
});
