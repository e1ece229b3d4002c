/* Fuzzes a share of the functions in a thread of its own, so that the main thread can notice a call that does not end. */
import { inspect } from "node:util";
import { parentPort, workerData } from "node:worker_threads";
import fc from "fast-check";
import * as kinetics from "darkroom-kinetics";
import { calls, hostile } from "./generators.mjs";
import { deepFreeze, globalState, judge } from "./judge.mjs";
import { costly, valid } from "./valid.mjs";

const { names, callsEach, seed, heartbeat } = workerData;
const beat = new Int32Array(heartbeat);
const BATCH = 1000;
const functions = Object.fromEntries(
  Object.entries(kinetics).filter(([, value]) => typeof value === "function"),
);
const constants = () =>
  JSON.stringify(Object.entries(kinetics).filter(([, value]) => typeof value !== "function"));
const shown = (value) => inspect(value, { depth: 8, breakLength: Infinity, maxArrayLength: 20 });

/** The last arguments, for the report of a call that does not end. */
let current;

function fuzz(name) {
  const counts = { value: 0, refused: 0 };
  const arbitrary = valid[name] === undefined ? fc.array(hostile, { maxLength: 4 }) : calls(valid[name]);
  const quota = Math.ceil((callsEach * (costly[name] ?? 1)) / BATCH) * BATCH;
  let slowestMs = 0;
  for (let batch = 0; batch * BATCH < quota; batch += 1) {
    const before = globalState();
    let made = 0;
    const property = fc.property(arbitrary, (given) => {
      deepFreeze(given);
      made += 1;
      current = given;
      Atomics.store(beat, 1, made);
      Atomics.store(beat, 0, Math.trunc(performance.now()));
      const start = performance.now();
      const outcome = judge(functions, name, given);
      slowestMs = Math.max(slowestMs, performance.now() - start);
      Atomics.store(beat, 0, -1);
      if (outcome.startsWith("FAULT")) throw new Error(outcome);
      counts[outcome] += 1;
      if (made % 16 === 0 && judge(functions, name, given) !== outcome)
        throw new Error("FAULT: another outcome the second time");
      return true;
    });
    const run = fc.check(property, { seed: seed + batch, numRuns: BATCH, interruptAfterTimeLimit: 30_000 });
    if (run.failed)
      return {
        name,
        counts,
        slowestMs,
        fault: run.errorInstance?.message ?? String(run.error),
        given: shown(run.counterexample?.[0]),
        seed: seed + batch,
        path: run.counterexamplePath,
      };
    if (globalState() !== before)
      return {
        name,
        counts,
        slowestMs,
        fault: "FAULT: something global was changed",
        given: `some call of the batch with seed ${seed + batch}`,
      };
  }
  return { name, counts, slowestMs, known: valid[name] !== undefined };
}

const before = constants();
for (const [index, name] of names.entries()) {
  Atomics.store(beat, 2, index);
  const result = fuzz(name);
  if (constants() !== before) result.fault ??= "FAULT: an exported constant was changed";
  parentPort.postMessage(result);
}
void current;
