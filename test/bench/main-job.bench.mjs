/* Benchmarks of the temperature room and the main job, and the cost of importing the package. */
import { execFileSync } from "node:child_process";
import { writeFileSync, mkdtempSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
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
 * What the package costs a start of Node, in both formats: a script that imports it against an empty one,
 * each a process of its own, in turns; the median of 25 ratios.
 */
function importCost(report) {
  const folder = mkdtempSync(join(tmpdir(), "start-"));
  const timed = (name, text) => {
    const file = join(folder, name);
    writeFileSync(file, text);
    return () => {
      const start = performance.now();
      execFileSync(process.execPath, [file]);
      return performance.now() - start;
    };
  };
  const module = JSON.stringify(import.meta.resolve("darkroom-kinetics"));
  const common = JSON.stringify(createRequire(import.meta.url).resolve("darkroom-kinetics"));
  const scripts = [
    ["an import", timed("empty.mjs", ""), timed("whole.mjs", `import ${module};`)],
    ["a require", timed("empty.cjs", ""), timed("whole.cjs", `require(${common});`)],
  ];
  for (const [name, empty, whole] of scripts) {
    const turns = Array.from({ length: 25 }, () => {
      const bareMs = empty();
      const ms = whole();
      return { ratio: ms / bareMs, ms, bareMs };
    }).sort((a, b) => a.ratio - b.ratio);
    const { ratio, ms, bareMs } = turns[12];
    report({
      name: `a start of Node with ${name} of the package`,
      ratio,
      limit: 1.6,
      note: `${ms.toFixed(0)} ms against ${bareMs.toFixed(0)} ms of an empty script`,
    });
  }
  rmSync(folder, { recursive: true });
}
