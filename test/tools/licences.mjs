/* Part of the build: the licences of the packages whose code the built files carry, in one file beside them. */
import { readFileSync, writeFileSync } from "node:fs";

const parts = ["d3-interpolate", "decimal.js", "simple-statistics"].map((name) => {
  const folder = new URL(`../../node_modules/${name}/`, import.meta.url);
  const { version, license } = JSON.parse(readFileSync(new URL("package.json", folder), "utf8"));
  const file = name === "decimal.js" ? "LICENCE.md" : "LICENSE";
  return `${name} ${version} (${license})\n\n${readFileSync(new URL(file, folder), "utf8").trim()}\n`;
});
writeFileSync(new URL("../../dist/THIRD-PARTY-LICENCES.txt", import.meta.url), parts.join("\n----\n\n"));
