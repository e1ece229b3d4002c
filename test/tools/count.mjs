/*
 * Prints the number of tests from the runner's own JSON reports, alone on a line, and fails when any failed or
 * a report has none. Usage: node test/tools/count.mjs reports/vitest.json reports/slow.json
 */
import { readFileSync } from "node:fs";

let [passed, failed] = [0, 0];
for (const path of process.argv.slice(2)) {
  const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(path, "utf8"));
  passed += numPassedTests;
  failed += numFailedTests;
  if (numPassedTests === 0) process.exitCode = 1;
}
console.log(`${passed} passed, ${failed} failed`);
if (failed > 0 || passed === 0) process.exitCode = 1;
