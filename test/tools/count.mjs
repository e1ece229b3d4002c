/*
 * Prints the number of tests from the runner's own JSON report, alone on a line, and fails when any failed or
 * none ran. Usage: node test/tools/count.mjs reports/vitest.json
 */
import { readFileSync } from "node:fs";

const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(process.argv[2], "utf8"));
console.log(`${numPassedTests} passed, ${numFailedTests} failed`);
if (numFailedTests > 0 || numPassedTests === 0) process.exitCode = 1;
