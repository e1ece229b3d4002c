/*
 * npm run pack:twice: builds and packs the package in two clean folders of different names and compares the
 * tarballs, which must be one and the same to the byte: whoever builds the tagged sources gets what was
 * published.
 */
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

const inputs = [
  "src",
  "package.json",
  "package-lock.json",
  "tsconfig.json",
  "tsup.config.ts",
  "README.md",
  "LICENSE",
  "CHANGELOG.md",
  "DEVELOPERS.md",
  "docs",
];
const folder = mkdtempSync(join(tmpdir(), "pack-twice-"));

function packed(name) {
  const copy = join(folder, name);
  mkdirSync(copy);
  for (const input of inputs) cpSync(input, join(copy, input), { recursive: true });
  symlinkSync(resolve("node_modules"), join(copy, "node_modules"));
  const run = (file, args) =>
    execFileSync(file, args, { cwd: copy, encoding: "utf8", stdio: ["ignore", "pipe", "inherit"] });
  run(process.execPath, [resolve("node_modules/tsup/dist/cli-default.js"), "--silent"]);
  const [{ filename, files }] = JSON.parse(run("npm", ["pack", "--json", "--ignore-scripts"]));
  const hash = (path) =>
    createHash("sha256")
      .update(readFileSync(join(copy, path)))
      .digest("hex");
  return { tarball: hash(filename), files: Object.fromEntries(files.map(({ path }) => [path, hash(path)])) };
}

try {
  const [one, two] = [packed("one"), packed("another-name")];
  const names = new Set([...Object.keys(one.files), ...Object.keys(two.files)]);
  const differing = [...names].filter((name) => one.files[name] !== two.files[name]);
  for (const name of differing) console.log(`differs: ${name}`);
  console.log(`${names.size} files, sha256 ${one.tarball}`);
  console.log(
    one.tarball === two.tarball
      ? "the same package twice"
      : `another package the second time: ${two.tarball}`,
  );
  if (one.tarball !== two.tarball) process.exitCode = 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
