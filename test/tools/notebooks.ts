/*
 * Twelve invented notebooks as a regression sees them: numbers to be learned, readings, and rows that are asked
 * about. They are made anew from a seed each time, so that only the answers of the chain need be stored.
 */
import { joinRows, type Row, type Unknown } from "../../src/core/row.js";
import { walkOver } from "../../src/core/walk.js";
import { readOutcome } from "../../src/learning/readOutcome.js";
import { saidFrom, type Reading, type Said } from "../../src/learning/reading.js";
import { runTerms } from "../../src/learning/runTerms/runTerms.js";
import type { RunMarks } from "../../src/learning/runTerms/runTerm.js";
import { judging, naming, stepping, type Eye } from "../worlds/eyes.js";
import { seeded, type Random } from "../worlds/random.js";

export interface Notebook {
  readonly name: string;
  readonly unknowns: readonly Unknown[];
  readonly readings: readonly Reading[];
  readonly questions: readonly Row[];
}

interface Making {
  readonly name: string;
  readonly runs: number;
  readonly eye: (random: Random) => Eye;
  readonly marks?: (random: Random, i: number) => RunMarks;
  /** added to what the i-th run shows */
  readonly off?: (random: Random, i: number) => number;
}

/** An eye without an offset of its own: the chain is tried with those of the numbers that are asked about. */
const unbiased = (random: Random, times = 1): Eye => judging(random, random.normal, times, 1, 0);

const dated = (_random: Random, i: number): RunMarks => ({
  date: new Date(Date.UTC(2020, 0, 1 + i)).toISOString().slice(0, 10),
});
const oneInTen = (random: Random): number =>
  random.uniform() < 0.1 ? Math.LN2 * Math.sign(random.normal()) : 0;
const mixed = (random: Random): Eye => {
  const eyes = [unbiased(random), stepping(random, 0.5), naming(random)];
  return (off, givenS) => random.pick(eyes)(off, givenS);
};

const MAKINGS: readonly Making[] = [
  { name: "8 judged", runs: 8, eye: unbiased },
  { name: "25 judged", runs: 25, eye: unbiased },
  { name: "12 in whole steps", runs: 12, eye: (random) => stepping(random, 1) },
  { name: "20 in half steps", runs: 20, eye: (random) => stepping(random, 0.5) },
  { name: "20 thin, good or dense", runs: 20, eye: naming },
  { name: "30 of all kinds", runs: 30, eye: mixed },
  { name: "12 judged, one off by two", runs: 12, eye: unbiased, off: (_, i) => (i === 5 ? Math.LN2 : 0) },
  { name: "30 judged, one in ten off by two", runs: 30, eye: unbiased, off: oneInTen },
  { name: "20 judged with twice the noise", runs: 20, eye: (random) => unbiased(random, 2) },
  { name: "30 judged, dated", runs: 30, eye: unbiased, marks: dated },
  {
    name: "30 in half steps, drifting by 2 % a date",
    runs: 30,
    eye: (random) => stepping(random, 0.5),
    marks: dated,
    off: (_, i) => 0.02 * (i - 29),
  },
  {
    name: "25 of all kinds, printed rows and another thermometer among them, one off by two",
    runs: 25,
    eye: mixed,
    marks: (_, i) => (i % 4 === 0 ? { printed: true } : i % 3 === 0 ? { thermometer: "new" } : {}),
    off: (_, i) => (i === 7 ? -Math.LN2 : 0),
  },
];

const DILUTIONS = [0, Math.log(1.5), Math.log(2), Math.log(3)];

function notebook(making: Making, random: Random): Notebook {
  const walk = walkOver("bend", DILUTIONS, 0.19);
  const marks = Array.from({ length: making.runs }, (_, i) => making.marks?.(random, i) ?? {});
  const terms = runTerms.map((term) => term.over(marks, {}));
  const unknowns: readonly Unknown[] = [
    { parameter: "base", sd: 0.2 },
    { parameter: "energy", sd: 18 },
    { parameter: "exponent", sd: 0.25 },
    { parameter: "pair", sd: 20 },
    ...walk.unknowns,
    ...terms.flatMap((term) => term.unknowns),
  ];
  const conditions = (): Row => {
    const warmth = 0.015 * random.normal();
    const water = random.pick(DILUTIONS);
    const slopes = { base: 1, energy: warmth, exponent: water, pair: (warmth * water) / Math.LN2 };
    return joinRows([
      { slopes: Object.entries(slopes).map(([parameter, slope]) => ({ parameter, slope })), beside: 0.0004 },
      walk.row(0, water),
    ]);
  };
  const truth = new Map(unknowns.map(({ parameter, sd }) => [parameter, sd * random.normal()]));
  const eye = making.eye(random);
  const readings = marks.map((each, i): Reading => {
    const row = joinRows([conditions(), ...terms.map((term) => term.run(each))]);
    const right = row.slopes
      .filter(({ parameter }) => parameter !== "trend")
      .reduce(
        (sum, { parameter, slope }) => sum + slope * truth.get(parameter)!,
        making.off?.(random, i) ?? 0,
      );
    const given = right + 0.15 * random.normal();
    const timeS = 600 * Math.exp(given);
    const said = readOutcome("notebook", timeS, eye(right - given, timeS)) as Said;
    return { row, said: saidFrom(said, Math.log(600)) };
  });
  return { name: making.name, unknowns, readings, questions: Array.from({ length: 5 }, conditions) };
}

/** The twelve notebooks of a seed. */
export function notebooks(seed: number): readonly Notebook[] {
  return MAKINGS.map((making, i) => notebook(making, seeded(seed + i)));
}
