/*
 * npm run pack:twice: packs the last commit from two clean clones in different places and compares the tarballs,
 * file by file and to the byte: whoever builds the tagged sources gets what was published. This folder is one of the
 * two where nothing in it was changed, as in a fresh clone; else both are made. The licences of the package and of
 * the code that it carries have to be among the files. The tarball is left in reports/package.tgz.
 */
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

const folder = mkdtempSync(join(tmpdir(), "pack-twice-"));
// A folder of another owner is refused otherwise, as in a container that mounts it.
const trusted = ["-c", `safe.directory=${resolve(".git")}`, "-c", `safe.directory=${resolve(".")}`];

/** What a program prints that runs in a folder. */
const printed = (cwd, file, args) =>
  execFileSync(file, args, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "inherit"] });

/** A clean clone of the last commit, built. */
function cloned(name) {
  const copy = join(folder, name);
  printed(".", "git", [...trusted, "clone", "--quiet", "--no-local", resolve("."), copy]);
  symlinkSync(resolve("node_modules"), join(copy, "node_modules"));
  printed(copy, process.execPath, ["test/tools/build.mjs"]);
  return copy;
}

/** This folder, built, or a clone where it is not as the last commit has it. */
function here() {
  if (printed(".", "git", [...trusted, "status", "--porcelain"]) !== "") return cloned("one");
  printed(".", "npm", ["run", "--silent", "build:once"]);
  return resolve(".");
}

/** The hashes of the tarball that a folder gives, and of its files. */
function packed(from, to) {
  mkdirSync(join(folder, to));
  const pack = ["pack", "--json", "--ignore-scripts", "--pack-destination", join(folder, to)];
  const [{ filename, files }] = JSON.parse(printed(from, "npm", pack));
  const hash = (path) => createHash("sha256").update(readFileSync(path)).digest("hex");
  const tarball = join(folder, to, filename);
  mkdirSync("reports", { recursive: true });
  copyFileSync(tarball, "reports/package.tgz");
  const hashes = files.map(({ path }) => [path, hash(join(from, path))]);
  return { tarball: hash(tarball), files: Object.fromEntries(hashes) };
}

try {
  const [one, two] = [packed(here(), "first"), packed(cloned("another-name"), "second")];
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
