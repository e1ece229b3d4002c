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
  it.each(["Schleier, sonst gut", "gut, aber Schleier"])(
    "leaves fog beside a judgement in the note: %s",
    (text) => {
      const { runs, unread } = readRunNotes([{ Zeit: "8:30", Temperatur: "20 °C", Ergebnis: text }]);
      expect(runs).toMatchObject([{ outcome: { kind: "good" }, note: `Ergebnis: ${text}` }]);
      expect(unread).toEqual([]);
    },
  );
  it("takes no length of something else among the remarks for a judgement", () => {
    const read = (Bemerkung: string) => readRunNotes([{ Zeit: "8:30", Temperatur: "20 °C", Bemerkung }]);
    expect(read("nur 2 min gewässert, zu kurz").rejected[0]?.reason).toBe("outcome is missing");
    expect(read("zu kurz entwickelt, Rotlicht").runs[0]?.outcome).toEqual({ kind: "thin" });
  });
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
    ["two steps dense", { kind: "steps", steps: 2 }],
    ["one step thin", { kind: "steps", steps: -1 }],
    ["three steps too thin", { kind: "steps", steps: -3 }],
    ["2 steps dense", { kind: "steps", steps: 2 }],
    ["0.5 steps thin", { kind: "steps", steps: -0.5 }],
    ["1/2 step dense", { kind: "steps", steps: 0.5 }],
    ["one and a half steps dense", { kind: "steps", steps: 1.5 }],
    ["too dense by two steps", { kind: "steps", steps: 2 }],
    ["over by half a step", { kind: "steps", steps: 0.5 }],
    ["one step overdeveloped", { kind: "steps", steps: 1 }],
    ["eine halbe Stufe zu dünn", { kind: "steps", steps: -0.5 }],
    ["1/2 Stufe zu dünn", { kind: "steps", steps: -0.5 }],
    ["½ Stufe zu duenn", { kind: "steps", steps: -0.5 }],
    ["zwei Stufen zu dicht", { kind: "steps", steps: 2 }],
    ["um eine Stufe zu dicht", { kind: "steps", steps: 1 }],
    ["anderthalb Stufen unterentwickelt", { kind: "steps", steps: -1.5 }],
    ["über 1", { kind: "steps", steps: 1 }],
    ["ueber 1 Stufe", { kind: "steps", steps: 1 }],
    ["unter 0,5", { kind: "steps", steps: -0.5 }],
    ["stark überentwickelt", { kind: "dense" }],
    ["stark unterentwickelt", { kind: "thin" }],
    ["heavily overdeveloped", { kind: "dense" }],
    ["too dark", { kind: "dense" }],
    ["etwas zu dunkel", { kind: "dense" }],
    ["too light", { kind: "thin" }],
    ["etwas zu hell", { kind: "thin" }],
    ["i.O.", { kind: "good" }],
    ["i. O.", { kind: "good" }],
    // What was 1.1 times the right time is too long by 10 %, what was half of it too short by 50 %.
    ["10% too long", { kind: "judged", timeRatio: 1 / 1.1 }],
    ["50 % zu kurz", { kind: "judged", timeRatio: 2 }],
    ["zu kurz", { kind: "thin" }],
    ["zu kurz entwickelt", { kind: "thin" }],
    ["developed too short", { kind: "thin" }],
    ["nicht dicht genug", { kind: "thin" }],
    ["not dense enough", { kind: "thin" }],
    ["nicht lang genug entwickelt", { kind: "thin" }],
    ["etwas zu lang entwickelt", { kind: "dense" }],
    ["zu lange entwickelt", { kind: "dense" }],
    ["zu lang", { kind: "dense" }],
    ["super", { kind: "good" }],
    ["zu dicht, halbe Stufe", { kind: "steps", steps: 0.5 }],
    ["zu dünn (eine Stufe)", { kind: "steps", steps: -1 }],
    ["too thin, half a step", { kind: "steps", steps: -0.5 }],
    ["Schleier, sonst gut", { kind: "good" }],
    ["gut, aber etwas Schleier", { kind: "good" }],
    ["slight fog, otherwise half a step thin", { kind: "steps", steps: -0.5 }],
  ])("reads %j, and so does a cell of notes", (text, outcome) => {
    expect(parseOutcome(text)).toEqual(outcome);
    const { runs } = readRunNotes([{ Time: "8:30", Temp: "20C", Outcome: text }]);
    expect(runs[0]?.outcome).toEqual(outcome);
  });
  it.each([
    ["+1", "ambiguous", { readings: ["over 1", "under 1"] }],
    ["flat", "ambiguous", { readings: ["thin", "good"] }],
    ["blue", "unreadable", { format: "outcome" }],
    // A stop is no step. One of push takes e^0.222 = 1.25 of the time, two e^0.488 = 1.63: to a twentieth.
    ["1 stop under", "ambiguous", { readings: ["under 1", "x1.25"] }],
    ["two stops dense", "ambiguous", { readings: ["over 2", "x0.6"] }],
    ["one stop thin", "ambiguous", { readings: ["under 1", "x1.25"] }],
    ["1 stop over", "ambiguous", { readings: ["over 1", "x0.8"] }],
    ["half a stop too thin", "ambiguous", { readings: ["under 0.5", "x1.1"] }],
    ["over half a stop", "ambiguous", { readings: ["over 0.5", "x0.9"] }],
    ["zwei Blenden zu dicht", "ambiguous", { readings: ["over 2", "x0.6"] }],
    ["1 Blende über", "ambiguous", { readings: ["over 1", "x0.8"] }],
    ["eine halbe Blende unter", "ambiguous", { readings: ["under 0.5", "x1.1"] }],
    ["needs 2 stops more", "ambiguous", { readings: ["under 2", "x1.65"] }],
    ["eine Blende mehr", "ambiguous", { readings: ["under 1", "x1.25"] }],
    ["needs a stop", "ambiguous", { readings: ["over 1", "x0.8", "under 1", "x1.25"] }],
    ["+1 Blende", "ambiguous", { readings: ["over 1", "x0.8", "under 1", "x1.25"] }],
    // No stop of a judgement.
    ["1 stop overexposed", "unreadable", { format: "outcome" }],
    ["1 Blende überbelichtet", "unreadable", { format: "outcome" }],
    ["pushed 1 stop", "unreadable", { format: "outcome" }],
    ["stop bath too warm", "unreadable", { format: "outcome" }],
    ["a stop bath too warm", "unreadable", { format: "outcome" }],
    ["over 9 stops", "unreadable", { format: "outcome" }],
    ["Blende 8", "unreadable", { format: "outcome" }],
    // A density, or steps?
    ["dense 1.2", "unreadable", { format: "outcome" }],
    ["half a step", "unreadable", { format: "outcome" }],
    ["dark", "unreadable", { format: "outcome" }],
    ["hell", "unreadable", { format: "outcome" }],
    ["n.i.O.", "unreadable", { format: "outcome" }],
    ["long", "unreadable", { format: "outcome" }],
    ["fast gut", "unreadable", { format: "outcome" }],
    ["over 11", "out-of-range", { min: -10, max: 10 }],
    ["x0", "out-of-range", { above: 0, max: 100 }],
    ["", "empty", { format: "outcome" }],
    [1, "wrong-type", { types: ["text"] }],
  ])("refuses %j", (text, code, expected) => {
    expect(caught(() => parseOutcome(anyOf(text)))).toMatchObject({ code, path: "/text", expected });
  });
});
