/* Rows of films that were pushed. All rows are invented. */
import { describe, expect, it } from "vitest";
import { describeProblem, readRunNotes } from "../../src/index.js";
import { de } from "../../src/texts/de.js";

const base = { Time: "13:00", Temp: "20 °C", Outcome: "good" };
const read = (cells: object) => readRunNotes([{ ...base, ...cells }]);

describe("a row of a pushed film", () => {
  it.each<[unknown, number]>([
    ["+1", 1],
    ["-1", -1],
    ["\u22121", -1],
    [1, 1],
    ["N+1", 1],
    ["N - 1", -1],
    ["push 1", 1],
    ["+1 push", 1],
    ["pull 1", -1],
    ["1 1/2", 1.5],
    ["0,5", 0.5],
    ["pushed one stop", 1],
    ["pushed by 2 stops", 2],
    ["1 Blende gepusht", 1],
    ["push 1/3", 1 / 3],
    ["+1⅔", 5 / 3],
    ["pull -1", -1],
  ])("is not taken for a normal one: %j", (Push, stops) => {
    expect(read({ Push }).runs).toEqual([
      { timeS: 780, temperatureC: 20, pushStops: stops, outcome: { kind: "good" } },
    ]);
  });
  it.each(["0", 0, "", "N", "normal", "none", "no", "-", "box speed", "not pushed"])(
    "is a normal one where it was not pushed: %j",
    (Push) => {
      expect(read({ Push })).toMatchObject({
        runs: [{ timeS: 780, outcome: { kind: "good" } }],
        rejected: [],
        unread: [],
      });
      expect(read({ Push }).runs[0]).not.toHaveProperty("note");
      expect(read({ Push }).runs[0]).not.toHaveProperty("pushStops");
    },
  );
  it.each(["yes", "a bit", "pushed", "push to 800", "EI 800", "no idea"])(
    "is rejected where it says no stops, and its cell is quoted: %j",
    (Push) => {
      expect(read({ Push }).rejected[0]?.problems).toMatchObject([
        { path: "/Push", code: "unreadable", message: expect.stringMatching(`, got "${Push}"$`) },
      ]);
    },
  );
  it("is rejected beyond the range", () => {
    expect(read({ Push: "+9" }).rejected[0]?.problems).toMatchObject([{ code: "out-of-range" }]);
    expect(read({ Note: "pushed 9 stops" }).rejected[0]?.problems).toMatchObject([{ path: "/Note" }]);
  });
  it.each([
    [{ Push: "push -1" }, "Push"],
    [{ Pull: "push 1" }, "Pull"],
    [{ Note: "pushed -1 stop, grainy" }, "Note"],
  ])("is asked about where word and sign contradict: %j", (cells, heading) => {
    const { runs, rejected } = read(cells);
    expect(runs).toEqual([]);
    expect(rejected[0]?.problems).toMatchObject([
      { path: `/${heading}`, code: "ambiguous", expected: { readings: ["+1", "-1"] } },
    ]);
  });
  it.each([
    [{ Pull: "1" }, -1],
    [{ Pull: "+1" }, -1],
    [{ Pull: "-1" }, -1],
    [{ Pull: "1 stop" }, -1],
    [{ Pull: "1/2" }, -0.5],
    [{ "Pull (stops)": "1" }, -1],
    [{ "Push (stops)": "2" }, 2],
    [{ "Push/Pull": "-1" }, -1],
    [{ "Push / Pull": "+1" }, 1],
    [{ "Push-Pull (stops)": "pull 1" }, -1],
    [{ "Push +/-": "+1" }, 1],
    [{ "Push Pull": "1" }, 1],
    [{ "Push (±)": "-1" }, -1],
    [{ "Push?": "1" }, 1],
    [{ Pushen: "1" }, 1],
    [{ Gepusht: "1" }, 1],
    [{ Note: "pushed 1 stop" }, 1],
    [{ Note: "window open. pushed +1, grainy" }, 1],
    [{ Note: "film was pushed by 1 stop; grainy" }, 1],
    [{ Note: "Pulled one stop!" }, -1],
    [{ Note: "push 1 stop" }, 1],
    [{ Note: "1 stop push" }, 1],
    [{ Note: "grainy. +1 push." }, 1],
    [{ Bemerkung: "um 1 Blende gepusht" }, 1],
    [{ Bemerkung: "Film wurde um 1 1/2 Blenden gepusht" }, 1.5],
  ])("is known by its heading or its remark: %j", (cells, stops) => {
    expect(read(cells)).toMatchObject({ runs: [{ timeS: 780, pushStops: stops }], unread: [] });
  });
  it.each(["no push", "not pushed", "grainy, kein Push", "window open"])(
    "is a normal one with the remark %j",
    (Note) => {
      const { runs, unread } = read({ Note });
      expect(runs).toEqual([{ timeS: 780, temperatureC: 20, outcome: { kind: "good" }, note: Note }]);
      expect(unread).toEqual([]);
    },
  );
  it.each([
    "should have pushed 1 stop",
    "next time push 1 stop",
    "next time, push 1 stop",
    "needs 1 stop push",
    "could be pushed 1 stop",
    "never push 1 stop again",
    "pushed 1 stop?",
    "not pushed 1 stop",
    "nächstes Mal 1 Blende pushen",
    "evtl. 1 Blende pushen",
    "hätte 1 Blende pushen sollen",
    "push the shadows next time",
    "pushed 3 times",
    "pushed",
    "gepusht",
  ])("is a normal one, and told, with the remark %j", (Note) => {
    const { runs, unread } = read({ Note });
    expect(runs).toEqual([{ timeS: 780, temperatureC: 20, outcome: { kind: "good" }, note: Note }]);
    expect(unread).toMatchObject([
      { heading: "Note", column: 4, row: 1, text: Note, whole: false, problem: { path: "/Note" } },
    ]);
  });
  it("is told in German too", () => {
    const [one] = read({ Note: "pushed" }).unread;
    expect(describeProblem(one!.problem, de.problems)).toBe(
      "nötig ist eine Zahl von Blenden wie „1 Blende gepusht“ oder " + "„nicht gepusht“, hier steht „pushed“",
    );
  });
  it("tells no wish where its push is known", () => {
    expect(read({ Push: "+1", Note: "pushed, next time push 2 stops" })).toMatchObject({
      runs: [{ pushStops: 1 }],
      unread: [],
    });
  });
  it.each([
    [{ Push: "0", Note: "pushed 1 stop" }, "/Push", ["0", "pushed 1 stop"]],
    [{ Push: "+1", Note: "grainy, pulled 2 stops" }, "/Push", ["+1", "pulled 2 stops"]],
    [{ Push: "+1", Note: "not pushed" }, "/Push", ["+1", "not pushed"]],
    [{ Note: "pushed 1 stop; pushed 2 stops" }, "/Note", ["pushed 1 stop", "pushed 2 stops"]],
    [{ Note: "pushed 1 stop", Remark: "not pushed" }, "/Note", ["pushed 1 stop", "not pushed"]],
  ])("is asked about where it is said in two ways: %j", (cells, path, readings) => {
    const { runs, rejected } = read(cells);
    expect(runs).toEqual([]);
    expect(rejected[0]?.problems).toMatchObject([{ path, code: "ambiguous", expected: { readings } }]);
  });
  it("is read where it is said twice alike", () => {
    expect(read({ Push: "+1", Note: "pushed 1 stop" }).runs).toMatchObject([{ pushStops: 1 }]);
  });
  it("that failed is kept with its push", () => {
    expect(read({ Push: "+1", Outcome: "failed" }).runs).toEqual([
      { timeS: 780, temperatureC: 20, pushStops: 1, outcome: { kind: "failed" } },
    ]);
  });
  it("keeps its remark in the note", () => {
    expect(read({ Note: "pushed 1 stop, grainy" }).runs).toMatchObject([
      { pushStops: 1, note: "pushed 1 stop, grainy" },
    ]);
  });
  it("says all that is wrong with it", () => {
    expect(read({ Push: "much", Temp: "cold" }).rejected[0]?.problems).toHaveLength(2);
    expect(read({ Push: "+1", Pull: "1" }).rejected[0]?.problems).toMatchObject([
      { expected: { headings: ["Push", "Pull"] } },
    ]);
  });
});
