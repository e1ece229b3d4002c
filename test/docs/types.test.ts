/* The ts blocks of the pages are pasted into strict projects: each must say where its names come from, and pass the compiler as it stands. */
import { resolve } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { blocksOf, filesBelow, type Block } from "./examples.js";

const OPTIONS: ts.CompilerOptions = {
  strict: true,
  exactOptionalPropertyTypes: true,
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.NodeNext,
  moduleResolution: ts.ModuleResolutionKind.NodeNext,
  moduleDetection: ts.ModuleDetectionKind.Force,
  paths: { "darkroom-kinetics": [resolve("src/index.ts")] },
  types: [],
  skipLibCheck: true,
  noEmit: true,
};

/** What the compiler has to say about each block, as a module of its own. */
function complaints(blocks: readonly Block[]): readonly string[] {
  const files = new Map(
    blocks.map(({ code, where }) => [resolve(`${where.replaceAll(/\W/g, "-")}.mts`), { code, where }]),
  );
  const disk = ts.createCompilerHost(OPTIONS);
  const host: ts.CompilerHost = {
    ...disk,
    fileExists: (path) => files.has(path) || disk.fileExists(path),
    getSourceFile: (path, language, ...rest) => {
      const block = files.get(path);
      return block
        ? ts.createSourceFile(path, block.code, language)
        : disk.getSourceFile(path, language, ...rest);
    },
  };
  const program = ts.createProgram([...files.keys()], OPTIONS, host);
  return [...files].flatMap(([path, { where }]) => {
    const source = program.getSourceFile(path);
    const found = [...program.getSyntacticDiagnostics(source), ...program.getSemanticDiagnostics(source)];
    return found.map(({ messageText }) => `${where}: ${ts.flattenDiagnosticMessageText(messageText, "\n")}`);
  });
}

describe("the blocks of the pages pass a strict compiler as they are pasted", () => {
  const pages = ["README.md", ...filesBelow("docs", [".md"]).filter((path) => !path.startsWith("docs/api"))];
  it("all of them", { timeout: 60_000 }, () => {
    const blocks = pages.flatMap((page) => blocksOf(page)).filter(({ code }) => !code.includes("require("));
    expect(blocks.length).toBeGreaterThan(30);
    expect(complaints(blocks)).toEqual([]);
  });

  it("one that does not is named", { timeout: 60_000 }, () => {
    const wrong =
      'import { temperatureFactor } from "darkroom-kinetics";\nconst law = { kind: "coefficient", ratio: 2, intervalC: 10 };\ntemperatureFactor(20, 30, law);';
    const found = complaints([
      { where: "here", code: wrong },
      { where: "there", code: "learn;" },
    ]);
    expect(found).toEqual([
      expect.stringMatching(/^here: .*is not assignable to parameter of type 'TemperatureLaw \| undefined'/),
      "there: Cannot find name 'learn'.",
    ]);
  });
});
