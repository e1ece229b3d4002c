/* Ten thousand documents of the type Recipe: the check finds no fault in the shape of any. */
import { describe, expect } from "vitest";
import { checkRecipe } from "../../src/index.js";
import { test } from "../property.js";
import { recipes } from "./documents.js";

describe("checkRecipe", () => {
  test.prop([recipes], { numRuns: 10_000 })(
    "finds no fault in the shape of a document of the type",
    (document) => {
      const check = checkRecipe(document);
      expect(check.ok ? [] : check.problems.filter(({ rule }) => rule === "shape")).toEqual([]);
    },
  );
});
