/*
 * The regression against a Markov chain on twelve invented notebooks. The chain's answers are stored, since they
 * take minutes: `npx vitest run test/reference/markovChain.test.ts --mode write` makes them anew.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { fitRegression } from "../../src/learning/regression.js";
import { markovChain, type Answer } from "../tools/markovChain.js";
import { notebooks } from "../tools/notebooks.js";
import { writing } from "../helpers.js";

const FILE = "test/reference/markovChain.json";
const STEPS = 600_000;

interface Stored {
  readonly seed: number;
  readonly steps: number;
  readonly answers: Readonly<Record<string, readonly Answer[]>>;
}

if (writing) {
  const seed = 20240501;
  const rounded = ({ mean, sd }: Answer): Answer => ({
    mean: Number(mean.toPrecision(5)),
    sd: Number(sd.toPrecision(5)),
  });
  const answers = Object.fromEntries(
    notebooks(seed).map((each) => [each.name, markovChain(each, seed, STEPS).map(rounded)]),
  );
  writeFileSync(FILE, `${JSON.stringify({ seed, steps: STEPS, answers }, null, 2)}\n`);
}

const stored = JSON.parse(readFileSync(FILE, "utf8")) as Stored;

/**
 * A spread that misses the limit of 18 %. One reading alone speaks for the dilution that is asked about, and is
 * doubted in part: the chain is now with it, now without it, which no single normal holds.
 */
const MISSED: Readonly<Record<string, { readonly question: number; readonly ratio: number }>> = {
  "12 judged, one off by two": { question: 3, ratio: 0.66 },
};

describe.each(notebooks(stored.seed).map((each) => [each.name, each] as const))("%s", (name, notebook) => {
  const fit = fitRegression(notebook.unknowns, notebook.readings);
  const pairs = stored.answers[name]!.map((chain, i) => ({ chain, ...fit.along(notebook.questions[i]!) }));

  it("has the chain's means within a quarter of a standard deviation", () => {
    for (const { chain, mean } of pairs) expect(Math.abs(mean - chain.mean) / chain.sd).toBeLessThan(0.25);
  });
  it("has the chain's spreads within 18 %, and within 10 % on the mean", () => {
    const ratios = pairs.map(({ chain, variance }) => Math.sqrt(variance) / chain.sd);
    const open = ratios.filter((_, i) => MISSED[name]?.question !== i);
    for (const ratio of open) expect(Math.abs(Math.log(ratio))).toBeLessThan(Math.log(1.18));
    const mean = open.reduce((sum, ratio) => sum + ratio, 0) / open.length;
    expect(Math.abs(mean - 1)).toBeLessThan(0.1);
    if (MISSED[name] !== undefined) expect(ratios[MISSED[name].question]).toBeCloseTo(MISSED[name].ratio, 2);
  });
});

it("has an answer for every question of the twelve notebooks", () => {
  expect(Object.values(stored.answers).flat()).toHaveLength(60);
});
