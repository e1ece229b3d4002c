/* Which test files take part in mutation testing. */
import { readdirSync } from "node:fs";
import { join, relative } from "node:path";

/**
 * Tests that read the source as text would see the mutated text; those of docs and tools test no source, and
 * that of speed would see the tool. The simulations of thousands of runs take minutes.
 */
const LEFT_OUT =
  /^test\/release\.test\.ts$|^test\/(docs|accuracy|runtimes|fuzz|notebooks)\/|recipe\/speed\.slow|(gates|worlds)\.slow/;

/** The test files below a folder, sorted, with slashes. */
export function filesIn(folder) {
  return readdirSync(join(folder, "test"), { recursive: true, withFileTypes: true })
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll("\\", "/"))
    .filter((file) => file.endsWith(".test.ts") && !LEFT_OUT.test(file))
    .sort();
}
