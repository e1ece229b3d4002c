/*
 * npm run bench: ratios, each measured against a bare loop in the same process, on the built package. Each
 * file runs in several processes of its own, since a compiler that decides otherwise in one of them may halve
 * or double a figure: the median of the processes is printed, with the lowest and the highest of them. With
 * --once, as in CI, there is one. A benchmark, not a test: it fails only with --strict, because a busy machine
 * moves ratios too.
 */
import { execFileSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";

const PROCESSES = process.argv.includes("--once") ? 1 : 5;
const folder = new URL(".", import.meta.url);
const [, , alone] = process.argv;

if (alone?.endsWith(".bench.mjs")) {
  const rows = [];
  await (await import(new URL(alone, folder))).default((row) => rows.push(row));
  console.log(JSON.stringify(rows));
} else {
  let over = 0;
  console.log("what".padEnd(58), "ratio".padStart(9), "of all".padStart(16), "limit".padStart(8), " note");
  const files = readdirSync(folder)
    .filter((name) => name.endsWith(".bench.mjs"))
    .sort();
  for (const file of files) {
    const tables = Array.from({ length: PROCESSES }, () => measured(file));
    tables[0].forEach((_, i) => {
      const rows = tables.map((table) => table[i]).sort((a, b) => a.ratio - b.ratio);
      if (show(rows)) over += 1;
    });
  }
  console.log(over === 0 ? "all within their limits" : `${over} over their limits`);
  if (over > 0 && process.argv.includes("--strict")) process.exitCode = 1;
}

function measured(file) {
  return JSON.parse(
    execFileSync(process.execPath, [fileURLToPath(import.meta.url), file, ...process.argv.slice(2)], {
      encoding: "utf8",
      stdio: ["ignore", "pipe", "inherit"],
    }),
  );
}

/**
 * One row, of the process in the middle. A comparison with another package has no limit: it is there to be
 * read.
 */
function show(rows) {
  const { name, ratio, limit, note = "" } = rows[Math.floor(rows.length / 2)];
  const over = ratio > limit;
  const range = `${rows[0].ratio.toFixed(2)}-${rows[rows.length - 1].ratio.toFixed(2)}`;
  console.log(
    name.padEnd(58),
    ratio.toFixed(2).padStart(9),
    range.padStart(16),
    String(limit ?? "-").padStart(8),
    ` ${note}${over ? " OVER" : ""}`,
  );
  return over;
}
