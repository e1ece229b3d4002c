/* Line and column of what a JSON Pointer names, and of what breaks the grammar. */
import { describe, expect, it } from "vitest";
import { firstFault, placeOfPointer } from "../../src/core/jsonPlaces.js";
import { checkRecipe } from "../../src/index.js";
import { fc, test } from "../property.js";

/** Every pointer of a value, and the value it names. */
function pointers(value: unknown, at = ""): readonly (readonly [string, unknown])[] {
  if (typeof value !== "object" || value === null) return [[at, value]];
  const inner = Object.entries(value).flatMap(([key, each]) =>
    pointers(each, `${at}/${key.replaceAll("~", "~0").replaceAll("/", "~1")}`),
  );
  return [[at, value], ...inner];
}

/** The text from a place on. */
function from(text: string, { line, column }: { readonly line: number; readonly column: number }): string {
  const lines = text.split(/\r\n|\n|\r/).slice(line - 1);
  const [first = "", ...rest] = lines;
  return [
    Array.from(first)
      .slice(column - 1)
      .join(""),
    ...rest,
  ].join("\n");
}

describe("placeOfPointer", () => {
  test.prop([fc.jsonValue({ maxDepth: 4 }), fc.constantFrom(0, 2, "\t")])(
    "finds every value of any JSON",
    (value, indent) => {
      const text = JSON.stringify(value, undefined, indent);
      for (const [pointer, named] of pointers(JSON.parse(text))) {
        const rest = from(text, placeOfPointer(text, pointer));
        const written = JSON.stringify(named, undefined, indent);
        // Deeper values are indented further than they would be alone.
        expect(rest.replace(/\s/g, "").startsWith(written.replace(/\s/g, ""))).toBe(true);
      }
    },
  );
  it("finds the value around one that is missing", () => {
    const text = '{\n  "a": { "b": [1, { "c": 2 }] },\n  "d": 3\n}';
    expect(placeOfPointer(text, "/a/b/1/x")).toEqual({ line: 2, column: 19 });
    expect(placeOfPointer(text, "/d")).toEqual({ line: 3, column: 8 });
    expect(placeOfPointer(text, "/e")).toEqual({ line: 1, column: 1 });
  });
  it("does not take a value beside for the one that is looked for", () => {
    const text = '[{ "t": 1 }, { "t": 2 }, { "t": 3 }]';
    expect([0, 1, 2].map((i) => placeOfPointer(text, `/${i}/t`).column)).toEqual([9, 21, 33]);
  });
});

describe("firstFault", () => {
  test.prop([fc.jsonValue()])("finds none in JSON", (value) => {
    expect(firstFault(JSON.stringify(value))).toBeUndefined();
  });
  test.prop([
    fc.jsonValue({ maxDepth: 3 }),
    fc.nat(),
    fc.constantFrom("", "}", "]", ",", '"', "x", "\\", ":", "-", "1e"),
  ])("agrees with JSON.parse on what is JSON and what is not", (value, at, sign) => {
    const text = JSON.stringify(value, undefined, 1);
    const cut = at % (text.length + 1);
    const broken = text.slice(0, cut) + sign + text.slice(cut + 1);
    let sound = true;
    try {
      JSON.parse(broken);
    } catch {
      sound = false;
    }
    expect(firstFault(broken) === undefined).toBe(sound);
  });
  it.each([
    ["a missing comma", '{"a": 1 "b": 2}', 1, 9, "a comma or }"],
    ["a trailing comma", "[1,\n]", 2, 1, "no comma before ]"],
    ["a name without quotes", "{a: 1}", 1, 2, "a name in double quotes"],
    ["an open name", '{"a', 1, 4, "a closing double quote"],
    ["a missing colon", '{"a" 1}', 1, 6, "a colon"],
    ["a missing value", '{"a": }', 1, 7, "a value"],
    ["a number with a nought before it", "[012]", 1, 2, "a value"],
    ["text behind the end", "{} {}", 1, 4, "the end of the file"],
    ["a string over two lines", '["a\nb"]', 1, 4, "a closing double quote on the same line"],
    ["a wrong escape", '["\\x"]', 1, 3, "an escape such as \\n or \\u00e9"],
    ["an end too early", "[[1]", 1, 5, "a comma or ]"],
    ["a sign of two halves before it", '{"a": "😀" x}', 1, 11, "a comma or }"],
    ["lines that end in \\r", '{"a": 1,\r"b": x}', 2, 6, "a value"],
    ["lines that end in \\r\\n", '{"a": 1,\r\n"b": x}', 2, 6, "a value"],
  ])("%s", (_, text, line, column, expected) => {
    expect(firstFault(text)).toEqual({ line, column, expected });
    // What the package says of a recipe is the same place.
    const check = checkRecipe(text);
    expect(check.ok ? [] : check.problems).toMatchObject([{ expected: { line, column } }]);
  });
  it.each([
    ['{"a": 20,5}', ["20.5"]],
    ['{"a": -0,5, "b": 1}', ["-0.5"]],
    ['{"a": 1,500}', ["1.500", "1500"]],
    ['{"a": 0,500}', ["0.500"]],
    ['{"a": 20, 5}', undefined],
    ['{"a": 20,b}', undefined],
    ["[20,05]", ["20.05"]],
  ])("says what number may be meant by a comma in it: %s", (text, numbers) => {
    expect(firstFault(text)?.numbers).toEqual(numbers);
  });
  test.prop([fc.integer({ min: -999, max: 999 }), fc.integer({ min: 0, max: 99 })])(
    "offers a number that JSON reads",
    (whole, rest) => {
      const numbers = firstFault(`{ "a": ${whole},${rest} }`)?.numbers ?? [];
      expect(numbers.map((one) => JSON.parse(one) as number)).toEqual([Number(`${whole}.${rest}`)]);
    },
  );
  it("takes what is deep and what is long", () => {
    const deep = "[".repeat(200_000);
    expect(firstFault(deep + "]".repeat(200_000))).toBeUndefined();
    expect(firstFault(JSON.stringify("x".repeat(5_000_000)))).toBeUndefined();
  });
});
