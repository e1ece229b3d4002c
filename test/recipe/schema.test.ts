import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { recipeSchema, recipeStandardSchema } from "../../src/index.js";
import { readBySchema } from "../../src/core/readBySchema.js";
import type { JsonSchema } from "../../src/core/schema.js";
import type { RecipeProblem } from "../../src/recipe/types.js";
import { hutCoffee, hutStock } from "./documents.js";

const logged: unknown[] = [];
const log = (...parts: unknown[]): void => {
  logged.push(parts);
};
const ajv = new Ajv2020({ strict: true, logger: { log, warn: log, error: log } });
const independent = ajv.compile(recipeSchema);

describe("recipeSchema", () => {
  it("is valid JSON Schema 2020-12, without a remark of the independent validator", () => {
    expect(recipeSchema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
    expect(ajv.validateSchema(recipeSchema)).toBe(true);
    expect(logged).toEqual([]);
    expect(JSON.parse(JSON.stringify(recipeSchema))).toEqual(recipeSchema);
    expect(recipeSchema.title).toBe("A recipe of darkroom-kinetics");
    expect(recipeSchema.$comment).toBe(
      "Values that are each in range and do not go together are refused by checkRecipe alone.",
    );
  });

  it("and the Standard Schema interface are frozen through and through", () => {
    const open = (value: unknown, path: string): readonly string[] =>
      typeof value !== "object" || value === null
        ? []
        : [
            ...(Object.isFrozen(value) ? [] : [path]),
            ...Object.entries(value).flatMap(([name, part]) => open(part, `${path}/${name}`)),
          ];
    expect(open({ recipeSchema, recipeStandardSchema }, "")).toEqual([""]);
  });

  it("accepts the recipes of the tests", () => {
    for (const recipe of [hutCoffee, hutStock]) expect(independent(recipe)).toBe(true);
  });
});

/*
 * A selection of the JSON Schema Test Suite (draft 2020-12), typed in from memory of it, for the keywords
 * that the recipe's schema uses. The independent validator has to give the same verdicts, so that a slip of
 * memory would show.
 */
type Case = readonly [
  name: string,
  schema: JsonSchema,
  valid: readonly unknown[],
  invalid: readonly unknown[],
];
const obj = (text: string): unknown => JSON.parse(text);
const SUITE: readonly Case[] = [
  ["type: integer matches integers", { type: "integer" }, [1, 1.0], [1.1, "foo", "1", {}, [], true, null]],
  ["type: number matches numbers", { type: "number" }, [1, 1.0, 1.1], ["foo", "1", {}, [], true, null]],
  ["type: string matches strings", { type: "string" }, ["foo", "1", ""], [1, 1.1, {}, [], true, null]],
  ["type: object matches objects", { type: "object" }, [{}], [1, 1.1, "foo", [], true, null]],
  ["type: array matches arrays", { type: "array" }, [[]], [1, 1.1, "foo", {}, true, null]],
  [
    "type: boolean matches booleans",
    { type: "boolean" },
    [true, false],
    [1, 0, 1.1, "foo", "", {}, [], null],
  ],
  ["const", { const: 2 }, [2, 2.0], [5, "a"]],
  [
    "const: float and integers are equal up to 64-bit",
    { const: 9007199254740992 },
    [9007199254740992, 9007199254740992.0],
    [9007199254740991],
  ],
  ["const with 0 does not match other zero-like types", { const: 0 }, [0, 0.0], [false, {}, [], ""]],
  ["simple enum", { enum: ["foo", "bar"] }, ["foo", "bar"], ["quux", 1, null, ["foo"]]],
  ["minimum", { minimum: 1.1 }, [2.6, 1.1, "x"], [0.6]],
  ["maximum", { maximum: 3 }, [2.6, 3, "x"], [3.5]],
  ["exclusiveMinimum", { exclusiveMinimum: 1.1 }, [1.2, "x"], [1.1, 0.6]],
  [
    "maxLength",
    { maxLength: 2 },
    ["f", "fo", 100, "\u{1F4A9}\u{1F4A9}"],
    ["foo", "\u{1F4A9}\u{1F4A9}\u{1F4A9}"],
  ],
  ["pattern", { pattern: "^a*$" }, ["aaa", true, 123, 1.0, {}, [], null], ["abc"]],
  ["pattern is not anchored", { pattern: "a+" }, ["xxaayy"], ["xyz"]],
  ["minItems", { minItems: 1 }, [[1, 2], [1], ""], [[]]],
  ["maxItems", { maxItems: 2 }, [[1], [1, 2], "foobar"], [[1, 2, 3]]],
  [
    "a schema given for items",
    { items: { type: "integer" } },
    [[1, 2, 3], [], { foo: "bar" }, { "0": "invalid", "length": 1 }],
    [[1, "x"]],
  ],
  [
    "object properties",
    { properties: { foo: { type: "integer" }, bar: { type: "string" } } },
    [{ foo: 1, bar: "baz" }, {}, { quux: [] }, [], 12],
    [
      { foo: 1, bar: {} },
      { foo: [], bar: {} },
    ],
  ],
  [
    "properties with escaped characters",
    { properties: { "foo\nbar": { type: "number" }, 'foo"bar': { type: "number" } } },
    [{ "foo\nbar": 1, 'foo"bar': 1 }],
    [{ "foo\nbar": "1", 'foo"bar': 1 }],
  ],
  [
    "properties whose names are Javascript object property names",
    {
      properties: { toString: { type: "number" }, constructor: { type: "number" } } as unknown as Record<
        string,
        JsonSchema
      >,
    },
    [[], 12, {}, { toString: 1, constructor: 37 }],
    [{ toString: "foo" }, { constructor: "foo" }],
  ],
  [
    "required",
    { properties: { foo: {}, bar: {} }, required: ["foo"] },
    [{ foo: 1 }, [], "", 12],
    [{ bar: 1 }],
  ],
  [
    "additionalProperties being false does not allow other properties",
    { properties: { foo: {}, bar: {} }, additionalProperties: false },
    [{ foo: 1 }, [1, 2, 3], "foobarbaz"],
    [{ foo: 1, bar: 2, quux: "boom" }],
  ],
  [
    "additionalProperties being false with no properties",
    { additionalProperties: false },
    [{}],
    [{ foo: 1 }],
  ],
  ["anyOf", { anyOf: [{ type: "integer" }, { minimum: 2 }] }, [1, 2.5, 3], [1.5]],
  [
    "anyOf complex types",
    {
      anyOf: [
        { properties: { bar: { type: "integer" } }, required: ["bar"] },
        { properties: { foo: { type: "string" } }, required: ["foo"] },
      ],
    },
    [{ bar: 2 }, { foo: "baz" }, { foo: "baz", bar: 2 }],
    [{ foo: 2, bar: "quux" }],
  ],
  ["nested anyOf, to check validation semantics", { anyOf: [{ anyOf: [{ type: "string" }] }] }, ["x"], [123]],
];

describe("readBySchema", () => {
  const lenient = new Ajv2020({ strict: false, ownProperties: true });
  const problemsOf = (schema: JsonSchema, value: unknown): readonly RecipeProblem[] => {
    const problems: RecipeProblem[] = [];
    readBySchema(schema, value, "", problems);
    return problems;
  };

  it.each(SUITE)("JSON Schema Test Suite: %s", (_, schema, valid, invalid) => {
    const judge = lenient.compile(schema);
    for (const value of valid)
      expect([value, problemsOf(schema, value).length, judge(value)]).toEqual([value, 0, true]);
    for (const value of invalid)
      expect([value, problemsOf(schema, value).length > 0, judge(value)]).toEqual([value, true, false]);
  });

  it("JSON Schema Test Suite: the property __proto__, on which the independent validator takes no schema", () => {
    const schema = { properties: obj('{"__proto__":{"type":"number"}}') as Record<string, JsonSchema> };
    expect(problemsOf(schema, obj('{"__proto__":12}'))).toEqual([]);
    expect(problemsOf(schema, {})).toEqual([]);
    expect(problemsOf(schema, obj('{"__proto__":"foo"}'))).toHaveLength(1);
  });

  it("counts characters, not code units, and does not count what is far too long", () => {
    const short: JsonSchema = { type: "string", maxLength: 2 };
    expect(problemsOf(short, "\u{1F4A9}\u{1F4A9}")).toEqual([]);
    expect(problemsOf(short, "\u{1F4A9}ab")[0]!.message).toBe(
      'must be text of at most 2 characters, got "\u{1F4A9}ab"',
    );
    expect(problemsOf(short, "abcde")).toHaveLength(1);
  });

  it("says what it expects", () => {
    const messages = (schema: JsonSchema, value: unknown): string => problemsOf(schema, value)[0]!.message;
    expect(messages({ type: "number", minimum: 1 }, 0)).toBe("must be a number of at least 1, got 0");
    expect(messages({ type: "number", exclusiveMinimum: 0 }, 0)).toBe("must be a number above 0, got 0");
    expect(messages({ type: "number", maximum: 3 }, 4)).toBe("must be a number of at most 3, got 4");
    expect(messages({ type: "array", maxItems: 0 }, [1])).toBe("must be an array of 0 to 0, got 1");
    expect(messages({ enum: ["a"] }, 4)).toBe('must be "a", got 4');
    expect(messages({ maximum: 3 }, 4)).toBe("must be anything of at most 3, got 4");
    expect(messages({ anyOf: [{ type: "string" }, { type: "number" }] }, null)).toBe(
      "must be text, or a number, got null",
    );
    expect(
      messages(
        { anyOf: [{ type: "string" }, { type: "object", required: ["k"], properties: { k: { const: 1 } } }] },
        null,
      ),
    ).toBe("must be text, or an object with k, got null");
  });

  it("takes the first of several forms that fits, and tells what is wrong by the nearest", () => {
    const a: JsonSchema = {
      type: "object",
      required: ["k", "x"],
      properties: { k: { const: "a" }, x: { type: "number" } },
    };
    const b: JsonSchema = {
      type: "object",
      required: ["k", "y"],
      properties: { k: { const: "b" }, y: { type: "number" } },
    };
    const either: JsonSchema = { anyOf: [a, b] };
    const read = (value: unknown): [unknown, readonly RecipeProblem[]] => {
      const problems: RecipeProblem[] = [];
      return [readBySchema(either, value, "/p", problems), problems];
    };
    expect(read({ k: "b", y: 1, z: 1 })).toMatchObject([{ k: "b", y: 1 }, []]);
    expect(read({ k: "b", y: "1" })).toMatchObject([
      undefined,
      [{ path: "/p/y", message: 'must be a number, got "1"', rule: "shape" }],
    ]);
    expect(read({ k: "c" })[1]).toMatchObject([
      { path: "/p/k", message: 'must be "a" or "b", got "c"', rule: "shape" },
    ]);
    expect(read(5)[1]).toMatchObject([
      { path: "/p", message: "must be an object with k, x, or an object with k, y, got 5", rule: "shape" },
    ]);
  });
});
