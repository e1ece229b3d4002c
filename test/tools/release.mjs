/*
 * Refuses a release that is not ready, before anything is published. Usage: node test/tools/release.mjs TAG
 * [OWNER/NAME] The three addresses have to stand in package.json. With the name of the repository that publishes,
 * package.json has to name it too: provenance is refused otherwise.
 */
import { readFileSync } from "node:fs";

const [tag, repository] = process.argv.slice(2);
const manifest = JSON.parse(readFileSync("package.json", "utf8"));
const lock = JSON.parse(readFileSync("package-lock.json", "utf8"));
const { version } = manifest;
const problems = [];
const need = (holds, text) => void (holds || problems.push(text));

need(tag === `v${version}`, `the tag is ${tag}, package.json says ${version}: they must agree`);
need(lock.version === version, `package-lock.json says ${lock.version}: run npm install`);
const heading = new RegExp(`^## \\[${version.replaceAll(".", "\\.")}\\] - \\d{4}-\\d{2}-\\d{2}$`, "m");
need(
  heading.test(readFileSync("CHANGELOG.md", "utf8")),
  `CHANGELOG.md has no section "## [${version}] - YYYY-MM-DD"`,
);
need(
  readFileSync("CITATION.cff", "utf8").includes(`\nversion: ${version}\n`),
  `CITATION.cff does not say "version: ${version}"`,
);
const addressOf = (field) => String(manifest[field]?.url ?? manifest[field] ?? "");
for (const field of ["repository", "homepage", "bugs"])
  need(addressOf(field) !== "", `package.json has no "${field}": fill in the address`);
if (repository !== undefined) {
  const named = addressOf("repository");
  need(
    named.replace(/\.git$/, "").endsWith(`/${repository}`),
    `package.json must name its repository, ${repository}, for provenance`,
  );
}
for (const problem of problems) console.log(`not ready: ${problem}`);
if (problems.length > 0) process.exitCode = 1;
else console.log(`${manifest.name} ${version} is ready`);
