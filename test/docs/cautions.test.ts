import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { cautionCodes, inputErrorCodes } from "../../src/index.js";

const page = readFileSync("docs/cautions.md", "utf8");

/** The codes of a page's tables: each code in the first column, several in one row apart. */
const listed = [...page.matchAll(/^\| (`.*?) \| /gm)].flatMap(([, cell]) =>
  [...cell!.matchAll(/`([a-z-]+)`/g)].map(([, code]) => code!),
);

/** The codes that the sources write: as a field, as an argument of what makes a caution, above a sentence. */
const CODES = [
  /\bcode:\s*["`]([a-z]+(?:-[a-z]+)*)["`]/g,
  /\b(?:unwise|over|warn)\(\s*"([a-z-]+)"/g,
  /\b(?:add|caution)\(\s*"([a-z-]+)",\s*(?:"(?:stop|warn|note)"|[^"]{1,40}\?\s*"(?:stop|warn)")/g,
  /\bsay\(\s*[^,]+,\s*"([a-z-]+)"/g,
  // The brew's sentences stand under their codes.
  /^ {2}"([a-z-]+)": \(/gm,
] as const;
const sources = readdirSync("src", { recursive: true, encoding: "utf8" }).filter((file) =>
  file.endsWith(".ts"),
);
const errors: readonly string[] = inputErrorCodes;
const written = sources.flatMap((file) => {
  // Codes of problems are those of errors.
  if (file.endsWith("mixingText.ts") || /core.read\w+\.ts$/.test(file)) return [];
  const text = readFileSync(`src/${file}`, "utf8").replace(/\/\*[\s\S]*?\*\//g, "");
  return CODES.flatMap((form) => [...text.matchAll(form)].map(([, code]) => code!)).filter(
    (code) => !errors.includes(code),
  );
});

describe("the page of cautions", () => {
  it("has every code of the sources, and none besides, each once", () => {
    expect(new Set(written).size).toBeGreaterThan(70);
    expect([...listed].sort()).toEqual([...new Set(written)].sort());
  });
  it("has the codes of cautionCodes, in their order", () => {
    expect(cautionCodes).toEqual(listed);
    expect(Object.isFrozen(cautionCodes)).toBe(true);
  });
});
