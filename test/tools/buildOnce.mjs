/*
 * npm run build:once: builds the package, unless dist already is what these sources give. So the checks that want a
 * build may each ask for one, and one is made.
 */
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

const STAMP = "node_modules/.cache/darkroom-kinetics/built";
const BUILT = [
  "dist/index.js",
  "dist/index.cjs",
  "dist/index.d.ts",
  "dist/index.d.cts",
  "dist/node/index.js",
];

const sources = readdirSync("src", { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath, entry.name))
  .sort();
const hash = createHash("sha256");
for (const path of ["package.json", "package-lock.json", "tsconfig.json", "tsup.config.ts", ...sources])
  hash.update(path).update("\0").update(readFileSync(path)).update("\0");
const wanted = hash.digest("hex");

const same = existsSync(STAMP) && readFileSync(STAMP, "utf8") === wanted;
if (!same || !BUILT.every((path) => existsSync(path))) {
  execFileSync("npm", ["run", "--silent", "build"], {
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  mkdirSync(dirname(STAMP), { recursive: true });
  writeFileSync(STAMP, wanted);
}
