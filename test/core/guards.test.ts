/* Every guard refuses the wrong kind with a TypeError and the wrong value with a RangeError, word for word. */
import { show, type InputError } from "../../src/core/errors.js";
import { describe, expect, it } from "vitest";
import {
  arrayOf,
  inRange,
  knownEntry,
  plainObject,
  positive,
  refuse,
  wrongKind,
} from "../../src/core/guards.js";
import { anyOf, caught } from "../helpers.js";

const wanted = (what: string, value: unknown): string =>
  value === undefined ? `is missing: ${what}` : `must be ${what}, got ${show(value)}`;

describe("show", () => {
  it.each([
    ["text", '"text"'],
    ["", '""'],
    ['say "x"', '"say \\"x\\""'],
    ["y".repeat(61), `"${"y".repeat(60)}"`],
    [[1, 2], "an array"],
    [{}, "an object"],
    [() => 1, "a function"],
    [null, "null"],
    [undefined, "undefined"],
    [NaN, "NaN"],
    [-Infinity, "-Infinity"],
    [1.5, "1.5"],
    [true, "true"],
    [10n, "10"],
    [Symbol("s"), "Symbol(s)"],
    [Object.create(null), "an object"],
  ])("shows a value as $1, and never throws itself", (value, text) => {
    expect(show(value)).toBe(text);
  });
});

describe("wrongKind and refuse", () => {
  it.each([
    ["temperatureC", "parseTemperature"],
    ["timeS", "parseTime"],
    ["pushStops", "parseStops"],
    ["usedCm2PerL", "parseUse"],
    ["ageH", "parseAge"],
    ["lifeH", "parseAge"],
    ["gamma", undefined],
    ["perRootH", undefined],
  ])("names the function that reads text for %s, if there is one", (field, parse) => {
    const expected = parse === undefined ? { types: ["number"] } : { types: ["number"], parse };
    const asked = (value: unknown): unknown =>
      (caught(() => wrongKind(`f/${field}`, ["number"], value)) as InputError).expected;
    expect(asked("1")).toEqual(expected);
    expect(asked(true)).toEqual({ types: ["number"] });
  });
  it("differ in class only", () => {
    expect(() => wrongKind("f/x", ["number"], "1")).toThrow(new TypeError('f: x must be a number, got "1"'));
    expect(() => refuse("f/x", "rising", () => "above 4", { above: 4 }, 3)).toThrow(
      new RangeError("f: x must be above 4, got 3"),
    );
  });
  it("name the kinds that are taken", () => {
    expect(() => wrongKind("f/0/x", ["boolean", "object", "text"], 1)).toThrow(
      new TypeError("f: [0].x must be true or false or an object or text, got 1"),
    );
  });
});

describe("inRange", () => {
  it("returns the value, both ends included", () => {
    expect(inRange("f/x", 0, 0, 100, "temperatureC")).toBe(0);
    expect(inRange("f/x", 100, 0, 100, "temperatureC")).toBe(100);
    expect(inRange("f/x", 20.5, 0, 100, "temperatureC")).toBe(20.5);
  });
  it.each([-Number.MIN_VALUE, 100.00000000000001, NaN, Infinity, -Infinity])(
    "refuses the value %d",
    (value) => {
      expect(() => inRange("f/x", value, 0, 100, "temperatureC")).toThrow(
        new RangeError(`f: x must be from 0 to 100 °C, got ${value}`),
      );
    },
  );
  it.each([undefined, null, true, anyOf([5]), anyOf({}), 5n])("refuses the kind of $0", (value) => {
    expect(() => inRange("f/x", value, 0, 100)).toThrow(new TypeError(`f: x ${wanted("a number", value)}`));
  });
  it("does not read text as a number", () => {
    expect(() => inRange("f/x", "5", 0, 100)).toThrow(new TypeError('f: x must be a number, got "5"'));
  });
});

describe("positive", () => {
  it("returns the value, the largest included and 0 not", () => {
    expect(positive("f/t", 1e-30, 10, "timeS")).toBe(1e-30);
    expect(positive("f/t", 10, 10, "timeS")).toBe(10);
    for (const value of [0, -0, -1, 10.5, NaN, Infinity, -Infinity])
      expect(() => positive("f/t", value, 10, "timeS")).toThrow(
        new RangeError(`f: t must be above 0 and at most 10 s, got ${value}`),
      );
  });
  it("refuses the wrong kind", () => {
    expect(() => positive("f/t", "10", 10, "timeS")).toThrow(
      new TypeError('f: t must be a number, got "10"'),
    );
  });
  it("refuses what is too small to divide by", () => {
    expect(positive("f/t", 1e-30, 10, "timeS")).toBe(1e-30);
    expect(() => positive("f", 9e-31, 10, "timeS", "/t")).toThrow(
      new RangeError("f: t must be above 0 and at most 10 s, got 9e-31"),
    );
    expect(caught(() => positive("f/t", Number.MIN_VALUE, 10, "timeS"))).toMatchObject({
      message: "f: t must be above 0 and at most 10 s, got 5e-324",
      expected: { above: 0, max: 10 },
    });
  });
});

describe("plainObject", () => {
  it("returns the object itself", () => {
    const object = { a: 1 };
    expect(plainObject("f/o", object)).toBe(object);
  });
  it.each([null, undefined, 1, "a", true])("refuses %s", (value) => {
    expect(() => plainObject("f/o", value)).toThrow(new TypeError(`f: o ${wanted("an object", value)}`));
  });
  it("refuses an array and a function", () => {
    expect(() => plainObject("f/o", [])).toThrow(new TypeError("f: o must be an object, got an array"));
    expect(() => plainObject("f/o", () => 1)).toThrow(
      new TypeError("f: o must be an object, got a function"),
    );
  });
});

describe("arrayOf", () => {
  it("returns a copy without holes when it is long enough", () => {
    const rows = [1, 2];
    expect(arrayOf("f/rows", rows, 2)).toEqual(rows);
    expect(arrayOf("f/rows", rows, 2)).not.toBe(rows);
    const holed = arrayOf("f/rows", new Array(2), 2);
    expect(0 in holed && 1 in holed).toBe(true);
  });
  it("refuses an array that nobody could walk through", () => {
    const endless: unknown[] = [];
    endless.length = 4_294_967_295;
    expect(() => arrayOf("f/rows", endless, 2)).toThrow(
      new RangeError("f: rows must hold at most 100000, got 4294967295"),
    );
    expect(() => arrayOf("f/rows", new Array(100_001), 2)).toThrow(
      new RangeError("f: rows must hold at most 100000, got 100001"),
    );
    expect(arrayOf("f/rows", new Array(100_000), 2)).toHaveLength(100_000);
  });
  it("refuses too few and no array", () => {
    expect(() => arrayOf("f/rows", [1], 2)).toThrow(new RangeError("f: rows must hold at least 2, got 1"));
    expect(() => arrayOf("f/rows", { length: 2 }, 2)).toThrow(
      new TypeError("f: rows must be an array, got an object"),
    );
  });
});

describe("knownEntry", () => {
  const table = { one: 1, two: 2 };
  it("returns the entry", () => {
    expect(knownEntry("f/key", table, "two")).toBe(2);
  });
  it("lists what it knows, and knows nothing inherited", () => {
    for (const key of ["three", "", "toString", "__proto__"])
      expect(() => knownEntry("f/key", table, key)).toThrow(
        new RangeError(`f: key must be "one" or "two", got ${JSON.stringify(key)}`),
      );
    expect(() => knownEntry("f/key", table, 1)).toThrow(new TypeError("f: key must be text, got 1"));
  });
});
