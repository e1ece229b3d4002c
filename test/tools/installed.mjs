/*
 * For scripts that use the packed package beside tools of their own: programs run with their output, and tools
 * installed once at their pinned versions into a cache outside git.
 */
import { execFileSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** A program that cannot be had on this machine. */
export class NotChecked extends Error {}

/** Runs a program and returns what it printed; what it printed last on failing becomes the error. */
export function run(file, args, cwd) {
  const env = { ...process.env, NO_COLOR: "1", DENO_NO_UPDATE_CHECK: "1" };
  try {
    const stdio = ["ignore", "pipe", "pipe"];
    return execFileSync(file, args, { cwd, env, encoding: "utf8", stdio, timeout: 300_000 });
  } catch (error) {
    const said = `${error.stderr ?? ""}${error.stdout ?? ""}`.trim().split("\n").slice(-12).join(" | ");
    throw new Error(said || error.message);
  }
}

/** Runs npm without asking anything of its service but packages. */
export function npm(args, cwd) {
  return run("npm", [...args, "--no-audit", "--no-fund", "--ignore-scripts", "--loglevel=error"], cwd);
}

/** Installs the tools of a folder's package-lock.json into a cache, once for each lock. */
export function installTools(here, cache) {
  mkdirSync(cache, { recursive: true });
  const same = (name) =>
    existsSync(join(cache, name)) &&
    readFileSync(join(cache, name), "utf8") === readFileSync(join(here, name), "utf8");
  if (same("package-lock.json") && existsSync(join(cache, "node_modules"))) return;
  for (const name of ["package.json", "package-lock.json"]) copyFileSync(join(here, name), join(cache, name));
  npm(["ci"], cache);
}
