/*
 * Mutation testing in one process. The usual runner starts the test framework anew for each mutant, one to
 * four seconds each. Here the tests and the mutated source are bundled once; for each mutant the bundle is
 * evaluated again and only the tests that reach the mutant run, some tens of milliseconds. That is possible
 * because everything under test is a pure function.
 */
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { compileFunction } from "node:vm";
import { declareClassPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import { build } from "esbuild";
import { filesIn } from "./files.mjs";

/**
 * The tests that count what other tests have checked: they test no source, and fail when only some tests run.
 */
const COUNTS_OTHERS = "no row was dropped";

const PASSED = 0;
const FAILED = 1;

/**
 * Bundles the tests with the source below `folder` and returns a function that evaluates the bundle afresh,
 * only the test files that are wanted, and returns the tests they declare. Packages stay outside and are
 * loaded once.
 */
async function prepare(folder) {
  const files = filesIn(folder);
  const { outputFiles, metafile } = await build({
    stdin: {
      // The seed of the property tests first: a mutant's fate must not hang on chance. A file is evaluated
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
  });
  const outside = new Set(
    Object.values(metafile.outputs).flatMap(({ imports }) =>
      imports.filter(({ external }) => external).map(({ path }) => path),
    ),
  );
  const standIn = await import(pathToFileURL(join(folder, "test/mutation/vitest.mjs")).href);
  const modules = new Map([["vitest", standIn]]);
  for (const name of outside)
    if (name !== "vitest") modules.set(name, { __esModule: true, ...(await import(name)) });
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
}

/** The runner that the mutation tool drives: one dry run for coverage, then a run for each mutant. */
class InProcessRunner {
  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    globalThis.__stryker__ ??= {};
    this.evaluate = await prepare(process.cwd());
  }

  async dryRun() {
    const state = globalThis.__stryker__;
    Object.assign(state, {
      activeMutant: undefined,
      currentTestId: undefined,
      mutantCoverage: { static: {}, perTest: {} },
    });
    const tests = [];
    for (const { name, run } of this.evaluate()) {
      const start = performance.now();
      state.currentTestId = name;
      const failureMessage = await failureOf(run);
      const status = failureMessage === undefined ? PASSED : FAILED;
      const timeSpentMs = performance.now() - start;
      tests.push({ id: name, name, status, failureMessage, timeSpentMs });
      TIMES.set(name, timeSpentMs);
    }
    state.currentTestId = undefined;
    return { status: "complete", tests, mutantCoverage: state.mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    const state = globalThis.__stryker__;
    const wanted = testFilter && new Set(testFilter);
    Object.assign(state, {
      activeMutant: activeMutant.id,
      mutantCoverage: undefined,
      hitLimit,
      hitCount: hitLimit && 0,
    });
    const result = await firstFailure(this.evaluate, wanted);
    const runaway = hitLimit !== undefined && state.hitCount > hitLimit;
    state.activeMutant = undefined;
    return runaway ? { status: "timeout", reason: "hit limit reached" } : result;
  }
}

/** How long each test took in the dry run, ms: the short ones go first, and mostly find the mutant. */
const TIMES = new Map();

/** Runs the wanted tests until one fails. A mutant that breaks the evaluation itself is found too. */
async function firstFailure(evaluate, wanted) {
  let nrOfTests = 0;
  let declared = [];
  const files = wanted && new Set([...wanted].map((name) => name.split(" > ", 1)[0]));
  const broken = await failureOf(() => {
    declared = evaluate(files && ((file) => files.has(file))).sort(
      (a, b) => (TIMES.get(a.name) ?? 0) - (TIMES.get(b.name) ?? 0),
    );
  });
  if (broken !== undefined)
    return {
      status: "killed",
      failureMessage: broken,
      killedBy: [...(wanted ?? ["evaluation"])].slice(0, 1),
      nrOfTests,
    };
  for (const { name, run } of declared) {
    if (wanted && !wanted.has(name)) continue;
    nrOfTests += 1;
    const failureMessage = await failureOf(run);
    if (failureMessage !== undefined)
      return { status: "killed", failureMessage, killedBy: [name], nrOfTests };
  }
  return { status: "survived", nrOfTests };
}

async function failureOf(run) {
  try {
    await run();
    return undefined;
  } catch (error) {
    return String(error?.message ?? error).slice(0, 500);
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, "in-process", InProcessRunner)];
