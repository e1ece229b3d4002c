import { readdirSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { resolve } from "node:path";
import { transform } from "esbuild";
import { defineConfig, type Options } from "tsup";

// Three builds share one dist: only the first cleans.
const common: Options = { target: "node20", platform: "neutral", sourcemap: false };
const types: Options["dts"] = { entry: "src/index.ts", compilerOptions: { ignoreDeprecations: "6.0" } };

/** The sources of simple-statistics instead of its one big bundle, whose tables cost a start 5 ms even when nothing reads them. */
const lean: NonNullable<Options["esbuildPlugins"]>[number] = {
  name: "simple-statistics-sources",
  setup(build) {
    const path = resolve("node_modules/simple-statistics/index.js");
    build.onResolve({ filter: /^simple-statistics$/ }, () => ({ path, sideEffects: false }));
    build.onResolve({ filter: /^\.\// }, ({ path: file, resolveDir }) =>
      resolveDir.includes("simple-statistics")
        ? { path: resolve(resolveDir, file), sideEffects: false }
        : undefined,
    );
  },
};

/**
 * d3-interpolate builds its colour interpolators as it loads, so that no bundler may drop them: 5 kB in every app, and d3-color with them.
 * Marked as the pure calls they are, they go; what stays is the one function that is used.
 */
const pureInterpolators: NonNullable<Options["esbuildPlugins"]>[number] = {
  name: "pure-interpolators",
  setup(build) {
    build.onLoad({ filter: /d3-interpolate\.mjs$/ }, async ({ path }) => ({
      contents: (await readFile(path, "utf8")).replace(
        /^(var \w+ = )(\(function|\w+\()/gm,
        "$1/* @__PURE__ */ $2",
      ),
    }));
  },
};

/**
 * decimal.js sets itself up as it loads, 3 ms of a start, and serves two functions that many programs never call: in the files for Node it loads
 * with the first of those calls.
 */
const lateDecimal: NonNullable<Options["esbuildPlugins"]>[number] = {
  name: "late-decimal",
  setup(build) {
    build.onResolve({ filter: /^decimal\.js$/ }, ({ importer }) =>
      importer.endsWith(".ts")
        ? { path: "decimal.js", namespace: "late-decimal", sideEffects: false }
        : undefined,
    );
    build.onLoad({ filter: /.*/, namespace: "late-decimal" }, () => ({
      resolveDir: resolve("."),
      contents: `const decimal = () => require("./node_modules/decimal.js/decimal.js");
        export const Decimal = new Proxy(class {}, {
          construct: (_, given) => new (decimal())(...given),
          get: (_, name) => decimal()[name],
        });`,
    }));
    build.onLoad({ filter: /decimal\.js$/ }, async ({ path }) => ({
      contents: (await transform(await readFile(path, "utf8"), { minify: true })).code,
    }));
  },
};

/** The files for Node are written small: a start reads them whole. An error text names its function itself; dist/index.js, for bundlers, keeps all names. */
const small: NonNullable<Options["esbuildOptions"]> = (options) => {
  options.minifySyntax = true;
  options.minifyWhitespace = true;
  options.minifyIdentifiers = true;
};

// Named one by one, since a glob comes in the order in which the disk answers, and with it the chunks change from build to build.
const sources: Record<string, string> = Object.fromEntries(
  readdirSync("src", { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .sort()
    .map((name) => [name.replaceAll("\\", "/").replace(/\.ts$/, ""), `src/${name}`]),
);

const config: Options[] = [
  // For bundlers: every source file is an entry, so that what an app does not import is dropped
  // (decimal.js and d3-interpolate cannot be shaken out of a single bundled index).
  {
    ...common,
    entry: sources,
    format: "esm",
    splitting: true,
    clean: true,
    dts: types,
    noExternal: ["d3-interpolate", "d3-color"],
    esbuildPlugins: [pureInterpolators],
  },
  // For Node: one file with its dependencies, since opening a hundred small modules costs a start 80 ms.
  {
    ...common,
    entry: ["src/index.ts"],
    format: "esm",
    outDir: "dist/node",
    noExternal: [/./],
    splitting: false,
    esbuildPlugins: [lean, lateDecimal, pureInterpolators],
    esbuildOptions: small,
  },
  // For CommonJS: the same. d3-interpolate is ESM only, so it has to be carried in any case.
  {
    ...common,
    entry: ["src/index.ts"],
    format: "cjs",
    noExternal: [/./],
    dts: types,
    esbuildPlugins: [lean, lateDecimal, pureInterpolators],
    esbuildOptions: small,
  },
];

const built: ReturnType<typeof defineConfig> = defineConfig(config);

export default built;
