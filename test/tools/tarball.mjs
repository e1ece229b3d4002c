/*
 * Part of npm run package: what the tarball holds. Every script in it is reached from `exports` or `bin`
 * through imports, every dependency that is listed is imported by one of them, and every source map carries
 * its sources.
 */
import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import { posix } from "node:path";

const manifest = JSON.parse(readFileSync("package.json", "utf8"));
const packed = execFileSync("npm", ["pack", "--dry-run", "--json", "--ignore-scripts"], { encoding: "utf8" });
const [{ size, files }] = JSON.parse(packed);
const paths = files.map(({ path }) => path);
const problems = [];

/** The files that `exports` and `bin` name, whatever the conditions. */
const named = (entry) => (typeof entry === "string" ? [entry] : Object.values(entry ?? {}).flatMap(named));
const queue = [...named(manifest.exports), ...named(manifest.bin)].map((path) => posix.normalize(path));
const seen = new Set();
const packages = new Set();
const IMPORT = /(?:^|[\s;}])(?:import|export)\s[^;"']*?["']([^"']+)["']|(?:require|import)\("([^"]+)"\)/gm;

for (let path = queue.pop(); path !== undefined; path = queue.pop()) {
  if (seen.has(path)) continue;
  seen.add(path);
  if (!paths.includes(path)) problems.push(`${path} is named or imported, and not in the tarball`);
  if (!/\.[cm]?js$/.test(path) || !existsSync(path)) continue;
  for (const [, imported, required] of readFileSync(path, "utf8").matchAll(IMPORT)) {
    const target = imported ?? required;
    if (target.startsWith(".")) queue.push(posix.join(posix.dirname(path), target));
    else if (!builtinModules.includes(target.replace(/^node:/, ""))) packages.add(target);
  }
}

for (const path of paths) {
  if (/\.[cm]?js$/.test(path) && !seen.has(path)) problems.push(`${path} is reached by nothing`);
  if (!path.endsWith(".js.map") && !path.endsWith(".cjs.map")) continue;
  const { sources, sourcesContent } = JSON.parse(readFileSync(path, "utf8"));
  if (sources.length === 0 || sources.length !== sourcesContent?.filter(Boolean).length)
    problems.push(`${path} lacks its sources`);
}
for (const name of Object.keys(manifest.dependencies))
  if (!packages.has(name)) problems.push(`${name} is a dependency, and imported by no file`);
for (const name of packages)
  if (!(name in manifest.dependencies)) problems.push(`${name} is imported, and no dependency`);

for (const problem of problems) console.log(problem);
if (problems.length > 0) process.exitCode = 1;
else console.log(`${paths.length} files, ${Math.round(size / 1000)} kB packed: every script is reached`);
