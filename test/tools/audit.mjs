/*
 * npm run audit: known vulnerabilities of what the package brings along at run time. Fails when there is one.
 * Where the registry offers no such service (mirrors often do not), it says so, and nothing was checked.
 */
import { spawnSync } from "node:child_process";

const { stdout, stderr } = spawnSync("npm", ["audit", "--omit=dev", "--json"], { encoding: "utf8" });
let report;
try {
  report = JSON.parse(stdout);
} catch {
  report = { message: stderr.trim().split("\n")[0] || "no answer" };
}
if (report.metadata?.vulnerabilities === undefined) {
  const reason = String(report.message ?? report.error?.summary ?? "no report").replace(
    /\s+-\s+\S+\s+\S*:\/\/\S*/,
    "",
  );
  console.log(`audit NOT CHECKED: the registry's advisory service did not answer (${reason})`);
} else {
  const { total } = report.metadata.vulnerabilities;
  for (const { name, severity, range } of Object.values(report.vulnerabilities))
    console.log(`${severity}  ${name} ${range}`);
  console.log(
    `audit: ${total} known vulnerabilities in ${report.metadata.dependencies.prod} packages at run time`,
  );
  if (total > 0) process.exitCode = 1;
}
