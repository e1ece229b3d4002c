import { describe, expect, it } from "vitest";
import { hoversOf } from "./hovers.js";

describe("what an editor shows over a field", () => {
  it("says what it is, for every field of every exported type", { timeout: 120_000 }, () => {
    const hovers = hoversOf("src/index.ts");
    expect(hovers.length).toBeGreaterThan(800);
    expect(hovers.filter(({ text }) => text === "").map(({ name }) => name)).toEqual([]);
  });

  it("is missed where a field has no sentence", { timeout: 120_000 }, () => {
    const without = hoversOf("test/docs/hovers.ts").filter(({ text }) => text === "");
    expect(without.map(({ name }) => name)).toEqual(["Hover.name", "Hover.text"]);
  });
});
