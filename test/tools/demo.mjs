/*
 * Part of npm run check, after the build: the command as a program. It gives the numbers of the built package, ends
 * with the exit codes of docs/command.md, and the pages show what it prints. `npm run demo -- --write` writes what it
 * prints into docs/command.md, to be read in the diff.
 */
import assert from "node:assert/strict";
import { spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { setTimeout } from "node:timers/promises";
import { chartCsv, chartRecipe, compensateRecipe, formatTime, roundEstimate } from "darkroom-kinetics";

const folder = mkdtempSync(join(tmpdir(), "command-"));
const { bin, version } = JSON.parse(readFileSync("package.json", "utf8"));
const program = resolve(bin["darkroom-kinetics"]);
const run = (words, input) =>
  spawnSync(process.execPath, [program, ...words], { encoding: "utf8", cwd: folder, input });

// npm start: the same program on the invented day.
const start = spawnSync(process.execPath, ["docs/workshop/run.mjs"], { encoding: "utf8" });
assert.equal(start.status, 0, start.stderr);
copyFileSync("docs/workshop/day.json", join(folder, "day.json"));
assert.equal(start.stdout, run(["time", "day.json"]).stdout);
assert.doesNotMatch(start.stdout, /NaN|undefined|Infinity|\[object/);

// The files and the answers that the pages show.
const writing = process.argv.includes("--write");
let page = readFileSync("docs/command.md", "utf8");
for (const [, name, text] of page.matchAll(/`([\w-]+\.(?:json|csv))`[^`]*```(?:json|text)\n([\s\S]*?)```/g))
  writeFileSync(join(folder, name), text);
const shown = [...page.matchAll(/```console\n\$ npx darkroom-kinetics (.*)\n([\s\S]*?)```/g)];
assert.ok(shown.length >= 5, "docs/command.md shows the command");
for (const [, line, text] of shown) {
  const words = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain);
  const { stdout, stderr } = run(words);
  // A spreadsheet wants CR and LF, a page has LF.
  const printed = (stdout + stderr).replaceAll("\r\n", "\n");
  if (writing) page = page.replace(`${line}\n${text}\`\`\``, () => `${line}\n${printed}\`\`\``);
  else assert.equal(printed, text, line);
}
if (writing) writeFileSync("docs/command.md", page);
const [, own] = /```json\n([\s\S]*?)```/.exec(readFileSync("README.md", "utf8"));
writeFileSync(join(folder, "my.json"), own);
assert.match(
  run(["time", "my.json"]).stdout,
  /Known: 8:00 at 20 °C, 1\+25[\s\S]*Today\n {2}Develop \d+:\d\d/,
);

// The numbers of the package.
const recipe = JSON.parse(readFileSync(join(folder, "recipe.json"), "utf8"));
const answer = compensateRecipe(recipe);
const printed = JSON.parse(run(["time", "recipe.json", "--json"]).stdout).files[0].answers[0];
assert.deepEqual(
  { ...printed, name: undefined, rounded: undefined, refused: answer.refused },
  {
    ...JSON.parse(JSON.stringify(answer)),
    name: undefined,
    rounded: undefined,
  },
);
assert.ok(
  run(["time", "-"], JSON.stringify(recipe)).stdout.includes(formatTime(roundEstimate(answer).timeS)),
);
// Standard input that is not there at once, and comes in two parts.
const day = readFileSync("docs/workshop/day.json", "utf8");
const slow = spawn(process.execPath, [program, "time", "-"], { cwd: folder });
let late = "";
for (const stream of [slow.stdout, slow.stderr]) stream.on("data", (text) => (late += text));
for (const part of [day.slice(0, 100), day.slice(100)]) {
  await setTimeout(300);
  slow.stdin.write(part);
}
slow.stdin.end();
const [status] = await once(slow, "close");
assert.equal(late, start.stdout);
assert.equal(status, 0);
const chart = chartRecipe(recipe, { temperaturesC: [24, 22, 20, 18, 16, 14, 12] });
assert.equal(run(["chart", "recipe.json", "--csv"]).stdout, chartCsv(chart));
assert.equal(run(["--version"]).stdout, `${version}\n`);

// Exit codes, and one sentence for what is wrong.
writeFileSync(join(folder, "broken.json"), "{oops");
writeFileSync(join(folder, "empty.json"), "");
writeFileSync(join(folder, "huge.json"), " ".repeat(11_000_000));
writeFileSync(join(folder, "marked.json"), `\uFEFF${JSON.stringify(recipe)}`);
const ends = [
  [["time", "marked.json"], 0],
  [["check", "day.json"], 0],
  [["check", "day.json", "--strict"], 1],
  [["time", "broken.json"], 2, /^broken\.json:1:2: /],
  [["time", "empty.json"], 2, /the file is empty/],
  [["time", "huge.json"], 2, /larger than 10 MB/],
  [["time", "."], 2, /this is a folder/],
  [["plan", "nothing.json"], 2, /there is no such file/],
  [["time"], 3, /Name a file/],
  [["chart", "recipe.json", "--lang", "xx"], 3, /--lang "xx" is not known/],
];
for (const [words, code, message] of ends) {
  const { status, stdout, stderr } = run(words);
  assert.equal(status, code, words.join(" "));
  if (message === undefined) assert.equal(stderr, "", words.join(" "));
  else {
    assert.match(stderr, message);
    assert.equal(stdout, "");
    assert.equal(stderr.trim().split("\n").length, 1, `${words.join(" ")}: one line`);
  }
}
rmSync(folder, { recursive: true });
console.log(`demo: ${shown.length} runs as docs/command.md shows them, ${ends.length} exit codes`);
