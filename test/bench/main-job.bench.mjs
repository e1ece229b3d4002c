/* Benchmarks of the temperature room and the main job, and the cost of importing the package. */
import { execFileSync } from "node:child_process";
import { writeFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { compensate, rateFunction, temperatureFactor } from "darkroom-kinetics";
import { bareLoop, pairedRatio } from "./measure.mjs";

export default function mainJob(report) {
  importCost(report);
  const law = { kind: "arrhenius", activationEnergyKJPerMol: 58 };
  const rate = rateFunction(20, law);
  const baseline = { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 } };
  const conditions = (i) => ({
    temperatureC: 10 + (i % 1000) * 0.02,
    dilution: "1+14",
    agitation: { everyS: 30 },
    usedCm2PerL: 516,
    ageH: 3,
  });
  const loops = {
    rate: (calls) => {
      let sum = 0;
      for (let i = 0; i < calls; i += 1) sum += 510 * rate(10 + (i % 1000) * 0.02);
      return sum;
    },
    factor: (calls) => {
      let sum = 0;
      for (let i = 0; i < calls; i += 1) sum += 510 * temperatureFactor(20, 10 + (i % 1000) * 0.02, law);
      return sum;
    },
    compensate: (calls) => {
      let sum = 0;
      for (let i = 0; i < calls; i += 1) sum += compensate(baseline, conditions(i)).timeS;
      return sum;
    },
  };
  const ratio = (name, limit, loop, calls) => {
    const { ratio, ns, bareNs } = pairedRatio(bareLoop, loop, 50_000, calls);
    report({ name, ratio, limit, note: `${ns.toFixed(1)} ns against ${bareNs.toFixed(1)} ns` });
  };
  ratio("rateFunction of an Arrhenius law", 1.2, loops.rate, 50_000);
  ratio("temperatureFactor of an Arrhenius law", 4, loops.factor, 50_000);
  ratio("compensate, all terms", 200, loops.compensate, 1000);
}

/**
 * What an import of the built package adds to the start of a bare Node: timed within a fresh process each
 * time, since the start itself varies by more than the import costs, less what the import of an empty file
 * costs; the median of 25 processes.
 */
function importCost(report) {
  const folder = mkdtempSync(join(tmpdir(), "start-"));
  const empty = join(folder, "empty.mjs");
  writeFileSync(empty, "");
  const timed = (name, url) => {
    const file = join(folder, name);
    writeFileSync(
      file,
      `const start = performance.now(); await import(${JSON.stringify(url)}); console.log(performance.now() - start);`,
    );
    return () => Number(execFileSync(process.execPath, [file], { encoding: "utf8" }));
  };
  const bare = timed("bare.mjs", pathToFileURL(empty).href);
  const whole = timed("whole.mjs", import.meta.resolve("darkroom-kinetics"));
  const differences = Array.from({ length: 25 }, () => -bare() + whole()).sort((a, b) => a - b);
  rmSync(folder, { recursive: true });
  const added = differences[12];
  report({
    name: "import of the built package, ms added to a start / 15",
    ratio: added / 15,
    limit: 1,
    note: `${added.toFixed(1)} ms`,
  });
}
