import { describe, expect, it } from "vitest";
import { checkRecipe } from "../../src/index.js";
import { bestOf } from "../processorTime.js";
import { fc, test } from "../property.js";
import { hutStock, nearRecipes } from "./documents.js";

describe("the time a check takes", () => {
  const fields = Object.fromEntries(Array.from({ length: 90_000 }, (_, i) => [`f${i}`, 1]));

  // Nearly all of it is the engine's own listing of the names, 18 of 20 ms on a quiet machine. A busy one
  // takes thrice as long for both, so the limit is a ratio within one run.
  it("refuses 90,000 unknown fields in at most twice the time that their names take to list", () => {
    const document = { ...hutStock, ...fields };
    const check = checkRecipe(document);
    expect(!check.ok && check.problems.map(({ code }) => code)).toEqual(Array(100).fill("not-one-of"));
    const list = bestOf(15, () => Object.keys(document));
    expect(bestOf(15, () => checkRecipe(document))).toBeLessThan(2 * list);
  });

  // JSON.parse alone takes 14 ms for the depth on a quiet machine and 60 on a busy one: what is beside it counts.
  it("refuses a megabyte within 50 ms of processor time beside that of JSON.parse, and a depth of 100,000 without overflow", () => {
    const deepText = `{"schemaVersion":2,"material":${"[".repeat(100_000)}${"]".repeat(100_000)}}`;
    let deep: unknown = {};
    for (let i = 0; i < 100_000; i++) deep = { material: deep };
    const megabyte = "x".repeat(1e6);
    const documents: unknown[] = [
      { ...hutStock, notes: Array(500_000).fill("") },
      {
        ...hutStock,
        knowledge: {
          temperature: { kind: "table", rows: Array(40_000).fill({ temperatureC: 20, timeS: 1 }) },
        },
      },
      { ...hutStock, material: { name: megabyte } },
      { ...hutStock, developer: { ...hutStock.developer, dilution: "1".repeat(1e6) } },
      { ...hutStock, [megabyte]: 1 },
      { schemaVersion: megabyte },
      { ...hutStock, developer: { kind: megabyte } },
      deep,
      { ...hutStock, baseline: deep },
      JSON.parse(deepText),
      deepText,
      `"${megabyte}"`,
      JSON.stringify(fields),
      megabyte,
    ];
    for (const document of documents) {
      expect(checkRecipe(document).ok).toBe(false);
      const parsing = document === deepText ? bestOf(5, () => JSON.parse(deepText) as unknown) : 0;
      expect(bestOf(5, () => checkRecipe(document)) - parsing).toBeLessThan(50);
      const check = checkRecipe(document);
      expect(
        !check.ok && check.problems.every(({ path, message }) => path.length + message.length < 2000),
      ).toBe(true);
    }
  }, 30_000);

  test.prop([fc.jsonValue({ maxDepth: 6 })])("any JSON value gets an answer within 5 ms", (value) => {
    expect(checkRecipe(value).ok).toBe(false);
    expect(checkRecipe(JSON.stringify(value)).ok).toBe(false);
    expect(bestOf(5, () => checkRecipe(value))).toBeLessThan(5);
  });

  test.prop([nearRecipes])("anything near the format gets an answer within 5 ms", (value) => {
    expect(bestOf(5, () => checkRecipe(value))).toBeLessThan(5);
  });
});
