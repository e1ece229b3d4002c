/* Rows of films that were pushed. All rows are invented. */
import { describe, expect, it } from "vitest";
import { pushFactor, readRunNotes, unpushedRun } from "../../src/index.js";

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
    const { runs, rejected } = read({ Push });
    expect(runs).toEqual([]);
    expect(rejected[0]?.reason).toMatch(/unpushedRun/);
    expect(rejected[0]?.problems).toMatchObject([{ path: "/Push", expected: { stops } }]);
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
    expect(read(cells).rejected[0]?.problems).toMatchObject([{ expected: { stops } }]);
  });
  it.each(["no push", "not pushed", "push the shadows next time", "pushed 3 times"])(
    "is a normal one with the remark %j",
    (Note) => {
      expect(read({ Note }).runs).toMatchObject([{ timeS: 780, note: Note }]);
    },
  );
  it("goes by its column where a remark says another push", () => {
    expect(read({ Push: "0", Note: "pushed 1 stop" }).runs).toHaveLength(1);
  });
  it("loses its push by unpushedRun where it says how well it was read, with the time as given in its note", () => {
    const { runs } = read({ Push: "+1", sd: "0,1" });
    const plain = read({ sd: "0.1" }).runs[0]!;
    expect(runs).toEqual([{ ...unpushedRun(plain, 1), note: "Time: 13:00; Push: +1" }]);
    expect(runs[0]?.timeS).toBeCloseTo(780 / pushFactor(1), 9);
    // A measured gradient says it too: it is good to 0.05/0.6/0.7.
    const measured = read({ Push: "+1", gamma: 0.6, wanted: 0.6 }).runs[0]!;
    expect(measured.timeS).toBeCloseTo(780 / pushFactor(1), 9);
    expect(measured.outcome).toMatchObject({ logSd: Number(Math.hypot(0.05 / 0.6 / 0.7, 0.09).toFixed(4)) });
  });
  it("that failed is kept as it is, with its push in the note", () => {
    expect(read({ Push: "+1", Outcome: "failed" }).runs).toEqual([
      { timeS: 780, temperatureC: 20, outcome: { kind: "failed" }, note: "Time: 13:00; Push: +1" },
    ]);
  });
  it("says all that is wrong with it, its push only where the rest can be read", () => {
    expect(read({ Push: "+1", Temp: "cold" }).rejected[0]?.problems).toMatchObject([{ path: "/Temp" }]);
    expect(read({ Push: "much", Temp: "cold" }).rejected[0]?.problems).toHaveLength(2);
    expect(read({ Push: "+1", Pull: "1" }).rejected[0]?.problems).toMatchObject([
      { expected: { headings: ["Push", "Pull"] } },
    ]);
  });
});
