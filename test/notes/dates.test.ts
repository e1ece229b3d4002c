/* Dates as people write them in a notebook. All rows are invented. */
import { describe, expect, it } from "vitest";
import { readRunNotes, type RunNotesOptions } from "../../src/index.js";
import { dayText } from "../../src/notes/dateCell.js";
import { anyOf } from "../helpers.js";

const row = { Time: "8:30", Temp: "20C", Outcome: "good" };
const read = (date: unknown, options: RunNotesOptions = {}) => {
  const { runs, rejected, unread } = readRunNotes([{ ...row, Date: date }], options);
  expect(rejected).toEqual([]);
  return { run: runs[0]!, unread };
};

describe("a date", () => {
  it.each([
    ["2024-03-05", "2024-03-05"],
    ["2024-03-05 14:30", "2024-03-05T14:30"],
    ["2024-03-05, 14:30", "2024-03-05T14:30"],
    ["2024-03-05T14:30+01:00", "2024-03-05T14:30+01:00"],
    ["2024/03/05", "2024-03-05"],
    ["2024/3/5", "2024-03-05"],
    ["2024.03.05", "2024-03-05"],
    ["5 March 2024", "2024-03-05"],
    ["5 Mar 2024", "2024-03-05"],
    ["5-Mar-2024", "2024-03-05"],
    ["5-Mar-24", "2024-03-05"],
    ["5th of March 2024", "2024-03-05"],
    ["1st Sept. 2024", "2024-09-01"],
    ["March 5, 2024", "2024-03-05"],
    ["Mar 5 2024", "2024-03-05"],
    ["Tuesday, 5 March 2024", "2024-03-05"],
    ["Di. 5.3.2024", "2024-03-05"],
    ["5. März 2024", "2024-03-05"],
    ["5. Maerz 2024", "2024-03-05"],
    ["12. Dez. 2024", "2024-12-12"],
    ["3. Mai 2024", "2024-05-03"],
    ["1. Jänner 2024", "2024-01-01"],
    ["5.3.2024", "2024-03-05"],
    ["05.03.2024", "2024-03-05"],
    ["5. 3. 2024", "2024-03-05"],
    ["5.3.24", "2024-03-05"],
    // Years of two figures are 1969 to 2068: IEEE Std 1003.1-2017 (POSIX), strptime.
    ["5.3.68", "2068-03-05"],
    ["5.3.69", "1969-03-05"],
    // A figure above 12 decides, and two that are alike.
    ["13/4/2024", "2024-04-13"],
    ["15/03/2024", "2024-03-15"],
    ["4/13/2024", "2024-04-13"],
    ["4/13/24", "2024-04-13"],
    ["13-4-2024", "2024-04-13"],
    ["5/5/2024", "2024-05-05"],
    ["29/2/2024", "2024-02-29"],
    ["5.3.2024 9:30", "2024-03-05T09:30"],
    ["2024/03/05, 14:30:59", "2024-03-05T14:30"],
  ])("of %s is %s", (text, date) => {
    expect(read(text)).toEqual({ run: expect.objectContaining({ date }), unread: [] });
  });
  it.each([
    ["3.7.", "2025-07-03"],
    ["3.7", "2025-07-03"],
    ["5 March", "2025-03-05"],
    ["March 5th", "2025-03-05"],
    ["13/4", "2025-04-13"],
  ])("of %s has its year from the option", (text, date) => {
    expect(read(text, { year: 2025 }).run.date).toBe(date);
    expect(read(text).run.date).toBeUndefined();
    expect(read(text).unread).toMatchObject([{ heading: "Date", text, problem: { code: "unreadable" } }]);
  });
  it.each([
    ["3/4/2024", "day-first", "2024-04-03"],
    ["3/4/2024", "month-first", "2024-03-04"],
    ["03-04-24", "day-first", "2024-04-03"],
    ["3.4.2024", "month-first", "2024-04-03"],
  ] as const)("of %s, %s, is %s", (text, dates, date) => {
    expect(read(text, { dates }).run.date).toBe(date);
  });
  it.each([
    ["3/4/2024", ["2024-04-03", "2024-03-04"]],
    ["3-4-2024", ["2024-04-03", "2024-03-04"]],
    ["24-03-05", ["2024-03-05", "2005-03-24"]],
  ])("of %s may be two, and is listed with both", (text, readings) => {
    const { run, unread } = read(text);
    expect(run.note).toBe(`Date: ${text}`);
    expect(unread).toMatchObject([{ problem: { code: "ambiguous", path: "/Date", expected: { readings } } }]);
  });
  it.each([
    "a Sunday",
    "32.8.2024",
    "30.2.2024",
    "4.13.2024",
    "31/31/2024",
    "29/2/2023",
    "5 Marvel 2024",
    "March 2024",
    "2024",
    "45356",
    "3.4.5.6",
    "5.3.2024 25:00",
  ])("of %s is no day: it is listed, and stays in the note", (text) => {
    const { run, unread } = read(text, { year: 2025 });
    expect(run.date).toBeUndefined();
    expect(run.note).toBe(`Date: ${text}`);
    expect(unread).toEqual([
      {
        heading: "Date",
        column: 4,
        row: 1,
        text,
        whole: false,
        reason: expect.stringMatching(/^Date must be an? (?:ISO )?date such as .*, got "/),
        problem: expect.objectContaining({ code: "unreadable", path: "/Date", actual: text }),
      },
    ]);
  });
  it("refuses an unknown order", () => {
    expect(() => readRunNotes([], { dates: anyOf("year-first") })).toThrow(
      new RangeError('readRunNotes: options.dates must be "day-first" or "month-first", got "year-first"'),
    );
  });
});

describe("a date of a spreadsheet", () => {
  const inVienna = (work: () => void): void => {
    const zone = process.env["TZ"];
    process.env["TZ"] = "Europe/Vienna";
    try {
      work();
    } finally {
      if (zone === undefined) delete process.env["TZ"];
      else process.env["TZ"] = zone;
    }
  };
  it.each([
    ["midnight in UTC", new Date(Date.UTC(2024, 2, 5)), "2024-03-05"],
    ["midnight here", new Date(2024, 2, 5), "2024-03-05"],
    ["noon here", new Date(2024, 6, 5, 12), "2024-07-05"],
  ])("at %s is that day", (_, date, text) => {
    inVienna(() => {
      expect(dayText(date)).toBe(text);
      expect(read(date)).toEqual({ run: expect.objectContaining({ date: text }), unread: [] });
    });
  });
  it("without a day is listed", () => {
    expect(read(new Date(NaN)).unread).toMatchObject([{ text: "no date" }]);
  });
});
