/* Benchmarks of the temperature module and the main job, and the cost of importing the package. */
import { execFileSync } from "node:child_process";
import { writeFileSync, mkdtempSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { compensate, prepareCompensation, rateFunction, temperatureFactor } from "darkroom-kinetics";
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
  const ask = prepareCompensation(baseline);
  loops.prepared = (calls) => {
    let sum = 0;
    for (let i = 0; i < calls; i += 1) sum += ask.compensate(conditions(i)).timeS;
    return sum;
  };
  loops.timeS = (calls) => {
    let sum = 0;
    for (let i = 0; i < calls; i += 1)
      sum += ask.timeS({ temperatureC: 10 + (i % 1000) * 0.02, usedCm2PerL: i % 500 });
    return sum;
  };
  const rows = 50_000;
  const column = (at) => Float64Array.from({ length: rows }, (_, i) => at(i));
  const two = {
    temperatureC: column((i) => 10 + (i % 1000) * 0.02),
    waterParts: column((i) => 1 + (i % 30)),
  };
  const five = {
    ...two,
    everyS: column((i) => 10 + (i % 60)),
    usedCm2PerL: column((i) => i % 900),
    ageH: column((i) => i % 20),
  };
  const timesOf = (columns) => () => ask.times(columns).reduce((sum, timeS) => sum + timeS, 0);
  const ratio = (name, limit, loop, calls) => {
    const { ratio, ns, bareNs } = pairedRatio(bareLoop, loop, 50_000, calls);
    report({ name, ratio, limit, note: `${ns.toFixed(1)} ns against ${bareNs.toFixed(1)} ns` });
  };
  ratio("rateFunction of an Arrhenius law", 1.3, loops.rate, 50_000);
  ratio("temperatureFactor of an Arrhenius law", 4, loops.factor, 50_000);
  ratio("compensate, all terms", 350, loops.compensate, 1000);
  ratio("prepared compensate, all terms", 40, loops.prepared, 5000);
  ratio("prepared timeS, two conditions", 8, loops.timeS, 20_000);
  ratio("times a row, two columns", 8, timesOf(two), rows);
  ratio("times a row, five columns", 12, timesOf(five), rows);
  heatMap(report, ask);
}

/** A heat map of 300 × 300 times over temperature and dilution, in ms. */
function heatMap(report, ask) {
  const temperatureC = Float64Array.from({ length: 90_000 }, (_, i) => 10 + (i % 300) / 20);
  const waterParts = Float64Array.from({ length: 90_000 }, (_, i) => 1 + Math.floor(i / 300) / 10);
  const timed = () => {
    const start = performance.now();
    ask.times({ temperatureC, waterParts });
    return performance.now() - start;
  };
  const best = Math.min(...Array.from({ length: 25 }, timed));
  report({ name: "heat map of 300 × 300 times, ms", ratio: best, limit: 5, note: "best of 25" });
}

/**
 * What the package costs a start of Node, in both formats: a script that imports it against an empty one,
 * each a process of its own, in turns; the median of 25 ratios, or of 5 with --once.
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
    const turns = Array.from({ length: process.argv.includes("--once") ? 5 : 25 }, () => {
      const bareMs = empty();
      const ms = whole();
      return { ratio: ms / bareMs, ms, bareMs };
    }).sort((a, b) => a.ratio - b.ratio);
    const { ratio, ms, bareMs } = turns[Math.floor(turns.length / 2)];
    report({
      name: `a start of Node with ${name} of the package`,
      ratio,
      limit: 1.6,
      note: `${ms.toFixed(0)} ms against ${bareMs.toFixed(0)} ms of an empty script`,
    });
  }
  rmSync(folder, { recursive: true });
}
