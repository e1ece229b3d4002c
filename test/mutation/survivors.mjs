/*
 * Writes each mutant that no test noticed into reports/survivors.txt as soon as it is known. A run takes hours:
 * so it can be followed, and what it found is kept when it is stopped.
 */
import { appendFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { relative } from "node:path";
import { declareClassPlugin, PluginKind } from "@stryker-mutator/api/plugin";

const LIST = "reports/survivors.txt";

class Survivors {
  onMutationTestingPlanReady() {
    mkdirSync("reports", { recursive: true });
    writeFileSync(LIST, "");
  }

  onMutantTested({ status, fileName, location, mutatorName, replacement = "" }) {
    if (status !== "Survived" && status !== "NoCoverage") return;
    const { start, end } = location;
    const lines = readFileSync(fileName, "utf8")
      .split("\n")
      .slice(start.line - 1, end.line);
    const last = lines.length - 1;
    lines[last] = lines[last].slice(0, end.column - 1);
    lines[0] = lines[0].slice(start.column - 1);
    const flat = (text) => text.replace(/\s+/gu, " ").slice(0, 160);
    const place = `${relative(process.cwd(), fileName)}:${start.line}:${start.column}`;
    appendFileSync(
      LIST,
      `${place} ${mutatorName}\n  - ${flat(lines.join("\n"))}\n  + ${flat(replacement)}\n`,
    );
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.Reporter, "survivors", Survivors)];
