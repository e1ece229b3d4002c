import { readFileSync, writeFileSync } from "node:fs";
import { build } from "esbuild";
import { defineConfig, type Options } from "tsup";

const common: Options = {
  target: "node20",
  platform: "neutral",
  sourcemap: true,
  splitting: false,
  // test/tools/build.mjs empties dist before: the builds run side by side.
  clean: false,
};
/** What an app imports: the package, and each language beside it. */
const entries = ["src/index.ts", "src/texts/de.ts"];
const types: Options["dts"] = {
  entry: entries,
  compilerOptions: { ignoreDeprecations: "6.0" },
};

/** Every source file that an import reaches: a file of types alone would be shipped as an empty one. */
async function reached(): Promise<string[]> {
  const { metafile } = await build({
    entryPoints: entries,
    bundle: true,
    outdir: "out",
    packages: "external",
    format: "esm",
    metafile: true,
    write: false,
    logLevel: "silent",
  });
  return Object.keys(metafile.inputs).sort();
}

/** d3-interpolate, with the d3-color that it imports, is ESM only: not every CommonJS loader takes that. */
const inlined = ["d3-interpolate", "d3-color"];

/** The licences of the packages whose code dist carries, in one file beside it. */
function writeLicences(): void {
  const parts = inlined.map((name) => {
    const folder = `node_modules/${name}`;
    const { version, license } = JSON.parse(readFileSync(`${folder}/package.json`, "utf8")) as {
      readonly version: string;
      readonly license: string;
    };
    return `${name} ${version} (${license})\n\n${readFileSync(`${folder}/LICENSE`, "utf8").trim()}\n`;
  });
  writeFileSync("dist/THIRD-PARTY-LICENCES.txt", parts.join("\n----\n\n"));
}

/** The schema of a recipe as a file, for editors and for programs in other languages. */
async function writeSchema(): Promise<void> {
  const { outputFiles } = await build({
    entryPoints: ["src/recipe/recipeSchema.ts"],
    bundle: true,
    format: "esm",
    platform: "node",
    write: false,
    logLevel: "silent",
  });
  const code = Buffer.from(outputFiles[0]?.text ?? "").toString("base64");
  const { recipeSchema } = (await import(`data:text/javascript;base64,${code}`)) as {
    readonly recipeSchema: object;
  };
  writeFileSync("dist/recipe.schema.json", `${JSON.stringify(recipeSchema, null, 2)}\n`);
}

const built: ReturnType<typeof defineConfig> = defineConfig(async (): Promise<Options[]> => [
  // For bundlers: one file a module, so that an app carries only what it imports.
  {
    ...common,
    entry: await reached(),
    outDir: "dist",
    format: "esm",
    bundle: false,
    dts: types,
  },
  // For Node: one readable file a format, since opening a hundred small modules slows each start.
  { ...common, entry: entries, outDir: "dist/node", format: "esm" },
  // The command is a user of that file: what it imports from the package stays an import.
  {
    ...common,
    entry: { "command/main": "src/command/main.ts" },
    outDir: "dist/node",
    format: "esm",
    external: [/^\.\.\/(?:index|texts\/de)\.js$/],
  },
  {
    ...common,
    entry: entries,
    outDir: "dist",
    format: "cjs",
    noExternal: inlined,
    // The file names the code that it carries by its place: node_modules may be a link to elsewhere.
    esbuildOptions: (options) => {
      options.preserveSymlinks = true;
    },
    onSuccess: () => {
      writeLicences();
      return writeSchema();
    },
  },
]);

export default built;
