/* The page of the architecture shows the imports of today. With --mode write it is drawn again. */
import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { causeFolders, diagram, moduleImports, reduced } from "./architecture.js";
import { writing } from "../helpers.js";

const PAGE = "docs/architecture.md";
const MARKS = /(<!-- diagram -->\n)[\s\S]*?(\n<!-- \/diagram -->)/;

describe("the page of the architecture", () => {
  it("shows the imports of today", () => {
    const page = readFileSync(PAGE, "utf8");
    const today = page.replace(MARKS, (_, open: string, close: string) => `${open}${diagram()}${close}`);
    if (writing) writeFileSync(PAGE, today);
    expect(readFileSync(PAGE, "utf8")).toBe(today);
    expect(page).toMatch(MARKS);
  });
  it("says what every module is for", () => {
    const page = readFileSync(PAGE, "utf8");
    const names = [...moduleImports().keys(), ...causeFolders()].filter((name) => name !== "causes");
    expect(names.filter((name) => !page.includes(`| \`${name}\` |`))).toEqual([]);
  });
  it("leaves out an arrow that follows from two others, and no other", () => {
    const imports = new Map([
      ["a", new Set(["b", "c"])],
      ["b", new Set(["c"])],
      ["c", new Set<string>()],
    ]);
    expect(reduced(imports)).toEqual([
      ["a", "b"],
      ["b", "c"],
    ]);
  });
});
