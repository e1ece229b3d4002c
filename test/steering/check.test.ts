/* One reading judged for a form, and a log checked from a file. */
import { describe, expect, it } from "vitest";
import {
  checkLog,
  equivalentTime,
  isInputError,
  judgeReading,
  steer,
  type LogCheck,
  type SteerInput,
  type SteeringReading,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { fc, real, test } from "../property.js";
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
    // Two that may both be right: their mean.
    const twice = [
      { timeS: 0, temperatureC: 14 },
      { timeS: 0, temperatureC: 14.2 },
    ];
    expect(sound(twice).log).toEqual([{ timeS: 0, temperatureC: 14.1 }]);
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
    expect(log.map(({ timeS }) => timeS)).toEqual([240, 300, 360]);
    expect(cautions.map(({ path }) => path)).toEqual([4, 5, 0, 1, 2, 3].map((i) => `/${i}/temperatureC`));
  });
  it("names a field that is not read, and refuses a log in which no reading names a temperature", () => {
    const check = checkLog([{ timeS: 0, tempC: 20 }]);
    expect(check).toMatchObject({ ok: false, problems: [{ code: "missing", path: "/0/temperatureC" }] });
    expect(check.cautions.map(({ code, path, data }) => [code, path, data])).toEqual([
      ["reading-missing", "/0/temperatureC", { text: null }],
      ["unknown-field", "/0/tempC", { field: "tempC", nearest: "temperatureC" }],
    ]);
    for (const temperatureC of [null, undefined, 85])
      expect(sound([{ timeS: 0, temperatureC }]).log).toEqual([]);
    // What is undefined is missing once it was stored.
    const gap = [steady[0], { timeS: 60, temperatureC: undefined }];
    expect(checkLog(JSON.parse(JSON.stringify(gap)))).toEqual(checkLog(gap));
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

describe("steer by a log that was checked", () => {
  const baseline = { timeS: 900, temperatureC: 20 };
  const agrees = (log: readonly SteeringReading[], more: Partial<SteerInput> = {}): void => {
    const check = checkLog(log);
    // Where every reading failed, none is left to steer by.
    if (!check.ok || check.log.length === 0) return;
    const [given, checked] = [log, check.log].map((one) =>
      steer({ baseline, conditions: {}, nowS: 2000, ...more, log: one }),
    );
    expect(checked?.total).toEqual(given?.total);
    expect(checked?.equivalent).toEqual(given?.equivalent);
  };
  const changed = true;
  it.each<readonly [string, readonly SteeringReading[]]>([
    ["two of one moment", [...steady, { timeS: 120, temperatureC: 14.4 }]],
    [
      "two of one moment that outvote another",
      [...[20, 26, 26.2].map((temperatureC, i) => ({ timeS: i && 60, temperatureC }))],
    ],
    ["a change at the moment of a reading", [...steady, { timeS: 120, temperatureC: 22, changed }]],
    [
      "a change to the same temperature",
      [...steady, { timeS: 120, temperatureC: 14, changed }, { timeS: 300, temperatureC: 19 }],
    ],
    ["a change at pour-in", [...steady, { timeS: 0, temperatureC: 22, changed }]],
    [
      "a change that a failed reading told",
      [...steady, { timeS: 240, temperatureC: null, changed }, { timeS: 300, temperatureC: 23 }],
    ],
    [
      "readings in other units",
      [...steady, { timeS: 180, temperatureC: -10 }, { timeS: 240, temperatureC: 104, changed }],
    ],
  ])("gives the same time: %s", (_, log) => {
    agrees(log);
    agrees([...log].reverse());
  });
  const reading = fc.record<SteeringReading>({
    timeS: fc.oneof(fc.constantFrom(0, 60, 60, 120, 120.5, 300, 300, 1e7), real(0, 1000)),
    temperatureC: fc.oneof(
      fc.constantFrom(20, 20, 20.3, 14, 22, 68, 57, -10, 104, 0, 85, -127, null, undefined, NaN),
      real(5, 32),
      fc.double(),
    ),
    changed: fc.constantFrom(undefined, undefined, undefined, changed),
  });
  test.prop([
    fc.array(reading, { minLength: 1, maxLength: 12 }),
    fc.record({
      nowS: fc.constantFrom(0, 299.3, 300, 2000),
      conditions: fc.record({ temperatureC: fc.constantFrom(undefined, 14, 20, 38, 68) }),
      ambientC: fc.constantFrom(undefined, 8, 20, 68),
      vessel: fc.constantFrom(undefined, "tray-in-air" as const, "steel-tank-in-water" as const),
    }),
  ])("gives the same time by any log, and the log is its own clean copy", (log, more) => {
    agrees(log, more);
    const check = checkLog(log);
    if (!check.ok || check.log.length === 0) return;
    expect(checkLog(check.log)).toMatchObject({ ok: true, log: check.log });
    check.log.forEach(({ timeS }, i) => {
      expect(timeS).toBeGreaterThan(check.log[i - 1]?.timeS ?? -1);
    });
  });
});
