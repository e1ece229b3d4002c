/*
 * Mutation testing in one process. The usual runner starts the test framework anew for each mutant, one to
 * four seconds each. Here the tests and the mutated source are bundled once; for each mutant the bundle is
 * evaluated again and only the tests that reach the mutant run, some tens of milliseconds. That is possible
 * because everything under test is a pure function.
 */
import { declareClassPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import { bundler, failureOf } from "./bundle.mjs";
import { filesIn } from "./files.mjs";

/**
 * Left out besides: the slow lane, which would take longer than all mutants together; tests that read the source as
 * text, which see the tool's own changes in it; and one whose snapshot only the usual runner keeps.
 */
const LEFT_OUT =
  /\.slow\.|^test\/(layering|growth\/bounds|mutation\/handMutants|texts\/bundle|texts\/germanWords)\.test/;

/**
 * Which test files to take besides, a regular expression; all when left out. A change of what is worked out once at the
 * start is tried against every test, so that a module's own tests are done in a tenth of the time. Fewer tests notice
 * fewer changes: what they count is the least.
 */
const TAKEN = new RegExp(process.env.MUTATION_TESTS ?? "");

const PASSED = 0;
const FAILED = 1;

/** The runner that the mutation tool drives: one dry run for coverage, then a run for each mutant. */
class InProcessRunner {
  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    globalThis.__stryker__ ??= {};
    const { withTexts, end } = await bundler(
      process.cwd(),
      filesIn(process.cwd()).filter((file) => TAKEN.test(file) && !LEFT_OUT.test(file)),
    );
    this.evaluate = await withTexts();
    await end();
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

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, "in-process", InProcessRunner)];
