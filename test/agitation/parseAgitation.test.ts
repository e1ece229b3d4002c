/* Agitation in text. */
import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { agitationFactor, formatTime, parseAgitation } from "../../src/index.js";

const anyOf = (value: unknown): any => value;
const forms = '"continuous", "stand" or an interval such as "every 30 s"';

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
  ] as const)("reads %j", (text, agitation) => {
    expect(parseAgitation(text)).toEqual(agitation);
  });
  it.each(["", "often", "every", "every minute", "x every 30 s", "everyother 30 s", "stand 30 s", "-30 s"])(
    "refuses %j",
    (text) => {
      expect(() => parseAgitation(text)).toThrow(
        new RangeError(`parseAgitation: text must be ${forms}, got ${JSON.stringify(text)}`),
      );
    },
  );
  it.each(["30", "every 30", "30 s every", "30 s, gently"])("refuses %j as no time with its unit", (text) => {
    expect(() => parseAgitation(text)).toThrow(/^parseAgitation: text must be a time such as/);
  });
  it("refuses an interval of nothing, and one of more than an hour", () => {
    expect(() => parseAgitation("every 0 s")).toThrow(
      new RangeError("parseAgitation: text must be above 0 and at most 3600 s, got 0"),
    );
    expect(() => parseAgitation("2 h")).toThrow(
      new RangeError("parseAgitation: text must be above 0 and at most 3600 s, got 7200"),
    );
  });
  it.each([30, null, undefined, { everyS: 30 }])("refuses %j by kind", (value) => {
    expect(() => parseAgitation(anyOf(value))).toThrow(TypeError);
    expect(() => parseAgitation(anyOf(value))).toThrow(`parseAgitation: text must be ${forms}, got `);
  });
  test.prop([fc.integer({ min: 1, max: 3600 })])(
    "reads back what formatTime writes, and agitationFactor takes it",
    (everyS) => {
      const read = parseAgitation(`every ${formatTime(everyS)}`);
      expect(read).toEqual({ everyS });
      expect(agitationFactor(read, { everyS })).toBe(1);
    },
  );
});
