/* Every sentence that people see stands in one file, in both languages: a change of wording shows there. */
import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { cautionCodes } from "../../src/index.js";
import { sections, sentencesText } from "../texts/sentences.js";
import { writing } from "../helpers.js";

const FILE = "test/texts/sentences.txt";

describe("the file of all sentences", () => {
  it("is what the package says today; npm run sentences writes it", () => {
    const text = sentencesText();
    if (writing) writeFileSync(FILE, text);
    expect(text.split("\n")).toEqual(readFileSync(FILE, "utf8").split("\n"));
  });
  it("has every code of a caution", () => {
    const names = new Set(sections["Cautions"]!.map(({ name }) => name));
    expect(cautionCodes.filter((code) => !names.has(code))).toEqual([]);
  });
  it("has each sentence in both languages, with every figure", () => {
    const all = Object.values(sections).flat();
    expect(all.length).toBeGreaterThan(300);
    expect(
      all.filter(({ english, german }) => /^$|undefined/.test(english) || /^$|undefined/.test(german)),
    ).toEqual([]);
  });
});
