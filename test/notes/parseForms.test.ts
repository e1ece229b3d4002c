/* Dates and outcomes as people write them, one at a time: what a field of a form takes. */
import { describe, expect, it } from "vitest";
import { parseDate, parseOutcome, readRunNotes } from "../../src/index.js";
import { anyOf, caught } from "../helpers.js";

describe("parseDate", () => {
  it.each([
    ["2024-03-05", {}, "2024-03-05"],
    [" 5.3.2024 ", {}, "2024-03-05"],
    ["Di, 5. März 24", {}, "2024-03-05"],
    ["March 5th, 2024 14:30", {}, "2024-03-05T14:30"],
    ["5 Mar", { year: 2024 }, "2024-03-05"],
    ["3/4/2024", { dates: "day-first" }, "2024-04-03"],
    ["3/4/2024", { dates: "month-first" }, "2024-03-04"],
  ] as const)("reads %j with %j", (text, options, date) => {
    expect(parseDate(text, options)).toBe(date);
  });
  it.each([
    ["3/4/2024", "ambiguous", { readings: ["2024-04-03", "2024-03-04"] }],
    ["5 March", "unreadable", { format: "date with its year" }],
    ["soon", "unreadable", { format: "date" }],
    ["30.2.2024", "unreadable", { format: "date" }],
    ["", "empty", { format: "date" }],
    [5, "wrong-type", { format: "date", types: ["text"] }],
  ])("refuses %j", (text, code, expected) => {
    expect(caught(() => parseDate(anyOf(text)))).toMatchObject({
      code,
      path: "/text",
      actual: text,
      expected,
    });
  });
  it("refuses what is longer than any date at once", () => {
    expect(parseDate(`5.3.2024${" ".repeat(900)}14:30`)).toBe("2024-03-05T14:30");
    for (const long of [",".repeat(1e6) + "x", `5.3.2024${" ".repeat(1e6)}14:30`])
      expect(caught(() => parseDate(long))).toMatchObject({ code: "unreadable", path: "/text" });
  });
  it("refuses an option that is none", () => {
    expect(caught(() => parseDate("5 March", { year: 2024.5 }))).toMatchObject({ path: "/options/year" });
    expect(caught(() => parseDate("5 March", { year: 24 }))).toMatchObject({ path: "/options/year" });
    expect(caught(() => parseDate("5 March", anyOf({ dates: "first" })))).toMatchObject({
      code: "not-one-of",
      path: "/options/dates",
    });
    expect(caught(() => parseDate("5 March", anyOf(1)))).toMatchObject({ path: "/options" });
  });
});

describe("parseOutcome", () => {
  it.each([
    ["good", { kind: "good" }],
    ["etwas dünn", { kind: "thin" }],
    ["over 1/2", { kind: "steps", steps: 0.5 }],
    ["under 0,5", { kind: "steps", steps: -0.5 }],
    [" x1.2 ", { kind: "judged", timeRatio: 1.2 }],
    ["15 % länger", { kind: "judged", timeRatio: 1.15 }],
    ["fogged", { kind: "fogged" }],
    ["1 step under", { kind: "steps", steps: -1 }],
    ["One step over", { kind: "steps", steps: 1 }],
    ["half a step thin", { kind: "steps", steps: -0.5 }],
    ["1½ steps too dense", { kind: "steps", steps: 1.5 }],
    ["too dark", { kind: "dense" }],
    ["etwas zu dunkel", { kind: "dense" }],
    // What was 1.1 times the right time is too long by 10 %, what was half of it too short by 50 %.
    ["10% too long", { kind: "judged", timeRatio: 1 / 1.1 }],
    ["50 % zu kurz", { kind: "judged", timeRatio: 2 }],
  ])("reads %j, and so does a cell of notes", (text, outcome) => {
    expect(parseOutcome(text)).toEqual(outcome);
    const { runs } = readRunNotes([{ Time: "8:30", Temp: "20C", Outcome: text }]);
    expect(runs[0]?.outcome).toEqual(outcome);
  });
  it.each([
    ["+1", "ambiguous", { readings: ["over 1", "under 1"] }],
    ["flat", "ambiguous", { readings: ["thin", "good"] }],
    ["blue", "unreadable", { format: "outcome" }],
    ["1 stop under", "unreadable", { format: "outcome" }],
    ["half a step", "unreadable", { format: "outcome" }],
    ["dark", "unreadable", { format: "outcome" }],
    ["too long", "unreadable", { format: "outcome" }],
    ["over 11", "out-of-range", { min: -10, max: 10 }],
    ["x0", "out-of-range", { above: 0, max: 100 }],
    ["", "empty", { format: "outcome" }],
    [1, "wrong-type", { types: ["text"] }],
  ])("refuses %j", (text, code, expected) => {
    expect(caught(() => parseOutcome(anyOf(text)))).toMatchObject({ code, path: "/text", expected });
  });
});
