/*
 * npm run bench: ratios, each measured against a bare loop in the same process, on the built package. A benchmark, not a test:
 * it fails only with --strict, because a busy machine moves ratios too.
 */
import { readdirSync } from "node:fs";

const folder = new URL(".", import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith(".bench.mjs")).sort();
let over = 0;
console.log("what".padEnd(58), "ratio".padStart(9), "limit".padStart(8), " note");
/** One row. A comparison with another package has no limit: it is there to be read. */
const report = ({ name, ratio, limit, note = "" }) => {
  const mark = ratio > limit ? " OVER" : "";
  if (mark !== "") over += 1;
  console.log(name.padEnd(58), ratio.toFixed(2).padStart(9), String(limit ?? "-").padStart(8), ` ${note}${mark}`);
};
for (const file of files) await (await import(new URL(file, folder))).default(report);
console.log(over === 0 ? "all within their limits" : `${over} over their limits`);
if (over > 0 && process.argv.includes("--strict")) process.exitCode = 1;
