/* Agitation in text. */
import { describe, expect, it } from "vitest";
import { parseAgitation } from "../../src/index.js";
import { anyOf } from "../helpers.js";
const forms = 'an agitation such as "every 30 s", "continuous" or "stand"';

describe("parseAgitation", () => {
  it.each([
    ["continuous", "continuous"],
    [" Continuous ", "continuous"],
    ["STAND", "stand"],
    ["every 30 s", { everyS: 30 }],
    ["every half minute", { everyS: 30 }],
    ["every half a minute", { everyS: 30 }],
    ["5 s every half minute", { everyS: 30 }],
    ["alle halbe Minute", { everyS: 30 }],
    ["alle halbe Minute 5 s", { everyS: 30 }],
    ["jede halbe Minute", { everyS: 30 }],
    ["first 30 s, then every half minute", { everyS: 30 }],
    ["Every  0.5 min", { everyS: 30 }],
    ["every 0,5 min", { everyS: 30 }],
    ["1 min", { everyS: 60 }],
    ["0:30", { everyS: 30 }],
    ["every 1:30", { everyS: 90 }],
    ["1 h", { everyS: 3600 }],
    ["alle 30 s", { everyS: 30 }],
    ["Ständig", "continuous"],
    ["dauernd", "continuous"],
    ["constant", "continuous"],
    ["constantly", "continuous"],
    ["every minute", { everyS: 60 }],
    ["each minute", { everyS: 60 }],
    ["once a minute", { everyS: 60 }],
    ["jede Minute", { everyS: 60 }],
    ["einmal pro Minute", { everyS: 60 }],
    ["alle 30 Sekunden", { everyS: 30 }],
    ["every 1/2 min", { everyS: 30 }],
    ["every 0:30 min", { everyS: 30 }],
    // How long it is moved each time does not count.
    ["5 s every 30 s", { everyS: 30 }],
    ["10 sec every minute", { everyS: 60 }],
    ["4 inversions every 30 s", { everyS: 30 }],
    ["5 Sek. alle 30 Sek.", { everyS: 30 }],
    ["10s/min", { everyS: 60 }],
    ["10 s / min", { everyS: 60 }],
    ["10 s per min", { everyS: 60 }],
    ["10 s a minute", { everyS: 60 }],
    ["10 s jede min", { everyS: 60 }],
    ["5 s/30 s", { everyS: 30 }],
    ["4 inversions per min", { everyS: 60 }],
    // A number of times a minute is a rate.
    ["2/min", { everyS: 30 }],
    ["2x per min.", { everyS: 30 }],
    ["2 x / min", { everyS: 30 }],
    ["1,5 mal pro Minute", { everyS: 40 }],
    ["3 times every 30 s", { everyS: 30 }],
    // Five inversions in each minute are one agitation a minute.
    ["5 inversions/min", { everyS: 60 }],
    ["4 Kippungen pro Minute", { everyS: 60 }],
    ["1 Kippung alle 30 s", { everyS: 30 }],
    // What is done at the start only does not count.
    ["first 30 s, then 10 s every minute", { everyS: 60 }],
    ["30 s first, then 5 s every 30 s", { everyS: 30 }],
    ["First minute continuous, then every 30 s", { everyS: 30 }],
    ["continuous for the first minute, then 10 s/min", { everyS: 60 }],
    ["30 s continuous, then 10 s per min", { everyS: 60 }],
    ["initial 30 s, then once a minute", { everyS: 60 }],
    ["30 s initial agitation, then 5 s every 30 s", { everyS: 30 }],
    ["die ersten 30 s, dann alle 30 s", { everyS: 30 }],
    ["die ersten 30 Sek. ständig, dann jede Minute", { everyS: 60 }],
    ["30 s am Anfang, danach alle 60 s 10 s", { everyS: 60 }],
    ["1 min initially, then stand", "stand"],
    // The interval first.
    ["alle 30 s 5 s", { everyS: 30 }],
    ["every 30 s for 5 s", { everyS: 30 }],
    ["every minute for 10 s", { everyS: 60 }],
    ["every 2 min for 10 s", { everyS: 120 }],
    ["jede Minute 10 s lang", { everyS: 60 }],
    ["alle 30 s 1x kippen", { everyS: 30 }],
    ["every 1 min 30 s", { everyS: 90 }],
    ["Kipprhythmus 30 s", { everyS: 30 }],
    ["Kipprhythmus: alle 30 s", { everyS: 30 }],
    ["Invert every minute", { everyS: 60 }],
    ["rotary", "continuous"],
    // A tray is rocked all the time, unless it is said how often.
    ["schaukeln", "continuous"],
    ["wiegen", "continuous"],
    ["ständig schaukeln", "continuous"],
    ["rocking", "continuous"],
    ["wiegen alle 30 s", { everyS: 30 }],
    ["schaukeln: alle 30 s", { everyS: 30 }],
    ["rock every minute", { everyS: 60 }],
    ["Rotation", "continuous"],
    ["in rotation", "continuous"],
  ] as const)("reads %j", (text, agitation) => {
    expect(parseAgitation(text)).toEqual(agitation);
  });
  it.each([
    "",
    "often",
    "   ",
    "every",
    "30 s every",
    "30 s, gently",
    "x every 30 s",
    "everyother 30 s",
    "stand 30 s",
    "-30 s",
    "10s/",
    "per minute or so",
    "rotary 30 s",
    "first 30 s",
    "first 30 s, then",
    "then every 30 s",
    "first 30 s every minute",
    "every 30 s 5",
    "Kipprhythmus",
  ])("refuses %j", (text) => {
    expect(() => parseAgitation(text)).toThrow(
      new RangeError(`parseAgitation: text must be ${forms}, got ${JSON.stringify(text)}`),
    );
  });
  it.each([
    ["30", ["30 min", "30 s"]],
    ["every 60", ["every 60 min", "every 60 s"]],
    ["5 s every 30", ["5 s every 30 min", "5 s every 30 s"]],
    ["Alle 60 ", ["Alle 60 min", "Alle 60 s"]],
    ["Kipprhythmus 30", ["Kipprhythmus 30 min", "Kipprhythmus 30 s"]],
    ["first 30 s, then every 60", ["first 30 s, then every 60 min", "first 30 s, then every 60 s"]],
    // As many times a minute, or as many turns once a minute: common practice.
    ["5x/min", ["5 inversions/min", "every 12 s"]],
    ["5 x per min", ["5 inversions/min", "every 12 s"]],
    ["4x per min.", ["4 inversions/min", "every 15 s"]],
    ["7 mal pro Minute", ["7 inversions/min", "every 8.57 s"]],
    ["3/min", ["3 inversions/min", "every 20 s"]],
    ["every 1.500 s", ["every 1.5 s", "every 1500 s"]],
  ])("says both meanings of %j, whole", (text, readings) => {
    expect(() => parseAgitation(text)).toThrow(
      expect.objectContaining({
        code: "ambiguous",
        actual: text.trimEnd(),
        expected: expect.objectContaining({ format: "agitation", readings }),
      }),
    );
    for (const reading of readings) expect(parseAgitation(reading)).toHaveProperty("everyS");
  });
  it("finds blanks empty", () => {
    expect(() => parseAgitation("  ")).toThrow(expect.objectContaining({ code: "empty" }));
  });
  it("refuses an interval of nothing, and one of more than an hour", () => {
    expect(() => parseAgitation("every 0 s")).toThrow(
      new RangeError("parseAgitation: text must be above 0 and at most 3600 s, got 0"),
    );
    expect(() => parseAgitation("2 h")).toThrow(
      new RangeError("parseAgitation: text must be above 0 and at most 3600 s, got 7200"),
    );
  });
  it.each([
    ["30 s every 5 s", 30, 5],
    ["0,5 s every 0.4 s", 0.5, 0.4],
    ["70 sec. every minute", 70, 60],
  ])("refuses a movement longer than its interval: %j", (text, min, actual) => {
    expect(() => parseAgitation(text)).toThrow(
      expect.objectContaining({
        code: "out-of-range",
        path: "/text",
        expected: expect.objectContaining({ min }),
        actual,
      }),
    );
  });
  it("takes a movement as long as its interval, and a count of movements", () => {
    expect(parseAgitation("30 s every 30 s")).toEqual({ everyS: 30 });
    expect(parseAgitation("40 times every 30 s")).toEqual({ everyS: 30 });
  });
  it.each([30, null, { everyS: 30 }])("refuses %j by kind", (value) => {
    expect(() => parseAgitation(anyOf(value))).toThrow(TypeError);
    expect(() => parseAgitation(anyOf(value))).toThrow(`parseAgitation: text must be ${forms}, got `);
  });
  it("says of what is not there that it is missing", () => {
    expect(() => parseAgitation(anyOf(undefined))).toThrow(
      new TypeError(`parseAgitation: text is missing: ${forms}`),
    );
  });
});
