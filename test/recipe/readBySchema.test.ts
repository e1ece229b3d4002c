/* The reader that follows a schema. */
import { describe, expect, it } from "vitest";
import type { JsonSchema } from "../../src/core/schema.js";
import type { RecipeProblem } from "../../src/recipe/types.js";
import { readBySchema } from "../../src/core/readBySchema.js";

describe("readBySchema", () => {
  const problems = (schema: JsonSchema, value: unknown): readonly Partial<RecipeProblem>[] => {
    const found: RecipeProblem[] = [];
    readBySchema(schema, value, "/p", found);
    return found;
  };
  const told: JsonSchema = { type: "object", required: ["k"], properties: { k: { const: "a" } } };
  it("counts a character outside the basic plane as one for a pattern", () => {
    // The dialect of JSON Schema's patterns is ECMA-262 with the flag u: JSON Schema core, 2020-12, section
    // 6.4.
    expect(problems({ type: "string", pattern: "^.$" }, "\u{1F4A9}")).toEqual([]);
    expect(problems({ type: "string", pattern: "^.$" }, "ab")).toHaveLength(1);
  });
  it("asks nothing of null where no type is asked for", () => {
    expect(problems({ properties: { foo: { type: "integer" } } }, null)).toEqual([]);
  });
  it("tells forms apart only by a first required field that has one value", () => {
    // Neither form has such a field: the one has no fields named, the other does not name the required one.
    expect(problems({ anyOf: [{ type: "object", required: ["k"] }, { type: "string" }] }, { k: 1 })).toEqual(
      [],
    );
    expect(
      problems(
        { anyOf: [{ type: "object", required: ["k"], properties: { x: {} } }, { type: "string" }] },
        { k: 1 },
      ),
    ).toEqual([]);
  });
  it("does not look for that field in what is no object", () => {
    // Without a type, a form asks nothing of a number or a text.
    const untyped: JsonSchema = { required: ["k"], properties: { k: { const: "a" } } };
    expect(problems({ anyOf: [untyped] }, 5)).toEqual([]);
    expect(problems({ anyOf: [untyped] }, "b")).toEqual([]);
    expect(problems({ anyOf: [untyped] }, { k: "b" })).toMatchObject([
      { path: "/p/k", message: 'must be "a", got "b"', rule: "shape" },
    ]);
  });
  it("finds the telling field behind forms that have none", () => {
    for (const other of [{ type: "string" }, { type: "array", properties: {} }] as const) {
      expect(problems({ anyOf: [other, told] }, { k: "b" }).map(({ path }) => path)).toEqual(["/p/k"]);
    }
  });
});
