/*
 * npm run gallery: draws the pictures of docs/gallery.md and docs/guide.md from the built package. With --check nothing is written: it fails when a committed
 * picture is not what would be drawn today, or when one is no picture of the gallery.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { growth } from "./contrast.mjs";
import { answers, eveningAnswers, eveningBath, eveningPlan, eveningTomorrow } from "./evening.mjs";
import { frame } from "./frame.mjs";
import { age, agitation, coolingTank, use } from "./bath.mjs";
import { fiveRuns, oneMoreTest } from "./learning.mjs";
import { allTables, oneTable } from "./temperature.mjs";

const folder = new URL(".", import.meta.url);
const check = process.argv.includes("--check");
const pictures = [
  ...answers(),
  ...eveningAnswers(),
  ...eveningPlan(),
  eveningBath(),
  eveningTomorrow(),
  oneTable(),
  allTables(),
  coolingTank(),
  await agitation(),
  use(),
  await age(),
  await growth(),
  fiveRuns(),
  oneMoreTest(),
];
const faults = [];

for (const { file, svg: drawn, ...picture } of pictures) {
  // An answer is drawn by the package itself.
  const svg = drawn ?? frame(picture);
  const path = new URL(file, folder);
  if (/\b(?:NaN|undefined|Infinity)\b/.test(svg)) faults.push(`${file} holds a value that is no number`);
  if (!check) writeFileSync(path, svg);
  else if (!existsSync(path) || readFileSync(path, "utf8") !== svg)
    faults.push(`${file} is not what the library gives today`);
}
const files = new Set(pictures.map(({ file }) => file));
for (const file of readdirSync(folder))
  if (file.endsWith(".svg") && !files.has(file)) faults.push(`${file} is made by no script`);

for (const fault of faults) console.error(fault);
if (faults.length > 0) {
  console.error("npm run gallery draws them anew");
  process.exitCode = 1;
} else console.log(`${pictures.length} pictures ${check ? "are what the library gives today" : "drawn"}`);
