/*
 * npm run seeds -- COUNT|random [FIRST] [--slow]: the property tests on COUNT seeds in one process, from FIRST on, or on one fresh
 * seed, which is printed. Each file is loaded afresh for each seed; of its tests only those run that draw something. With --slow the
 * files of the slow lane take part.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { filesIn } from "../mutation/files.mjs";
import { bundler, failureOf } from "../mutation/bundle.mjs";

const words = process.argv.slice(2);
const slow = words.includes("--slow");
const [count = "random", from = "1"] = words.filter((word) => !word.startsWith("--"));
const fresh = count === "random";
const first = fresh ? Math.floor(Math.random() * 2 ** 31) : Number(from);
const seeds = Array.from({ length: fresh ? 1 : Number(count) }, (_, i) => first + i);
if (fresh) console.log(`seed ${first}: again with npm run seeds -- 1 ${first}`);

const fc = createRequire(import.meta.url)("fast-check");
let drawn = 0;
const assert = (property, parameters) => {
  drawn += 1;
  return fc.assert(property, parameters);
};
const withCount = { ...fc, assert };
const files = filesIn(process.cwd()).filter(
  (file) => (slow || !file.includes(".slow.")) && /property\.js|fast-check/.test(readFileSync(file, "utf8")),
);
const { withTexts, end } = await bundler(process.cwd(), files, {
  "fast-check": { ...withCount, default: withCount },
});
const evaluate = await withTexts();
await end();

const drawing = new Set();
const red = [];
let runs = 0;
for (const [i, seed] of seeds.entries()) {
  process.env["PROPERTY_SEED"] = String(seed);
  for (const { name, run } of evaluate()) {
    if (i > 0 && !drawing.has(name)) continue;
    const before = drawn;
    const failure = await failureOf(run);
    if (drawn > before) drawing.add(name);
    runs += 1;
    if (failure === undefined) continue;
    red.push(name);
    console.log(`RED on seed ${seed}: ${name}\n  ${failure}`);
  }
  if (!fresh)
    console.log(
      `seed ${seed}: ${drawing.size} property tests in ${files.length} files, ${red.length} red so far`,
    );
}
console.log(`${seeds.length} seeds from ${first}: ${runs} runs of tests, ${red.length} red`);
process.exitCode = red.length === 0 && drawing.size > 0 ? 0 : 1;
