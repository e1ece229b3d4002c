/*
 * npm run build: empties dist and builds the package; what is given besides, such as --no-dts, goes to tsup. The
 * declarations for require() are made from those for import: they say the same of the same names, in files that
 * end in .d.cts and lead to others that end in .cjs. To have them made anew takes as long as all the rest.
 */
import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import process from "node:process";

rmSync("dist", { recursive: true, force: true });
const tsup = resolve("node_modules/tsup/dist/cli-default.js");
execFileSync(process.execPath, [tsup, "--silent", ...process.argv.slice(2)], { stdio: "inherit" });

for (const entry of readdirSync("dist", { recursive: true, withFileTypes: true })) {
  const path = join(entry.parentPath, entry.name);
  if (!entry.isFile() || !path.endsWith(".d.ts")) continue;
  const text = readFileSync(path, "utf8").replaceAll(/(["'])(\.{1,2}\/[^"'\n]+)\.js\1/g, "$1$2.cjs$1");
  writeFileSync(path.replace(/\.ts$/, ".cts"), text);
}
