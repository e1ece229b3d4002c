import { describe, expect, it } from "vitest";
import { fc, test } from "../property.js";
import { learn, readRunNotes, startKnowledge, type DevelopmentRun } from "../../src/index.js";
import { anyOf, caught } from "../helpers.js";
const base = { Time: "8:30", Temp: "20C", Outcome: "good" };
const one = (cells: Record<string, unknown>): DevelopmentRun => {
  const { runs, rejected } = readRunNotes([{ ...base, ...cells }]);
  expect(rejected).toEqual([]);
  return runs[0]!;
};
const reason = (cells: Record<string, unknown>, options = {}): string | undefined =>
  readRunNotes([{ ...base, ...cells }], options).rejected[0]?.reason;

describe("readRunNotes", () => {
  it("reads an invented workshop page, messy as it is, and loses no row", () => {
    const page = [
      {
        "Time (s)": 510,
        "Temp °C": "14,5",
        "Dilution": "1+9",
        "Agitation": "every 30 s",
        "Used (rolls/l)": 2,
        "Age": "90 min",
        "Result": "over 0.5",
        "Date": "2024-05-01",
        "Lamp": "red",
        "Notes": "hut, tap water",
      },
      {
        "Time (s)": "8:30",
        "Temp °C": "68F",
        "Dilution": " stock ",
        "Agitation": "Continuous",
        "Used": "",
        "Age": null,
        "Result": "GOOD",
        "Date": undefined,
      },
      { "Time (s)": "", "Temp °C": "20", "Result": "good" },
      { "Time (s)": "510", "Temp °C": "warm", "Result": "good" },
      "a torn page",
    ];
    const { runs, rejected } = readRunNotes(page);
    expect(runs).toEqual([
      {
        timeS: 510,
        temperatureC: 14.5,
        dilution: "1+9",
        agitation: { everyS: 30 },
        usedCm2PerL: 2 * 516.128,
        ageH: 1.5,
        outcome: { kind: "steps", steps: 0.5 },
        date: "2024-05-01",
        note: "Lamp: red; hut, tap water",
      },
      { timeS: 510, temperatureC: 20, dilution: "stock", agitation: "continuous", outcome: { kind: "good" } },
    ]);
    expect(rejected).toEqual([
      {
        row: 3,
        record: page[2],
        reason: "time is missing",
        problems: [expect.objectContaining({ code: "missing", path: "/time" })],
      },
      {
        row: 4,
        record: page[3],
        reason: 'Temp °C must be a temperature such as "20 °C" or "68F", got "warm"',
        problems: [expect.objectContaining({ code: "unreadable", path: "/Temp °C", actual: "warm" })],
      },
      {
        row: 5,
        record: "a torn page",
        reason: 'row must be an object, got "a torn page"',
        problems: [expect.anything()],
      },
    ]);
    expect(
      learn(
        startKnowledge({ timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 } }),
        runs,
      ).runs,
    ).toHaveLength(2);
  });
  it("keeps every cell of a row that it takes: read, or in the note as it stands", () => {
    const odd = {
      "Bath no": 3,
      "Lamp": "red; dim",
      "Gradient": 0.5,
      "wanted": 0.6,
      "density": "1,1",
      "appearance": "50 s",
      "factor": 9,
      "sd": 0.02,
    };
    const { note, outcome } = one({ ...odd, Outcome: "N+1" });
    expect(outcome).toEqual({ kind: "gamma", gamma: 0.5, wanted: 0.6, sd: 0.02 });
    expect(note).toBe("Bath no: 3; Lamp: red; dim; density: 1,1; appearance: 50 s; factor: 9; Outcome: N+1");
  });
  test.prop([
    fc.array(
      fc.oneof(
        fc.anything(),
        fc.dictionary(
          fc.constantFrom("time", "temp", "outcome", "dilution", "age", "gamma", "x"),
          fc.oneof(fc.string(), fc.double(), fc.constantFrom("8:30", "20C", "good", "1+9", "")),
        ),
      ),
    ),
  ])("takes or returns every row, whatever stands in it", (records) => {
    const { runs, rejected } = readRunNotes(records);
    expect(runs.length + rejected.length).toBe(records.length);
    for (const { row, record, reason: why } of rejected) {
      expect(record).toBe(records[row - 1]);
      expect(why).not.toBe("");
    }
  });
  it.each<[Record<string, unknown>, Partial<DevelopmentRun>]>([
    [{ Time: "8.5 min" }, { timeS: 510 }],
    [{ Time: undefined, time_min: "8,5" }, { timeS: 510 }],
    [{ Time: undefined, timeS: 510.5 }, { timeS: 510.5 }],
    [{ "Time": undefined, "Development time [sec]": "510" }, { timeS: 510 }],
    [{ "Time": undefined, "time h": "0.5" }, { timeS: 1800 }],
    [{ Temp: "68 °F" }, { temperatureC: 20 }],
    [{ Temp: "68.36f" }, { temperatureC: 20.2 }],
    [{ Temp: undefined, temperatureC: 19 }, { temperatureC: 19 }],
    [{ Temp: undefined, temperatureF: "+70.7" }, { temperatureC: 21.5 }],
    [{ Temp: undefined, Temperature: "20 ° c" }, { temperatureC: 20 }],
    [{ Agitation: "stand" }, { agitation: "stand" }],
    [{ Agitation: "1 min" }, { agitation: { everyS: 60 } }],
    [{ "Agitation (per min)": 2 }, { agitation: { everyS: 30 } }],
    [{ every_s: 30 }, { agitation: { everyS: 30 } }],
    [{ usedCm2PerL: 516 }, { usedCm2PerL: 516 }],
    [{ "Used (rolls/l)": 2 }, { usedCm2PerL: 1032.256 }],
    [{ "Used rolls per litre": "1" }, { usedCm2PerL: 516.128 }],
    [{ "Age (days)": 3 }, { ageH: 72 }],
    [{ "Age [h]": "90 min" }, { ageH: 1.5 }],
    [{ "Agitation seconds": "30" }, { agitation: { everyS: 30 } }],
    [{ "Temperature (Celsius)": "19,5", "Temp": "" }, { temperatureC: 19.5 }],
    [{ "Temp": "", "Temp (deg F)": "68" }, { temperatureC: 20 }],
    [{ "Time": "", "Dev. time (min)": "8:30" }, { timeS: 510 }],
    [{ Time: "", Dev: "8 mins 30 secs" }, { timeS: 510 }],
    [{ "Time": "", "Time (s)": "8:30" }, { timeS: 510 }],
    // What stands besides a unit makes another column of it, which is kept in the note.
    [
      { "Time of day": "9:15", "Temp room": "25C", "Age of film": "3 days", "Run date": "May" },
      { note: "Time of day: 9:15; Temp room: 25C; Age of film: 3 days; Run date: May" },
    ],
    [
      { "Developer": "hut brew", "SD card": 3, "Density base": 0.3 },
      { note: "Developer: hut brew; SD card: 3; Density base: 0.3" },
    ],
    [{ "Every 30 s": 1, "Time fix": "5:00" }, { note: "Every 30 s: 1; Time fix: 5:00" }],
    [{ note: "first", Notes: "second" }, { note: "first; second" }],
    [{ used: "516,5 cm2/l" }, { usedCm2PerL: 516.5 }],
    [{ used: "516 cm²/L" }, { usedCm2PerL: 516 }],
    [{ used: "1 roll/l" }, { usedCm2PerL: 516.128 }],
    [{ Age: "3 days" }, { ageH: 72 }],
    [{ Age: "1.5 d" }, { ageH: 36 }],
    [{ Age: "1 day" }, { ageH: 24 }],
    [{ "age h": "2" }, { ageH: 2 }],
    [{ Outcome: "ok" }, { outcome: { kind: "good" } }],
    [{ Outcome: "Right" }, { outcome: { kind: "good" } }],
    [{ Outcome: "normal" }, { outcome: { kind: "good" } }],
    [{ Outcome: "N" }, { outcome: { kind: "good" } }],
    [{ Outcome: "failed" }, { outcome: { kind: "failed" } }],
    [
      { Outcome: "Fogged", gamma: 0.5 },
      { outcome: { kind: "fogged" }, note: "gamma: 0.5" },
    ],
    [{ Outcome: "under 1 step" }, { outcome: { kind: "steps", steps: -1 } }],
    [{ Outcome: "over1" }, { outcome: { kind: "steps", steps: 1 } }],
    [{ Outcome: "x1.2" }, { outcome: { kind: "judged", timeRatio: 1.2 } }],
    [{ Outcome: "× 0.85", sd: 0.2 }, { outcome: { kind: "judged", timeRatio: 0.85, logSd: 0.2 } }],
    [
      { Outcome: "", gamma: "0,55", wanted: "0.6", sd: "0.02" },
      { outcome: { kind: "gamma", gamma: 0.55, wanted: 0.6, sd: 0.02 } },
    ],
    [
      { Outcome: "good", Gradient: 0.55, wanted: 0.6 },
      { outcome: { kind: "gamma", gamma: 0.55, wanted: 0.6 }, note: "Outcome: good" },
    ],
    [{ Outcome: "", density: 0.9, wanted: 1 }, { outcome: { kind: "density", density: 0.9, wanted: 1 } }],
    [
      { Outcome: "", appearance_s: 50, factor: 10 },
      { outcome: { kind: "appearance", appearanceS: 50, factor: 10 } },
    ],
    [
      { Outcome: "", appearance: "50 s", factor: "10", sd: 0.1 },
      { outcome: { kind: "appearance", appearanceS: 50, factor: 10, logSd: 0.1 } },
    ],
    [{ Run: 7 }, { id: "7" }],
    [
      { id: "a,1,5", note: "1,5 l" },
      { id: "a,1,5", note: "1,5 l" },
    ],
    [{ Lamp: "red", Fan: true }, { note: "Lamp: red; Fan: true" }],
    [{ constructor: "odd" }, { note: "constructor: odd" }],
    [{ Date: "2024-05-01" }, { date: "2024-05-01" }],
  ])("reads %j", (cells, expected) => {
    expect(one(cells)).toEqual({ timeS: 510, temperatureC: 20, outcome: { kind: "good" }, ...expected });
  });
  it("keeps what a division by nothing left in a column with the words, and refuses it where a figure belongs", () => {
    const row = { time: "8:30", temp: "20 C", outcome: "good" };
    const { runs, rejected } = readRunNotes([
      { ...row, note: Infinity, grain: -Infinity, paper: "soft" },
      { ...row, age: Infinity },
    ]);
    expect(runs).toEqual([
      {
        timeS: 510,
        temperatureC: 20,
        outcome: { kind: "good" },
        note: "no number; grain: no number; paper: soft",
      },
    ]);
    expect(rejected).toEqual([
      {
        row: 2,
        record: { ...row, age: Infinity },
        reason: expect.stringMatching(/got "no number"$/),
        problems: [expect.anything()],
      },
    ]);
  });
  it("gives back a hole in the rows too", () => {
    const records: unknown[] = [base];
    records[2] = { ...base, Time: "9:00" };
    const { runs, rejected } = readRunNotes(records);
    expect(runs).toHaveLength(2);
    expect(rejected.map(({ row, record, reason: why }) => [row, record, why])).toEqual([
      [2, undefined, "row is missing: an object"],
    ]);
  });
  it.each([
    ["20", 20],
    [20, 20],
    ["13,5", 13.5],
    ["20 1/2", 20.5],
    ["0", 0],
    ["31.9", 31.9],
    ["104", 40],
    ["113", 45],
  ])("reads %j without a unit, since the other unit would make no bath of it", (Temp, celsius) => {
    expect(readRunNotes([{ ...base, Temp }]).runs[0]?.temperatureC).toBeCloseTo(celsius, 10);
  });
  it("reads a colon in a dilution only when told how", () => {
    expect(reason({ Dilution: "1:9" })).toBe(
      'Dilution must be "1+9" (1 part and 9 of water) or "1+8" (1 part of 9 in all), got "1:9"',
    );
    expect(readRunNotes([{ ...base, Dilution: "1:9" }], { colon: "total" }).runs[0]?.dilution).toEqual({
      stockParts: 1,
      waterParts: 8,
    });
  });
  it.each<[Record<string, unknown>, string | RegExp]>([
    [{ Time: "510" }, 'must be "510 min" or "510 s", got "510"'],
    [{ Time: 510 }, 'must be "510 min" or "510 s", got "510"'],
    [{ Time: "1,234 s" }, /must be "1\.2340 s" or "1234 s"/],
    [{ Time: "0:00" }, "Time must be above 0 and at most 1000000 s, got 0"],
    [{ Temp: "32" }, 'must be "32 °C" or "32 °F", got "32"'],
    [{ Temp: "68" }, 'must be "68 °C" or "68 °F", got "68"'],
    [{ Temp: "100" }, 'must be "100 °C" or "100 °F", got "100"'],
    // A comma was lost: no bath is so warm in either unit.
    [{ Temp: "114" }, 'must be "114 °C" or "114 °F", got "114"'],
    [{ Temp: "185" }, 'must be "185 °C" or "185 °F", got "185"'],
    [{ Temp: "200" }, 'must be "200 °C" or "200 °F", got "200"'],
    [{ Temp: "213" }, 'must be "213 °C" or "213 °F", got "213"'],
    [{ Temp: "680" }, 'must be "680 °C" or "680 °F", got "680"'],
    [{ Temp: "300F" }, "Temp must be from 0 to 100 °C, got 148.88888888888"],
    [{ Temp: "" }, "temperature is missing"],
    [{ Outcome: " " }, "outcome is missing"],
    [
      { Outcome: "lovely" },
      'Outcome must be an outcome such as "good", "thin", "dense", "over 1", "under 0.5", "x1.2" or "15% more", got "lovely"',
    ],
    [{ Outcome: "over" }, /Outcome must be/],
    [{ Outcome: "xgood" }, /Outcome must be/],
    [{ Outcome: "failed too" }, /Outcome must be/],
    [{ Outcome: "over 1 x" }, /Outcome must be/],
    [{ Outcome: "ax1.2" }, /Outcome must be/],
    [{ Outcome: "x1.2b" }, /Outcome must be/],
    [{ Outcome: "over 20" }, "Outcome must be from -10 to 10, got 20"],
    [{ Outcome: "", gamma: 0.5 }, "wanted is missing"],
    [{ Outcome: "", density: 0.5 }, "wanted is missing"],
    [{ Outcome: "", appearance: "50 s" }, "factor is missing"],
    [{ Outcome: "", gamma: "soft", wanted: 1 }, 'gamma must be a number such as "0.6", got "soft"'],
    [{ Outcome: "", gamma: "0.5x", wanted: 1 }, 'gamma must be a number such as "0.6", got "0.5x"'],
    [{ Outcome: "", gamma: "x0.5", wanted: 1 }, 'gamma must be a number such as "0.6", got "x0.5"'],
    [{ Outcome: "", gamma: 0.5, wanted: "much" }, 'wanted must be a number such as "0.6", got "much"'],
    [{ Outcome: "", density: "dark", wanted: 1 }, 'density must be a number such as "0.6", got "dark"'],
    [{ Outcome: "", density: "1", wanted: "dark" }, 'wanted must be a number such as "0.6", got "dark"'],
    [
      { Outcome: "", appearance: "50 s", factor: "many" },
      'factor must be a number such as "0.6", got "many"',
    ],
    [
      { used: "two films" },
      'must be a use such as "516 cm2/l", "2 rolls/l" or "3 9x12cm/l", got "two films"',
    ],
    [
      { used: "x 2 rolls/l" },
      'must be a use such as "516 cm2/l", "2 rolls/l" or "3 9x12cm/l", got "x 2 rolls/l"',
    ],
    [
      { used: "2 rolls/l x" },
      'must be a use such as "516 cm2/l", "2 rolls/l" or "3 9x12cm/l", got "2 rolls/l x"',
    ],
    [{ Age: "old" }, /must be an age such as/],
    [{ Age: "x 3 days" }, /must be an age/],
    [{ Age: "3 days x" }, /must be an age/],
    [{ Agitation: "now and then" }, /must be/],
    [{ Agitation: "2 h" }, "must be above 0 and at most 3600 s, got 7200"],
    [{ Agitation: "x every 30 s" }, /must be/],
    [{ Dilution: 9 }, 'must be a dilution such as "1+9" or "stock", got "9"'],
    [{ used: 516 }, 'must be "516 cm2/l" or "516 rolls/l", got "516"'],
    // A bracket holds a unit: wrong one is not passed over.
    [
      { "Used (m2/l)": 0.05 },
      'heading must be a column with its unit such as "Time (s)" or "Temp °F", got "Used (m2/l)"',
    ],
    [{ "Time": "", "Time (min:s)": 8 }, /must be a time such as .*, got "8 min:s"$/],
    [{ "Time": "", "Time (mm:ss)": "1:08:30" }, /must be a time such as .*, got "1:08:30 mm:ss"$/],
    [
      { "Temp": "", "Temp [C / F]": 50 },
      'heading must be a column with its unit such as "Time (s)" or "Temp °F", got "Temp [C / F]"',
    ],
    [
      { "Dilution": "", "Dilution (total)": "1:10" },
      'heading must be a column with its unit such as "Time (s)" or "Temp °F", got "Dilution (total)"',
    ],
    // A clock under a unit that is not its own says two things.
    [{ "Time": "", "Time (h)": "1:30" }, /must be a time such as .*, got "1:30 h"$/],
    [{ "Time": "", "Time (min)": "08:30:00" }, /must be a time such as .*, got "08:30:00 min"$/],
    [{ "Temp C": "68⁰", "Temp": "" }, /must be .*, got "68⁰"$/],
    [{ Dilution: "weak" }, 'must be a dilution such as "1+9" or "stock", got "weak"'],
    [{ time: "9:00" }, "Time must be one column, not Time and time"],
    [{ Time: [1] }, /must be a time/],
  ])("rejects %j", (cells, why) => {
    const found = reason(cells);
    if (typeof why === "string") expect(found).toContain(why);
    else expect(found).toMatch(why);
  });
  it("rejects duplicates, one id for two runs, and dates after today, by name", () => {
    const { runs, rejected } = readRunNotes(
      [base, { ...base, id: "a" }, base, { ...base, Time: "9:00", id: "a" }, { ...base, Date: "2024-05-03" }],
      { today: "2024-05-02" },
    );
    expect(runs).toHaveLength(2);
    expect(rejected.map(({ row, reason: why }) => [row, why])).toEqual([
      [3, "row must be another run than that of row 1: a second plate needs an id of its own"],
      [4, 'id must be the id of one run only, and not that of row 2, got "a"'],
      [5, 'Date must be at most today, 2024-05-02, got "2024-05-03"'],
    ]);
  });
  it.each([
    [{ Datum: "30.12.2024" }, "/Datum", /^Datum must be at most today, 2024-08-01, got "2024-12-30"$/],
    [{ Nr: "9".repeat(201) }, "/Nr", /^Nr must be text of at most 200 characters/],
    [{ Wer: "a".repeat(201) }, "/Wer", /^Wer must be text of at most 200 characters/],
    [{ Bemerkung: "a".repeat(2001) }, "/Bemerkung", /^Bemerkung must be text of at most 2000 characters/],
    // A note of several columns has no heading of its own.
    [{ Lampe: "a".repeat(2001) }, "/", /^run\.note must be text of at most 2000 characters/],
  ])("names the heading of what is wrong with a run that could be read", (cells, path, message) => {
    const row = { Zeit: "8:30", Temp: "20", Ergebnis: "gut", ...cells };
    expect(readRunNotes([row], { today: "2024-08-01" }).rejected[0]?.problems).toMatchObject([
      { path, message: expect.stringMatching(message) },
    ]);
  });
  it("refuses what is no notebook or no option", () => {
    expect(() => readRunNotes(anyOf("notes"))).toThrow(
      new TypeError('readRunNotes: records must be an array, got "notes"'),
    );
    expect(() => readRunNotes([], anyOf(1))).toThrow(
      new TypeError("readRunNotes: options must be an object, got 1"),
    );
    expect(() => readRunNotes([], { today: "now" })).toThrow(
      new RangeError('readRunNotes: options.today must be a date such as "2024-05-01", got "now"'),
    );
    expect(() => readRunNotes([], { today: anyOf(1) })).toThrow(
      new TypeError("readRunNotes: options.today must be text, got 1"),
    );
    expect(() => readRunNotes([], { colon: anyOf("both") })).toThrow(
      new RangeError('readRunNotes: options.colon must be "plus" or "total", got "both"'),
    );
    expect(caught(() => readRunNotes([], anyOf({ language: "de" })))).toMatchObject({
      code: "not-one-of",
      path: "/options/language",
      expected: { values: ["colon", "today", "year", "dates", "only"] },
    });
    expect(readRunNotes([])).toEqual({
      runs: [],
      rows: [],
      rejected: [],
      unread: [],
      leftAside: [],
      cautions: [],
    });
  });
});

describe("an empty cell", () => {
  it("may be NaN, as a data frame leaves it", () => {
    const { runs } = readRunNotes([
      { Time: "8:30", Temp: "20 °C", Dilution: NaN, Weather: NaN, Outcome: "good" },
    ]);
    expect(runs).toEqual([{ timeS: 510, temperatureC: 20, outcome: { kind: "good" } }]);
  });
});
