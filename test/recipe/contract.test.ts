import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { currentSchema } from "../../src/recipe/recipeSchema.js";
import { linesOf } from "./lines.js";
import { writing } from "../helpers.js";

const FILE = "test/recipe/contract.txt";

describe("the recipe format, line by line", () => {
  const lines = linesOf(currentSchema()).map((line) => line.trim());

  it("is what other programs rely on: a change here is a new version of the format", () => {
    if (writing) writeFileSync(FILE, `${lines.join("\n")}\n`);
    expect(lines).toEqual(readFileSync(FILE, "utf8").trim().split("\n"));
  });

  it("has a sentence for every field", () => {
    const without = lines.filter(
      (line) => !/description "(?:[^"\\]|\\.)+\."/.test(line) && line.startsWith("/"),
    );
    expect(without).toEqual([]);
  });
});
