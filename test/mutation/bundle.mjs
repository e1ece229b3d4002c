/*
 * The tests and the source in one bundle, which is evaluated afresh for each mutant: some tens of milliseconds
 * in place of the start of the test framework. That is possible because everything under test is a pure
 * function.
 */
import { join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { compileFunction } from "node:vm";
import { context } from "esbuild";
import { filesIn } from "./files.mjs";

/**
 * The tests that count what other tests have checked: they test no source, and fail when only some tests run.
 */
const COUNTS_OTHERS = "no row was dropped";

/**
 * Bundles the tests with the source below `folder`, and gives a function that does so again with other texts for some
 * source files, by their path. What that gives evaluates the bundle afresh, only the test files that are wanted, and
 * returns the tests they declare. Packages stay outside and are loaded once; `standIns` take the place of some.
 */
export async function bundler(folder, files = filesIn(folder), standIns = {}) {
  let changed = new Map();
  const bundle = await context({
    stdin: {
      // The seed of the property tests first: a mutant's fate must not depend on chance. A file is evaluated
      // only when one of its tests is to run.
      contents: ["test/setup.ts", ...files]
        .map(
          (file) =>
            `if (wanted(${JSON.stringify(file)})) { require("vitest").enter(${JSON.stringify(file)}); require("./${file}"); }`,
        )
        .join("\n"),
      resolveDir: folder,
    },
    bundle: true,
    write: false,
    metafile: true,
    format: "cjs",
    platform: "node",
    // A test that loads an old package by createRequire(import.meta.url) gets the folder's own address.
    define: { "import.meta.url": JSON.stringify(pathToFileURL(join(folder, "package.json")).href) },
    packages: "external",
    logLevel: "silent",
    absWorkingDir: folder,
    // The changed text in place of the file, which stays as it is.
    plugins: [
      {
        name: "changed",
        setup({ onLoad }) {
          onLoad({ filter: /[\\/]src[\\/].*\.ts$/ }, ({ path }) => {
            const contents = changed.get(relative(folder, path).replaceAll("\\", "/"));
            return contents === undefined ? undefined : { contents, loader: "ts" };
          });
        },
      },
    ],
  });
  const standIn = await import(pathToFileURL(join(folder, "test/mutation/vitest.mjs")).href);
  const modules = new Map([["vitest", standIn], ...Object.entries(standIns)]);
  const withTexts = async (texts = new Map()) => {
    changed = texts;
    const { outputFiles, metafile } = await bundle.rebuild();
    const outside = new Set(
      Object.values(metafile.outputs).flatMap(({ imports }) =>
        imports.filter(({ external }) => external).map(({ path }) => path),
      ),
    );
    for (const name of outside)
      if (!modules.has(name)) modules.set(name, { __esModule: true, ...(await import(name)) });
    const run = compileFunction(outputFiles[0].text, ["require", "module", "exports", "wanted"]);
    return (wanted = () => true) => {
      standIn.registered.length = 0;
      run(
        (name) => modules.get(name),
        { exports: {} },
        {},
        (file) => file === "test/setup.ts" || wanted(file),
      );
      return standIn.registered.filter(({ name }) => !name.includes(COUNTS_OTHERS));
    };
  };
  return { withTexts, end: () => bundle.dispose() };
}

/** What a test says when it fails, or undefined when it passes. */
export async function failureOf(run) {
  try {
    await run();
    return undefined;
  } catch (error) {
    return String(error?.message ?? error).slice(0, 500);
  }
}
