/* The hand mutants have to be up to date with the source; npm run mutants runs them. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { applied, handMutants } from "./handMutants.mjs";

describe("the hand mutants", () => {
  it("are at least forty, each of another kind", () => {
    expect(handMutants.length).toBeGreaterThanOrEqual(40);
    expect(new Set(handMutants.map(({ what }) => what)).size).toBe(handMutants.length);
  });
  it.each(handMutants)("$what: its text stands in $file once", (mutant) => {
    const source = readFileSync(mutant.file, "utf8");
    expect(applied(mutant, source)).not.toBe(source);
  });
});
