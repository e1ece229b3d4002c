/*
 * npm run pack:twice: builds and packs the last commit in two clean clones under different names and compares the
 * tarballs, file by file and to the byte: whoever builds the tagged sources gets what was published. A checkout that
 * has no change is the first of them. The licences of the package and of the code that it carries have to be among
 * the files. The tarball is left in reports/package.tgz.
 */
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

const folder = mkdtempSync(join(tmpdir(), "pack-twice-"));

// The clone of a folder of another owner is refused otherwise, as in a container that mounts it.
const trusted = ["-c", `safe.directory=${resolve(".git")}`, "-c", `safe.directory=${resolve(".")}`];
const run = (cwd, file, args) =>
  execFileSync(file, args, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "inherit"] });

/** A clean clone, built. */
function clone(name) {
  const copy = join(folder, name);
  run(".", "git", [...trusted, "clone", "--quiet", "--no-local", resolve("."), copy]);
  symlinkSync(resolve("node_modules"), join(copy, "node_modules"));
  run(copy, process.execPath, [resolve("node_modules/tsup/dist/cli-default.js"), "--silent"]);
  return copy;
}

/** This checkout, built, where it is the last commit and nothing else; a clone where it is not. */
function checkout() {
  if (run(".", "git", [...trusted, "status", "--porcelain"]) !== "") return clone("one");
  run(".", process.execPath, [resolve("test/tools/buildOnce.mjs")]);
  return resolve(".");
}

/** Packs a built copy; the tarball is left in reports. */
function packed(copy) {
  mkdirSync("reports", { recursive: true });
  const [{ filename, files }] = JSON.parse(
    run(copy, "npm", ["pack", "--json", "--ignore-scripts", "--pack-destination", folder]),
  );
  const hash = (path) => createHash("sha256").update(readFileSync(path)).digest("hex");
  const tarball = join(folder, filename);
  copyFileSync(tarball, "reports/package.tgz");
  return {
    tarball: hash(tarball),
    files: Object.fromEntries(files.map(({ path }) => [path, hash(join(copy, path))])),
  };
}

try {
  const [one, two] = [packed(checkout()), packed(clone("another-name"))];
  const names = new Set([...Object.keys(one.files), ...Object.keys(two.files)]);
  const differing = [...names].filter((name) => one.files[name] !== two.files[name]);
  for (const name of differing) console.log(`differs: ${name}`);
  const lacking = ["LICENSE", "dist/THIRD-PARTY-LICENCES.txt"].filter((name) => !names.has(name));
  for (const name of lacking) console.log(`no licence in the package: ${name}`);
  console.log(`${names.size} files, sha256 ${one.tarball}`);
  console.log(
    one.tarball === two.tarball
      ? "the same package twice"
      : `another package the second time: ${two.tarball}`,
  );
  if (one.tarball !== two.tarball || differing.length > 0 || lacking.length > 0) process.exitCode = 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
