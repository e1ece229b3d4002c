/*
 * Shared by the benchmarks: the best of several rounds, so that a neighbour's work on the machine weighs least. With
 * --once, as in CI, there are fewer of them: it shows that all run, and roughly how fast.
 */
import process from "node:process";

const once = process.argv.includes("--once");

/**
 * Nanoseconds per call, best of `rounds`. `loop(calls)` runs its own loop and returns the sum of what it
 * computed: a loop of its own is compiled on its own, so that no case is slowed by another's, and the sum
 * keeps the work from being dropped.
 */
export function nanosecondsPerCall(loop, calls, rounds = once ? 3 : 9) {
  let best = Infinity;
  for (let round = 0; round < rounds; round += 1) {
    const start = performance.now();
    const sum = loop(calls);
    best = Math.min(best, ((performance.now() - start) * 1e6) / calls);
    if (!Number.isFinite(sum)) throw new Error("a benchmark loop returned no number");
  }
  return best;
}

/**
 * Two loops in turns: the median of the ratios of their times, one ratio a turn. A processor that changes its
 * speed changes it for both halves of a turn; the best of each alone would set a fast moment of one against a
 * slow moment of the other.
 */
export function pairedRatio(bare, loop, bareCalls, calls, turns = once ? 9 : 60) {
  const pairs = Array.from({ length: turns }, () => [
    nanosecondsPerCall(bare, bareCalls, 2),
    nanosecondsPerCall(loop, calls, 2),
  ]);
  const sorted = pairs
    .map(([bareNs, ns]) => ({ ratio: ns / bareNs, ns, bareNs }))
    .sort((a, b) => a.ratio - b.ratio);
  return sorted[Math.floor(turns / 2)];
}

/** The bare loop that every ratio is set against: one Arrhenius time, nothing checked. */
export function bareLoop(calls) {
  const base = 510;
  const k = 7000;
  const T0 = 293.15;
  let sum = 0;
  for (let i = 0; i < calls; i += 1) {
    const T = 283.15 + (i % 1000) * 0.02;
    sum += base * Math.exp(k * (1 / T - 1 / T0));
  }
  return sum;
}
