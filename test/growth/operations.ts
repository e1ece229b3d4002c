/*
 * How much work a call does, counted and not timed: V8 counts how often each block of the sources runs. The same call
 * counts the same on every machine, however busy it is.
 */
import { Session } from "node:inspector";
import { setFlagsFromString } from "node:v8";

interface Coverage {
  readonly result: readonly {
    readonly url: string;
    readonly functions: readonly { readonly ranges: readonly { readonly count: number }[] }[];
  }[];
}

const session = new Session();

/** Asks the engine and gives its answer, which comes at once. */
function ask(method: string, parameters: object = {}): unknown {
  let answer: unknown;
  session.post(method, parameters, (error, result: unknown) => {
    if (error !== null) throw error;
    answer = result;
  });
  return answer;
}

/** Runs what counts with the counting on. */
export function counting<T>(run: () => T): T {
  // Optimised code does not count.
  const TIERS = ["opt", "maglev"];
  for (const tier of TIERS) setFlagsFromString(`--no-${tier}`);
  session.connect();
  ask("Profiler.enable");
  ask("Profiler.startPreciseCoverage", { callCount: true, detailed: true });
  try {
    return run();
  } finally {
    ask("Profiler.stopPreciseCoverage");
    ask("Profiler.disable");
    session.disconnect();
    for (const tier of TIERS) setFlagsFromString(`--${tier}`);
  }
}

/** How many blocks of the package a call ran through, from its sources or as it is built. */
export function operations(call: () => unknown): number {
  ask("Profiler.takePreciseCoverage");
  call();
  const { result } = ask("Profiler.takePreciseCoverage") as Coverage;
  let sum = 0;
  for (const { url, functions } of result)
    if (/\/src\/|\/dist\/node\//.test(url))
      for (const { ranges } of functions) for (const { count } of ranges) sum += count;
  return sum;
}
