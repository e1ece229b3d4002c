/*
 * npm run build:once: builds the package, unless dist already is what these sources give. So the checks that want a
 * build may each ask for one, and one is made. With --no-types it leaves the declarations out, which take most of the
 * time: to run the command nobody needs them.
 */
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

const STAMP = "node_modules/.cache/darkroom-kinetics/built";
/** How the stamp of a build without types ends. */
const WITHOUT = " without types";
const withTypes = !process.argv.includes("--no-types");
const BUILT = [
  "dist/index.js",
  "dist/index.cjs",
  ...(withTypes ? ["dist/index.d.ts", "dist/index.d.cts"] : []),
  "dist/node/index.js",
  "dist/node/command/main.js",
];

const sources = readdirSync("src", { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath, entry.name))
  .sort();
const hash = createHash("sha256");
for (const path of [
  "package.json",
  "package-lock.json",
  "tsconfig.json",
  "tsup.config.ts",
  "test/tools/build.mjs",
  ...sources,
])
  hash.update(path).update("\0").update(readFileSync(path)).update("\0");
const wanted = hash.digest("hex");

const stamp = existsSync(STAMP) ? readFileSync(STAMP, "utf8") : "";
const same = stamp === wanted || (!withTypes && stamp === wanted + WITHOUT);
if (!same || !BUILT.every((path) => existsSync(path))) {
  execFileSync("npm", ["run", "--silent", "build", ...(withTypes ? [] : ["--", "--no-dts"])], {
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  mkdirSync(dirname(STAMP), { recursive: true });
  writeFileSync(STAMP, withTypes ? wanted : wanted + WITHOUT);
}
