/* Rows of films that were pushed. All rows are invented. */
import { describe, expect, it } from "vitest";
import { readRunNotes } from "../../src/index.js";

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
  it.each(["yes", "a bit", "pushed", "+9"])("is rejected where it says no stops: %j", (Push) => {
    expect(read({ Push }).rejected[0]?.problems).toMatchObject([{ path: "/Push" }]);
  });
  it.each([
    [{ Pull: "1" }, -1],
    [{ Pull: "+1" }, -1],
    [{ "Push (stops)": "2" }, 2],
    [{ Gepusht: "1" }, 1],
    [{ Note: "pushed 1 stop" }, 1],
    [{ Note: "window open. pushed +1, grainy" }, 1],
    [{ Bemerkung: "um 1 Blende gepusht" }, 1],
  ])("is known by its heading or its remark: %j", (cells, stops) => {
    expect(read(cells).runs).toMatchObject([{ timeS: 780, pushStops: stops }]);
  });
  it.each(["no push", "not pushed", "push the shadows next time", "pushed 3 times"])(
    "is a normal one with the remark %j",
    (Note) => {
      expect(read({ Note }).runs).toMatchObject([{ timeS: 780, note: Note }]);
    },
  );
  it("goes by its column where a remark says another push", () => {
    expect(read({ Push: "0", Note: "pushed 1 stop" }).runs[0]).not.toHaveProperty("pushStops");
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
