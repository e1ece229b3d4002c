import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as everything from "../../src/index.js";
import { exportedNames, firstSentence, namesPage } from "./names.js";
import { writing } from "../helpers.js";

const PAGE = "docs/names.md";

describe("the page of names", () => {
  it("has every value that the package exports, each with a sentence", () => {
    const names = exportedNames();
    expect(names.map(({ name }) => name).sort()).toEqual(Object.keys(everything).sort());
    for (const { name, purpose } of names) expect(purpose, name).toMatch(/^\S.{9,}[.?!]$/);
  });

  it("is as the code tells it today", () => {
    const page = namesPage();
    if (writing) writeFileSync(PAGE, page);
    expect(readFileSync(PAGE, "utf8")).toBe(page);
  });

  it("takes a sentence whole, figures and brackets in it included", () => {
    expect(firstSentence("Time in s, e.g. 8.5 min.\nMore.")).toBe("Time in s, e.g. 8.5 min.");
    expect(firstSentence("See {@link learn}. Then rest.")).toBe("See `learn`.");
    expect(firstSentence("no stop at all")).toBe("no stop at all");
  });
});
