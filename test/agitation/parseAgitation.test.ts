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
    ["4x per min.", { everyS: 15 }],
    ["1,5 mal pro Minute", { everyS: 40 }],
    ["3 times every 30 s", { everyS: 30 }],
    ["rotary", "continuous"],
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
