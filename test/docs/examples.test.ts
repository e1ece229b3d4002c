import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as library from "../../src/index.js";
import { blocksOf, filesBelow, runBlock } from "./examples.js";

const sources = filesBelow("src", [".ts"]);
const pages = ["README.md", "DEVELOPERS.md", ...filesBelow("docs", [".md"])];

describe("examples in the docs give what they say", () => {
  for (const path of [...pages, ...sources])
    for (const block of blocksOf(path))
      it(block.where, () => {
        const outcomes = runBlock(block);
        expect(outcomes.length, "a block shows at least one result").toBeGreaterThan(0);
        for (const { line, shown, given, agrees } of outcomes)
          expect(agrees, `${line}\n  docs: ${JSON.stringify(shown)}\n  code: ${JSON.stringify(given)}`).toBe(
            true,
          );
      });

  it("every exported function has an example in its TSDoc", () => {
    const text = sources.map((path) => readFileSync(path, "utf8")).join("\n");
    const without = Object.entries(library)
      .filter(([, value]) => typeof value === "function")
      .map(([name]) => name)
      .filter((name) => {
        const at = text.search(new RegExp(`export (const|function) ${name}\\b`));
        return !text.slice(text.lastIndexOf("/**", at), at).includes("@example");
      });
    expect(without).toEqual([]);
  });

  it("a wrong number in an example is caught", () => {
    const wrong = { where: "here", code: "roundTime(517, 15) // => 525\nfahrenheitToCelsius(68) // => 20\n" };
    expect(runBlock(wrong).map((outcome) => outcome.agrees)).toEqual([false, true]);
    const digits = {
      where: "here",
      code: "celsiusToFahrenheit(20.02) // => 68.04\ncelsiusToFahrenheit(20.02) // => 68.03\n",
    };
    expect(runBlock(digits).map((outcome) => outcome.agrees)).toEqual([true, false]);
  });
});
