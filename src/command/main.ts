#!/usr/bin/env node
/*
 * The program: files, streams and the clock of Node around the command.
 */
import { readFileSync, readSync, statSync } from "node:fs";
import process from "node:process";
import { run } from "./run.js";
import { wholeInput } from "./wholeInput.js";

/** No recipe and no day is longer: what is larger was meant for another program. */
const MOST_BYTES = 10_000_000;

const manifest = JSON.parse(readFileSync(new URL("../../../package.json", import.meta.url), "utf8")) as {
  readonly version: string;
};

/** Standard input. Its stream is not touched: that would set a pipe to give what it has and never to wait. */
const STANDARD_INPUT = 0;

function read(path: string): string {
  if (path === "-") return wholeInput((bytes) => readSync(STANDARD_INPUT, bytes), wait);
  if (statSync(path).size > MOST_BYTES) throw new Error(`it is larger than ${MOST_BYTES / 1e6} MB`);
  return readFileSync(path, "utf8");
}

/** Nothing changes this array: whoever waits for it sleeps. */
const UNCHANGED = new Int32Array(new SharedArrayBuffer(4));

function wait(ms: number): void {
  Atomics.wait(UNCHANGED, 0, 0, ms);
}

// A reader that has seen enough, such as head, closes the pipe.
process.stdout.on("error", (error: Error & { readonly code?: string }) => {
  if (error.code !== "EPIPE") throw error;
});

process.exitCode = run(process.argv.slice(2), {
  version: manifest.version,
  read,
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  nowMs: () => performance.now(),
  watched: process.stderr.isTTY,
});
