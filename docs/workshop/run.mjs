/*
 * npm start: the command on the invented day (day.json), or on the files and options given, as in
 * npm start -- my.json or npm start -- chart my.json
 */
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const command = fileURLToPath(new URL("../../dist/node/command/main.js", import.meta.url));
const given = process.argv.slice(2);
const words = given.length === 0 ? [fileURLToPath(new URL("day.json", import.meta.url))] : given;
const named = ["time", "check", "plan", "chart", "--help", "--version"].includes(words[0]);

const { status } = spawnSync(process.execPath, [command, ...(named ? words : ["time", ...words])], {
  stdio: "inherit",
});
process.exitCode = status ?? 1;
