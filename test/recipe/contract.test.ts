import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { recipeSchemas } from "../../src/recipe/recipeSchema.js";
import { linesOf } from "./lines.js";

describe("the recipe format, line by line", () => {
  const [currentSchema, olderSchema] = recipeSchemas();
  const contract = readFileSync("test/recipe/contract.txt", "utf8").trim().split("\n");

  it("is what other programs rely on: a change here is a new version of the format", () => {
    expect(linesOf(currentSchema).map((line) => line.trim())).toEqual(contract);
  });

  it("differs from the version before in the material and the known time only", () => {
    const older = linesOf(olderSchema).map((line) => line.trim());
    expect(older.filter((line) => !contract.includes(line))).toEqual([
      'type "object", fields schemaVersion! name film! developer! baseline! agitation conditions knowledge baths byInspection notes sources, no others',
      "/schemaVersion const 1",
      '/film type "string", maxLength 200',
      '/baseline type "object", fields timeMin! temperatureC! dilution agitation usedCm2PerL ageH gamma logSd runs, no others',
      '/baseline/timeMin type "number", minimum 0.1, maximum 10000, description "min"',
    ]);
    expect(contract.filter((line) => !older.includes(line)).map((line) => line.split(" ")[0])).toEqual([
      "type",
      "/schemaVersion",
      "/material",
      ...["name", "kind", "sensitization", "emulsion", "iso", "areaCm2", "iodideRich"].map(
        (name) => `/material/${name}`,
      ),
      "/baseline",
      "/baseline/timeS",
    ]);
  });
});
