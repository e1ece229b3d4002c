import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { sourcesPage } from "./sources.js";
import { writing } from "../helpers.js";

const PAGE = "docs/sources.md";

describe("the sources page", () => {
  it("lists what the code and its checks cite today", async () => {
    const page = await sourcesPage();
    if (writing) writeFileSync(PAGE, page);
    expect(page.split("\n").length).toBeGreaterThan(80);
    expect(readFileSync(PAGE, "utf8")).toBe(page);
  });
});
