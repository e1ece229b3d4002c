import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { cautionCodes } from "../../src/index.js";
import { englishSentences } from "../texts/english.js";
import { filesBelow } from "./examples.js";

const page = readFileSync("docs/cautions.md", "utf8");

/** The codes of a page's tables: each code in the first column, several in one row apart. */
const listed = [...page.matchAll(/^\| (`.*?) \| /gm)].flatMap(([, cell]) =>
  [...cell!.matchAll(/`([a-z-]+)`/g)].map(([, code]) => code!),
);

/** What the modules do, apart from their sentences and the list of codes. */
const doing = filesBelow("src", [".ts"])
  .filter((file) => !/[tT]exts?\.ts$|cautionCodes|cautionData|texts.|command/.test(file))
  .map((file) => readFileSync(file, "utf8").replace(/\/\*[\s\S]*?\*\//g, ""))
  .join("\n");

describe("the page of cautions", () => {
  it("has every code that has a sentence, and none besides, each once", () => {
    expect([...listed].sort()).toEqual(Object.keys(englishSentences).sort());
  });
  it("has no code that no module gives", () => {
    expect(doing.length).toBeGreaterThan(100_000);
    expect(listed.filter((code) => !doing.includes(`"${code}"`) && code !== "hazard")).toEqual([]);
  });
  it("has the codes of cautionCodes, in their order", () => {
    expect(cautionCodes).toEqual(listed);
    expect(Object.isFrozen(cautionCodes)).toBe(true);
  });
});
