/*
 * `npm run mutants -- [count] [seed]`: sets each hand mutant into a copy of the source in memory, and runs tests
 * until one fails: first those of its module, then the whole suite. Fails when a mutant is noticed by none.
 * With a count, a sample of so many by a seed, which is printed; with words, those whose name holds them.
 */
import { readFileSync } from "node:fs";
import { bundler, failureOf } from "./bundle.mjs";
import { applied, handMutants } from "./handMutants.mjs";

const words = process.argv.slice(2);
const [count = handMutants.length, seed = Math.floor(Math.random() * 1e9)] = words.filter(Number).map(Number);
const named = words.filter((word) => !Number(word)).join(" ");

/** Numbers from 0 to 1 by a linear congruence (constants of Numerical Recipes, 2nd ed., Cambridge, 1992). */
let state = seed >>> 0;
const random = () => (state = (Math.imul(1664525, state) + 1013904223) >>> 0) / 2 ** 32;
const sample = handMutants
  .filter(({ what }) => what.includes(named))
  .map((one) => [random(), one])
  .sort(([a], [b]) => a - b)
  .slice(0, count)
  .map(([, one]) => one);

/** The files of the slow lane come last. */
const SLOW = /\.slow\./;

const { withTexts, end } = await bundler(process.cwd());
const clean = await withTexts();
const passes = new Map();
/** Whether a test passes on the source as it is. One that fails anyway notices nothing. */
async function passesClean(name) {
  const [file] = name.split(" > ", 1);
  if (!passes.has(name)) {
    const test = clean((other) => other === file).find((other) => other.name === name);
    passes.set(name, test !== undefined && (await failureOf(test.run)) === undefined);
  }
  return passes.get(name);
}

/** The first test that fails on a mutant and passes without it, or undefined. */
async function noticedBy(one) {
  const changed = new Map([[one.file, applied(one, readFileSync(one.file, "utf8"))]]);
  const evaluate = await withTexts(changed);
  const own = (file) => one.tests.some((start) => file.startsWith(start));
  const waves = [
    (file) => own(file) && !SLOW.test(file),
    (file) => !own(file) && !SLOW.test(file),
    (file) => SLOW.test(file),
  ];
  for (const wave of waves) {
    let tests = [];
    const broken = await failureOf(() => {
      tests = evaluate(wave);
    });
    if (broken !== undefined && (await failureOf(() => clean(wave))) !== undefined) throw new Error(broken);
    if (broken !== undefined) return `the tests themselves, which do not load: ${broken}`;
    for (const { name, run } of tests)
      if ((await failureOf(run)) !== undefined && (await passesClean(name))) return name;
  }
  return undefined;
}

// Every text is looked for, also outside the sample.
for (const one of handMutants) applied(one, readFileSync(one.file, "utf8"));
if (sample.length === count && count < handMutants.length)
  console.log(`${sample.length} of ${handMutants.length} mutants, seed ${seed}`);
let survivors = 0;
for (const one of sample) {
  process.stdout.write(`${one.what}: `);
  const test = await noticedBy(one);
  if (test === undefined) survivors += 1;
  console.log(test === undefined ? `SURVIVED (${one.file})` : `noticed by ${test}`);
}
await end();
console.log(`${sample.length - survivors} of ${sample.length} hand mutants are noticed`);
process.exitCode = survivors === 0 ? 0 : 1;
