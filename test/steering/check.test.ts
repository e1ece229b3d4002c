/* One reading judged for a form, and a log checked from a file. */
import { describe, expect, it } from "vitest";
import {
  checkLog,
  equivalentTime,
  isInputError,
  judgeReading,
  type LogCheck,
  type SteeringReading,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";
const steady: readonly SteeringReading[] = [0, 60, 120].map((timeS) => ({ timeS, temperatureC: 14 }));

describe("judgeReading", () => {
  const judged = (temperatureC: number | null, timeS = 180, options = {}) =>
    judgeReading(steady, { timeS, temperatureC }, options);
  it("believes what agrees", () => {
    expect(judged(14.2)).toEqual({ trusted: true, cautions: [] });
    expect(judgeReading([], { timeS: 0, temperatureC: 14 })).toEqual({ trusted: true, cautions: [] });
  });
  it("asks back about what does not, at the reading", () => {
    for (const [temperatureC, code] of [
      [57, "maybe-fahrenheit"],
      [-10, "maybe-celsius"],
      [20, "reading-jump"],
      [85, "reading-out-of-range"],
      [null, "reading-missing"],
    ] as const) {
      const { trusted, cautions } = judged(temperatureC);
      expect(trusted).toBe(false);
      expect(cautions.map((one) => [one.code, one.path])).toEqual([[code, "/reading/temperatureC"]]);
    }
  });
  it("has the other meaning as a number", () => {
    expect(judged(57).celsius).toBeCloseTo(13.889, 3);
    expect(judged(20).celsius).toBeUndefined();
  });
  it("says that it comes in the wrong order, and believes it all the same", () => {
    const { trusted, cautions } = judged(14, 90);
    expect(trusted).toBe(true);
    expect(cautions.map((one) => [one.code, one.path])).toEqual([["log-order", "/reading/timeS"]]);
  });
  it("heeds vessel, air and what the bath was mixed to", () => {
    const still = { vessel: "tray-in-air", ambientC: 14 } as const;
    expect(judged(16).trusted).toBe(true);
    expect(judged(16, 180, still).trusted).toBe(false);
    expect(judgeReading([], { timeS: 0, temperatureC: 38 }, { temperatureC: 38 }).trusted).toBe(true);
    expect(judgeReading([], { timeS: 0, temperatureC: 38 }).trusted).toBe(false);
  });
  it.each<readonly [string, unknown, unknown, unknown, string]>([
    ["no log", null, { timeS: 0, temperatureC: 14 }, {}, "/log"],
    ["a log of no readings", [1], { timeS: 0, temperatureC: 14 }, {}, "/log/0"],
    ["no reading", [], null, {}, "/reading"],
    ["a reading without a time", [], { temperatureC: 14 }, {}, "/reading/timeS"],
    ["no options", [], { timeS: 0, temperatureC: 14 }, 5, "/options"],
    ["a wrong vessel", [], { timeS: 0, temperatureC: 14 }, { vessel: "x" }, "/options/vessel"],
    ["a wrong bath", [], { timeS: 0, temperatureC: 14 }, { temperatureC: 101 }, "/options/temperatureC"],
  ])("refuses %s", (_, log, reading, options, path) => {
    let thrown: unknown;
    try {
      judgeReading(anyOf(log), anyOf(reading), anyOf(options));
    } catch (error) {
      thrown = error;
    }
    expect(isInputError(thrown) && thrown.path).toBe(path);
  });
});

describe("checkLog", () => {
  const sound = (input: unknown): Extract<LogCheck, { ok: true }> => {
    const check = checkLog(input);
    if (!check.ok) throw new Error(JSON.stringify(check.problems));
    return check;
  };
  it("hands back a sound log as it is", () => {
    expect(checkLog(steady)).toEqual({ ok: true, log: steady, cautions: [] });
    const changed = [steady[0], { timeS: 60, temperatureC: 20, changed: true }];
    expect(sound(changed).log).toEqual(changed);
    expect(sound(JSON.parse(JSON.stringify(sound(changed).log))).log).toEqual(changed);
  });
  it("puts it in order, each moment once, so that other functions take it", () => {
    const { log, cautions } = sound([
      { timeS: 120, temperatureC: 14 },
      { timeS: 0, temperatureC: 14.2 },
      { timeS: 60, temperatureC: 20 },
      { timeS: 60, temperatureC: 14.1 },
      { timeS: 120, temperatureC: 14 },
    ]);
    expect(log.map(({ temperatureC }) => temperatureC)).toEqual([14.2, 14.1, 14]);
    expect(cautions.map(({ code, path }) => [code, path])).toEqual([
      ["reading-jump", "/2/temperatureC"],
      ["log-order", "/1/timeS"],
    ]);
    // Two that may both be right: the first.
    const twice = [
      { timeS: 0, temperatureC: 14 },
      { timeS: 0, temperatureC: 14.2 },
    ];
    expect(sound(twice).log).toEqual([twice[0]]);
    expect(equivalentTime(log, 14)).toBeGreaterThan(100);
  });
  it("leaves out what is no reading, and keeps what may be in another unit", () => {
    const { log, cautions } = sound([
      { timeS: 0, temperatureC: null },
      { timeS: 60 },
      { timeS: 120, temperatureC: NaN },
      { timeS: 180, temperatureC: 85 },
      { timeS: 240, temperatureC: 57 },
      { timeS: 300, temperatureC: -5 },
      { timeS: 360, temperatureC: 14 },
    ]);
    expect(log.map(({ timeS }) => timeS)).toEqual([240, 360]);
    expect(cautions.map(({ path }) => path)).toEqual([4, 5, 0, 1, 2, 3].map((i) => `/${i}/temperatureC`));
  });
  it("names a field that is not read, and is no log where no reading names a temperature", () => {
    const check = checkLog([{ timeS: 0, tempC: 20 }]);
    expect(check).toMatchObject({ ok: false, problems: [{ code: "missing", path: "/0/temperatureC" }] });
    expect(check.cautions.map(({ code, path, data }) => [code, path, data])).toEqual([
      ["reading-missing", "/0/temperatureC", { text: null }],
      ["unknown-field", "/0/tempC", { field: "tempC", nearest: "temperatureC" }],
    ]);
    expect(sound([{ timeS: 0, temperatureC: null }]).log).toEqual([]);
    const misspelt = { timeS: 60, temperatureC: 18, chnaged: true };
    const unknown = { code: "unknown-field", data: { field: "chnaged", nearest: "changed" } };
    expect(sound([steady[0], misspelt]).cautions).toContainEqual(
      expect.objectContaining({ ...unknown, path: "/1/chnaged" }),
    );
    expect(judgeReading(steady, anyOf(misspelt), anyOf({ ambientc: 20 })).cautions).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ ...unknown, path: "/reading/chnaged" }),
        expect.objectContaining({
          path: "/options/ambientc",
          data: { field: "ambientc", nearest: "ambientC" },
        }),
      ]),
    );
    const many = Array.from({ length: 80 }, (_, i) => ({ timeS: i, temperatureC: 18, note: "" }));
    expect(sound(many).cautions.length).toBe(50);
  });
  it("reports every problem of shape, none thrown", () => {
    const check = checkLog([
      { timeS: "0", temperatureC: 14 },
      null,
      { timeS: -5, temperatureC: "18,5" },
      { timeS: 60, temperatureC: "18,5" },
      { timeS: 90, temperatureC: 14, changed: 1 },
    ]);
    expect(check.ok ? [] : check.problems.map(({ path, code }) => [path, code])).toEqual([
      ["/0/timeS", "wrong-type"],
      ["/1", "missing"],
      ["/2/timeS", "out-of-range"],
      ["/3/temperatureC", "wrong-type"],
      ["/4/changed", "wrong-type"],
    ]);
    expect(check.ok || check.problems[3]!.expected).toMatchObject({ parse: "parseTemperature" });
    const broken = {
      get timeS(): number {
        throw new Error("a bug");
      },
    };
    expect(checkLog([broken])).toMatchObject({
      ok: false,
      problems: [{ code: "wrong-type", path: "", expected: { must: "plain-data" } }],
    });
    for (const none of [undefined, null, "x", {}, []]) expect(checkLog(none)).toMatchObject({ ok: false });
  });
});
