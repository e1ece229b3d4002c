/*
 * Part of npm run check, after the build: npm start's script answers on the invented day, and a broken file
 * gives one line and exit code 1.
 */
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const folder = mkdtempSync(join(tmpdir(), "workshop-"));
const run = (...paths) =>
  spawnSync(process.execPath, ["docs/workshop/run.mjs", ...paths], { encoding: "utf8" });

const good = run();
assert.equal(good.status, 0, good.stderr);
for (const part of [
  /Known: 9:00 at 20 °C/,
  /develop \d+:\d\d {3}90 % between \d+:\d\d and \d+:\d\d/,
  /no time\n {4}stop /,
  /pH 1\d\.\d/,
  /1\. Gloves and glasses/,
  /68 °F 20\.0 °C/,
])
  assert.match(good.stdout, part);
assert.doesNotMatch(good.stdout, /NaN|undefined|Infinity|\[object/);

/** The invented day's brew alone, with another alkali, and what else is told. */
function brewOf(alkali, other = {}) {
  const day = JSON.parse(readFileSync("docs/workshop/day.json", "utf8"));
  const [soda, ...others] = day.brew.spoons;
  return JSON.stringify({
    baseline: day.baseline,
    baths: [],
    brew: { ...day.brew, spoons: [{ ...soda, ingredient: alkali }, ...others], ...other },
  });
}

const broken = [
  ["no JSON", "{oops", /not valid JSON: /],
  [
    "a trailing comma",
    '{"baseline":{"time":"9:00","temperatureC":20},\n"baths":[],\n}',
    /not valid JSON: .*a comma before \] or \}/,
  ],
  ["nothing", "null", /the file: its content is missing/],
  ["a list", "[]", /the file: must be an object/],
  ["no temperature", '{"baseline":{"time":"9:00"},"baths":[]}', /\/baseline: temperatureC is missing/],
  [
    "baths that are no list",
    '{"baseline":{"time":"9:00","temperatureC":20},"baths":{}}',
    /\/baths: must be a list/,
  ],
  [
    "a bath that is none",
    '{"baseline":{"time":"9:00","temperatureC":20},"baths":[null]}',
    /\/baths\/0: a bath is missing/,
  ],
  [
    "rows that are no list",
    '{"baseline":{"time":"9:00","temperatureC":20},"baths":[],"table":{"rows":{}}}',
    /\/table\/rows: must be a list/,
  ],
  ["no baseline", "{}", /\/baseline: the known time with its conditions is missing/],
  ["no time", '{"baseline":{"temperatureC":20},"baths":[]}', /\/baseline: time is missing/],
  [
    "a bare number",
    '{"baseline":{"time":"9","temperatureC":20},"baths":[]}',
    /\/baseline\/time: parseTime: text must be a time/,
  ],
  ["no baths", '{"baseline":{"time":"9:00","temperatureC":20}}', /\/baths: a list of baths is missing/],
  [
    "a hot bath",
    '{"baseline":{"time":"9:00","temperatureC":20},"baths":[{"temperatureC":300}]}',
    /\/baths\/0: bath.temperatureC must be from 0 to 100 °C, got 300/,
  ],
  [
    "an ambiguous dilution",
    '{"baseline":{"time":"9:00","temperatureC":20,"dilution":"1:9"},"baths":[{"dilution":"1+9"}]}',
    /\/baths\/0: baseline.dilution "1:9" is ambiguous/,
  ],
  [
    "a table in a unit that is none",
    '{"baseline":{"time":"9:00","temperatureC":20},"baths":[],"table":{"unit":"f","rows":[]}}',
    /\/table\/unit: must be "C" or "F", got "f"/,
  ],
  [
    "a brew without its temperature",
    brewOf("soda-anhydrous", { temperatureC: undefined }),
    /\/brew: temperatureC is missing/,
  ],
  [
    "a known brew without one",
    brewOf("soda-anhydrous", { reference: {} }),
    /\/brew\/reference: temperatureC is missing/,
  ],
  [
    "a table of one row",
    '{"baseline":{"time":"9:00","temperatureC":20},"baths":[],"table":{"rows":[{"temperature":20,"time":"9:00"}],"fitRows":[0]}}',
    /\/table: fitTemperatureLaw: rows must hold at least 2, got 1/,
  ],
];
for (const [name, text, message] of broken) {
  const path = join(folder, "day.json");
  writeFileSync(path, text);
  const { status, stderr } = run(path);
  assert.equal(status, 1, name);
  assert.match(stderr, message, name);
  assert.equal(stderr.trim().split("\n").length, 1, `${name}: one line`);
}
const small = join(folder, "small.json");
writeFileSync(
  small,
  '\uFEFF{"baseline":{"time":"8:00","temperatureC":20},"baths":[{"temperature":23.5}],"baht":1}',
);
const unread = run(small);
assert.equal(unread.status, 0, unread.stderr);
assert.match(unread.stdout, /^warn  the file has a field "baht" that is not read\./);
assert.match(
  unread.stdout,
  /Bath 1\n {4}warn  bath has a field "temperature" that is not read\.\n {2}develop 8:00/,
);
// Baking soda does not work, and its brew has no time to go by.
writeFileSync(small, brewOf("baking-soda"));
const weak = run(small);
assert.equal(weak.status, 0, weak.stderr);
assert.match(weak.stdout, /no time\n {4}stop {2}Not alkaline enough/);
assert.doesNotMatch(weak.stdout, /develop/);
// The file that README shows.
const shown = /```json\n([\s\S]*?)```/.exec(readFileSync("README.md", "utf8"))[1];
writeFileSync(small, shown);
const ownFilm = run(small);
assert.equal(ownFilm.status, 0, ownFilm.stderr);
assert.match(ownFilm.stdout, /Known: 8:00 at 20 °C, 1\+25[\s\S]*Today\n {2}develop \d:\d\d/);
const missing = run(join(folder, "nothing.json"));
assert.equal(missing.status, 1);
assert.match(missing.stderr, /no such file/);
rmSync(folder, { recursive: true });
console.log(`demo: answers, and refuses ${broken.length + 1} broken files with one line each`);
