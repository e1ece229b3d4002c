/*
 * npm run fuzz: a million calls over every exported function of the built package, with right, nearly right
 * and absurd arguments, frozen. Each call has to give plain data without NaN or Infinity, or a TypeError or
 * RangeError that names its function, within two seconds, and must leave its arguments and everything global
 * as they were. Options: --seed N (printed; the same seed makes the same calls), --calls N, --only NAME.
 */
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import * as kinetics from "darkroom-kinetics";
import { costly, valid } from "./valid.mjs";

const option = (name, otherwise) => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? otherwise : process.argv[at + 1];
};
const seed = Number(option("seed", 20261125));
const total = Number(option("calls", 1_000_000));
const only = option("only");
const HANG_MS = 2000;

const names = Object.keys(kinetics).filter(
  (name) => typeof kinetics[name] === "function" && (only === undefined || name === only),
);
const shares = names.reduce((sum, name) => sum + (costly[name] ?? 1), 0);
const callsEach = total / shares;
const threads = Math.min(availableParallelism(), 4, names.length);
console.log(`fuzz: ${names.length} functions, ${total} calls, seed ${seed}, ${threads} threads`);

const results = [];
const started = performance.now();

/** Fuzzes `mine` in one thread, and goes on in another with the rest when a call does not end. */
function thread(mine) {
  const heartbeat = new SharedArrayBuffer(12);
  const beat = new Int32Array(heartbeat);
  beat[0] = -1;
  return new Promise((done) => {
    const worker = new Worker(new URL("worker.mjs", import.meta.url), {
      workerData: { names: mine, callsEach, seed, heartbeat },
    });
    let last = "";
    let since = performance.now();
    const give = (fault, rest) => {
      clearInterval(watch);
      results.push({
        name: mine[beat[2]],
        counts: { value: 0, refused: 0 },
        slowestMs: 0,
        fault: `FAULT: ${fault}`,
        given: `of call ${beat[1]} in its batch`,
      });
      void worker.terminate();
      done(rest.length === 0 ? undefined : thread(rest));
    };
    const watch = setInterval(() => {
      const now = Atomics.load(beat, 0) < 0 ? "" : `${beat[0]}/${beat[1]}/${beat[2]}`;
      if (now !== last || now === "") [last, since] = [now, performance.now()];
      if (performance.now() - since > HANG_MS)
        give(`a call did not end within ${HANG_MS} ms`, mine.slice(beat[2] + 1));
    }, 100);
    worker.on("message", (result) => results.push(result));
    worker.on("error", (error) => give(`the thread ended: ${error.stack}`, mine.slice(beat[2] + 1)));
    worker.on("exit", () => {
      clearInterval(watch);
      done();
    });
  });
}

await Promise.all(
  Array.from({ length: threads }, (_, index) => thread(names.filter((_, i) => i % threads === index))),
);

let failed = 0;
const fail = (text) => {
  failed += 1;
  console.log(text);
};
let made = 0;
let values = 0;
for (const { name, counts, slowestMs, fault, given, seed: from, path } of results) {
  const sum = counts.value + counts.refused;
  made += sum;
  values += counts.value;
  if (fault !== undefined)
    fail(
      `FAILED ${name}: ${fault}\n  arguments ${given}\n  again: npm run fuzz -- --only ${name} --seed ${from ?? seed}${path === undefined ? "" : ` (shrunk to path ${path})`}`,
    );
  else if (slowestMs > HANG_MS) fail(`FAILED ${name}: one call took ${slowestMs.toFixed(0)} ms`);
  else if (valid[name] !== undefined && counts.value < 0.25 * sum)
    fail(
      `FAILED ${name}: only ${counts.value} of ${sum} calls gave a value: its generator in test/fuzz/valid.mjs no longer fits`,
    );
  if (option("verbose") !== undefined)
    console.log(
      `${name.padEnd(26)} ${String(sum).padStart(8)} calls ${((100 * counts.value) / sum).toFixed(0).padStart(4)} % values, slowest ${slowestMs.toFixed(1)} ms`,
    );
}
for (const name of names) {
  if (valid[name] === undefined)
    fail(`FAILED ${name}: it has no generator of right arguments in test/fuzz/valid.mjs`);
  if (!results.some((result) => result.name === name)) fail(`FAILED ${name}: it was not reached`);
}
if (failed === 0 && made < total) fail(`FAILED: ${made} calls were made, not ${total}`);
console.log(
  `fuzz: ${made} calls, ${values} values, ${made - values} refused, ${failed} faults, in ${((performance.now() - started) / 1000).toFixed(1)} s`,
);
// A thread that hangs in the engine cannot be ended any other way.
process.exit(failed > 0 ? 1 : 0);
