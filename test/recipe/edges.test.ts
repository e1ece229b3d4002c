/* The edges of the check: texts, places and forms that an ordinary recipe does not reach. */
import { describe, expect, it } from "vitest";
import { checkRecipe, type Caution } from "../../src/index.js";
import { readBySchema } from "../../src/core/readBySchema.js";
import type { JsonSchema } from "../../src/core/schema.js";
import { brewCautions } from "../../src/recipe/recipeCautions.js";
import type { RecipeProblem } from "../../src/recipe/types.js";
import { hutStock } from "./documents.js";

const anyOf = (value: unknown): any => value;
const problemsOf = (input: unknown): readonly Partial<RecipeProblem>[] => {
  const check = checkRecipe(input);
  return check.ok ? [] : check.problems.map(({ path, message, rule }) => ({ path, message, rule }));
};
const cautionsOf = (input: unknown): readonly Caution[] => {
  const check = checkRecipe(input);
  if (!check.ok) throw new Error(JSON.stringify(check.problems));
  return check.cautions;
};

describe("checkRecipe", () => {
  it("does not take a version that is text for a newer one", () => {
    expect(problemsOf({ ...hutStock, schemaVersion: "3" })).toEqual([
      { path: "/schemaVersion", message: 'must be 2, got "3"', rule: "shape" },
    ]);
  });
  it("says which forms a missing field may have", () => {
    expect(problemsOf({ ...hutStock, developer: undefined })).toEqual([
      {
        path: "/developer",
        message: "is missing: an object with kind, name, dilution, or an object with kind, brew",
        rule: "shape",
      },
    ]);
  });
  it("points at an ingredient beyond the tenth", () => {
    const good = { ingredient: "borax", massG: 1 };
    const ingredients = [...Array<unknown>(11).fill(good), { ...good, lowG: 2 }];
    expect(
      problemsOf({ ...hutStock, developer: { kind: "brew", brew: { volumeMl: 1000, ingredients } } }),
    ).toEqual([
      {
        path: "/developer/brew/ingredients/11/lowG",
        message: "must be above 0 and at most 1 g, got 2",
        rule: "relation",
      },
    ]);
  });
});

describe("the cautions of a recipe", () => {
  it("have no field for a place where they have none", () => {
    const [short] = cautionsOf({ ...hutStock, baseline: { timeS: 200, temperatureC: 20 } });
    expect(Object.keys(short!)).toEqual(["code", "severity", "message", "quantity", "limit", "actual"]);
  });
  it("hold each of two limits that one age is past", () => {
    const old = {
      ...hutStock,
      developer: { ...hutStock.developer, keepingLimitH: 1.5 },
      conditions: { ageH: 2 },
      knowledge: { age: { kind: "life", lifeH: 1 } },
    };
    expect(cautionsOf(old).filter(({ severity }) => severity === "stop")).toMatchObject([
      {
        code: "bath-past-life",
        severity: "stop",
        path: "/conditions/ageH",
        quantity: "ageH",
        limit: 1,
        actual: 2,
        data: { at: "pour-in" },
      },
      {
        code: "bath-past-keeping",
        severity: "stop",
        path: "/conditions/ageH",
        quantity: "ageH",
        limit: 1.5,
        actual: 2,
      },
    ]);
  });
  it("put a bath that is slow, or too slow, at the conditions as a whole", () => {
    // Two portions of 10 % are 20 %; twelve are 120 %, more than twice the time.
    const use = { increase: 0.1, perCm2PerL: 500, growth: "linear" };
    const slow = (usedCm2PerL: number) =>
      cautionsOf({ ...hutStock, conditions: { usedCm2PerL }, knowledge: { use } }).filter(({ code }) =>
        code.includes("slow"),
      );
    expect(slow(1000)).toMatchObject([
      {
        code: "bath-slow",
        severity: "note",
        path: "/conditions",
        quantity: "ratio",
        actual: 1.2,
      },
    ]);
    expect(slow(6000).map(({ code, path }) => [code, path])).toEqual([["bath-too-slow", "/conditions"]]);
  });
  it("are none of the brew's where the developer is a stock", () => {
    expect(brewCautions(anyOf(hutStock))).toEqual([]);
  });
});

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
