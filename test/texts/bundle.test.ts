/* What an app carries: another language only when it asks for it. */
import { build } from "esbuild";
import { describe, expect, it } from "vitest";

/** The sources in the bundle of an app that says this. */
async function bundled(contents: string): Promise<readonly string[]> {
  const { metafile } = await build({
    stdin: { contents, resolveDir: process.cwd(), loader: "ts" },
    bundle: true,
    format: "esm",
    platform: "neutral",
    mainFields: ["module", "main"],
    write: false,
    metafile: true,
    logLevel: "silent",
  });
  const [output] = Object.values(metafile.outputs);
  return Object.entries(output!.inputs).flatMap(([path, { bytesInOutput }]) =>
    bytesInOutput > 0 ? [path] : [],
  );
}

const german = (paths: readonly string[]): readonly string[] =>
  paths.filter((path) => path.startsWith("src/texts/"));
const sentences = (paths: readonly string[]): readonly string[] =>
  paths.filter(
    (path) => /\/(?:text|limitText|mixingText|\w+Texts)\.ts$/.test(path) && !path.includes("cautionTexts"),
  );

describe("a bundle", () => {
  it("of the whole package holds no German", async () => {
    const paths = await bundled('export * from "./src/index.ts"');
    expect(paths.length).toBeGreaterThan(250);
    expect(german(paths)).toEqual([]);
  });
  it("that asks for German holds it, and little else", async () => {
    const paths = await bundled('export { de } from "./src/texts/de.ts"');
    expect(german(paths).length).toBeGreaterThan(5);
    expect(paths.length - german(paths).length).toBeLessThan(25);
  });
  it("of compensate alone holds the sentences of what it does, and no others", async () => {
    const paths = sentences(await bundled('export { compensate } from "./src/index.ts"'));
    expect([...paths].sort()).toEqual([
      "src/age/text.ts",
      "src/agitation/text.ts",
      "src/bath/limitText.ts",
      "src/compensate/text.ts",
      "src/contrast/text.ts",
      "src/core/text.ts",
      "src/dilution/text.ts",
      "src/push/text.ts",
      "src/temperature/text.ts",
      "src/use/text.ts",
    ]);
  });
  it("of a plan holds the sentences of its baths, and none of brews or learning", async () => {
    const paths = sentences(await bundled('export { planProcess } from "./src/index.ts"'));
    expect(paths.filter((path) => /brew|learning|steering/.test(path))).toEqual([]);
    expect(paths).toEqual(expect.arrayContaining(["src/bath/text.ts", "src/process/text.ts"]));
  });
});
