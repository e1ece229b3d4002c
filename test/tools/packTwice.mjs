/*
 * npm run pack:twice: builds and packs the last commit in two clean clones under different names and compares the
 * tarballs, file by file and to the byte: whoever builds the tagged sources gets what was published. The licences of
 * the package and of the code that it carries have to be among the files. The tarball is left in reports/package.tgz.
 */
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

const folder = mkdtempSync(join(tmpdir(), "pack-twice-"));

function packed(name) {
  const copy = join(folder, name);
  // The clone of a folder of another owner is refused otherwise, as in a container that mounts it.
  const trusted = ["-c", `safe.directory=${resolve(".git")}`, "-c", `safe.directory=${resolve(".")}`];
  execFileSync("git", [...trusted, "clone", "--quiet", "--no-local", resolve("."), copy], {
    stdio: "inherit",
  });
  symlinkSync(resolve("node_modules"), join(copy, "node_modules"));
  const run = (file, args) =>
    execFileSync(file, args, { cwd: copy, encoding: "utf8", stdio: ["ignore", "pipe", "inherit"] });
  run(process.execPath, ["test/tools/build.mjs"]);
  const [{ filename, files }] = JSON.parse(run("npm", ["pack", "--json", "--ignore-scripts"]));
  const hash = (path) =>
    createHash("sha256")
      .update(readFileSync(join(copy, path)))
      .digest("hex");
  mkdirSync("reports", { recursive: true });
  copyFileSync(join(copy, filename), "reports/package.tgz");
  return { tarball: hash(filename), files: Object.fromEntries(files.map(({ path }) => [path, hash(path)])) };
}

try {
  const [one, two] = [packed("one"), packed("another-name")];
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
