/* Benchmarks of the learning module: a thousand runs learned in 10 ms, in 20 with dates; a thousand candidates in 10 ms. */
import { learn, nextTest, startKnowledge } from "darkroom-kinetics";

const LIMIT_MS = 10;

/** The fastest of 60 rounds, ms. */
function fastest(work) {
  let best = Infinity;
  for (let round = 0; round < 60; round += 1) {
    const start = performance.now();
    work();
    best = Math.min(best, performance.now() - start);
  }
  return best;
}

export default async function learning(report) {
  const start = startKnowledge({ timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 } });
  // Invented runs over all causes, scattered by a fixed pattern.
  const conditions = Array.from({ length: 1000 }, (_, i) => ({
    temperatureC: 12 + ((i * 7) % 140) / 10,
    dilution: `1+${5 + (i % 10)}`,
    agitation: { everyS: 30 + (i % 60) },
    usedCm2PerL: (i * 37) % 1000,
    ageH: ((i * 13) % 80) / 10,
  }));
  const runs = conditions.map((each, i) => ({
    ...each,
    id: `run ${i}`,
    timeS: 510 * Math.exp(0.07 * (20 - each.temperatureC) + 0.15 * Math.sin(i * 12.9898)),
    outcome: { kind: "good" },
  }));
  let known = start;
  const learned = fastest(() => {
    known = learn(start, runs);
  });
  const dated = runs.map((run, i) => ({
    ...run,
    date: new Date(Date.UTC(2024, 0, 1 + i)).toISOString().slice(0, 10),
  }));
  const learnedDated = fastest(() => {
    learn(start, dated);
  });
  const ranked = fastest(() => {
    nextTest(known, conditions, { temperatureC: 12, dilution: "1+14" });
  });
  report({
    name: "learn, 1000 runs, ms / 10",
    ratio: learned / LIMIT_MS,
    limit: 1,
    note: `${learned.toFixed(2)} ms`,
  });
  report({
    name: "learn, 1000 runs of as many dates, ms / 20",
    ratio: learnedDated / (2 * LIMIT_MS),
    limit: 1,
    note: `${learnedDated.toFixed(2)} ms`,
  });
  report({
    name: "nextTest, 1000 candidates, ms / 10",
    ratio: ranked / LIMIT_MS,
    limit: 1,
    note: `${ranked.toFixed(2)} ms`,
  });
}
