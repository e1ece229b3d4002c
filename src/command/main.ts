#!/usr/bin/env node
/*
 * The program: files, streams and the clock of Node around the command.
 */
import { readFileSync, statSync } from "node:fs";
import process from "node:process";
import { run } from "./run.js";

/** No recipe and no day is longer: what is larger was meant for another program. */
const MOST_BYTES = 10_000_000;

const manifest = JSON.parse(readFileSync(new URL("../../../package.json", import.meta.url), "utf8")) as {
  readonly version: string;
};

function read(path: string): string {
  const source = path === "-" ? process.stdin.fd : path;
  if (path !== "-" && statSync(path).size > MOST_BYTES)
    throw new Error(`it is larger than ${MOST_BYTES / 1e6} MB`);
  return readFileSync(source, "utf8");
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
