import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { checkRecipe, recipeSchema } from "../../src/index.js";
import { fc, test } from "../property.js";
import { hutCoffee, hutStock, nearRecipes } from "./documents.js";

const independent = new Ajv2020({ strict: true }).compile(recipeSchema);

// The independent validator (ajv) and checkRecipe on the same document. What no schema can say is marked as a
// relation, and only that.
const agree = (document: unknown): boolean => {
  const accepted = independent(document);
  const check = checkRecipe(document);
  const problems = check.ok ? [] : check.problems;
  const shape = problems.every(({ rule }) => rule === "relation");
  if (shape !== accepted || (!accepted && problems.some(({ rule }) => rule === "relation")))
    throw new Error(
      JSON.stringify({ accepted, problems, document, errors: independent.errors }).slice(0, 3000),
    );
  return accepted;
};

describe("recipeSchema and checkRecipe", () => {
  it("agrees with checkRecipe on thousands of documents", () => {
    let accepted = 0;
    let refused = 0;
    fc.assert(
      fc.property(nearRecipes, (document) => {
        if (agree(document)) accepted += 1;
        else refused += 1;
      }),
      { numRuns: 2000 },
    );
    expect(accepted).toBeGreaterThan(400);
    expect(refused).toBeGreaterThan(400);
  }, 30_000);

  test.prop([fc.jsonValue()])("agrees with checkRecipe on any JSON value but text", (value) => {
    if (typeof value !== "string") agree(value);
  });

  it("agrees at the edges of every number and text", () => {
    const edges = [
      -1e-9, 0, 1e-9, 0.1, 0.099, 0.99, 0.9900001, 1, 0.999, 2, 3, 3.001, 10, 10.01, 40, 40.01, 50, 50.01,
      100, 100.01, 200, 200.1,
    ];
    const larger = [
      3600,
      3601,
      5000,
      5001,
      7200,
      7201,
      86400,
      86401,
      1e4,
      10001,
      1e5,
      1e5 + 1,
      1e6,
      1e6 + 1,
      1e7,
      1e7 + 1,
      1e9,
      1e9 + 1,
    ];
    const texts = [
      "",
      "stock",
      "Stock",
      "1+9",
      "1+9+",
      "+9",
      "0+9",
      "0.0+9",
      "00+9",
      "0.1+9",
      "1+0",
      "1+1+1+7",
      "1+1+1+1+7",
      "12345+1",
      "1.23+1",
      "1+9999.9",
      " 1+9",
    ];
    const long = [
      "x".repeat(200),
      "x".repeat(201),
      "x".repeat(2000),
      "x".repeat(2001),
      "😀".repeat(200),
      "😀".repeat(201),
      "😀".repeat(2000),
      "😀".repeat(2001),
    ];
    const strange = [true, false, 0, "yes", null];
    let count = 0;
    const visit = (node: unknown, put: (value: unknown) => unknown): void => {
      if (typeof node === "object" && node !== null) {
        for (const [key, part] of Object.entries(node))
          visit(part, (value) =>
            put(
              Array.isArray(node)
                ? node.map((one: unknown, i) => (String(i) === key ? value : one))
                : { ...node, [key]: value },
            ),
          );
        return;
      }
      for (const value of typeof node === "number"
        ? [...edges, ...larger]
        : typeof node === "string"
          ? [...texts, ...long]
          : strange) {
        agree(put(value));
        count += 1;
      }
    };
    for (const document of [hutCoffee, hutStock]) visit(document, (value) => value);
    expect(count).toBeGreaterThan(1000);
  }, 30_000);
});
