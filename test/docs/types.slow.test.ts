/*
 * The ts blocks of the pages are pasted into strict projects: each must say where its names come from, and pass the compiler as it stands.
 * An example over a function is shown by the editor, which adds the imports on pasting: so are they here.
 */
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
  paths: {
    "darkroom-kinetics": [resolve("src/index.ts")],
    "darkroom-kinetics/texts/de": [resolve("src/texts/de.ts")],
  },
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

/** The names that a module exports, types among them. */
function exportsOf(file: string): readonly string[] {
  const program = ts.createProgram([resolve(file)], OPTIONS);
  const checker = program.getTypeChecker();
  const module = checker.getSymbolAtLocation(program.getSourceFile(resolve(file))!)!;
  return checker.getExportsOfModule(module).map(({ name }) => name);
}

describe("the examples over the functions pass a strict compiler with the imports that an editor adds", () => {
  it("all of them", { timeout: 120_000 }, () => {
    const names = exportsOf("src/index.ts");
    const blocks = filesBelow("src", [".ts"]).flatMap((path) => blocksOf(path));
    expect(blocks.length).toBeGreaterThan(100);
    const pasted = blocks.map(({ where, code }) => {
      const used = names.filter((name) => new RegExp(`\\b${name}\\b`).test(code.replaceAll(/\/\/.*$/gm, "")));
      const german = /\bde\./.test(code) ? 'import { de } from "darkroom-kinetics/texts/de";\n' : "";
      return { where, code: `${german}import { ${used.join(", ")} } from "darkroom-kinetics";\n${code}` };
    });
    expect(complaints(pasted)).toEqual([]);
  });
});

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
