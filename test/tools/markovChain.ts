/*
 * A Markov chain over everything that the regression settles at once: the numbers, the scatter of the readings
 * and the variance of the trend. Slow, and free of the regression's short cuts: windows are windows, noise
 * has exponential tails, a slip of the pen is possible, and nothing is put in at its most probable value.
 *
 * Adaptive Metropolis steps: H. Haario, E. Saksman, J. Tamminen, Bernoulli 7, 2001, p. 223.
 */
import { CholeskyDecomposition, Matrix } from "ml-matrix";
import { normalUpper } from "../../src/core/normal.js";
import type { Row } from "../../src/core/row.js";
import { seeded } from "../worlds/random.js";
import type { Notebook } from "./notebooks.js";

export interface Answer {
  readonly mean: number;
  readonly sd: number;
}

/** A development repeats to 4 % at best. */
const REPEAT = 0.04;
/** Beyond two standard deviations the tails are exponential. */
const HOLD_FROM = 2;
/** One reading in fifty is a slip of the pen, and lies anywhere within a factor of three. */
const SLIPS = 1 / 50;
const SLIP_DENSITY = 1 / (2 * Math.log(3));
/** Scatter² has a scaled inverse chi-square prior of four degrees of freedom and scale 1: inverse gamma. */
const SHAPE = 2;
const SCALE = 2;

/** The share of the noise beyond z, up to a constant: normal in the middle, with exponential tails. */
function upper(z: number): number {
  const middle = Math.sqrt(2 * Math.PI);
  const tail = Math.exp(-(HOLD_FROM ** 2) / 2) / HOLD_FROM;
  if (z > HOLD_FROM) return tail * Math.exp(-HOLD_FROM * (z - HOLD_FROM));
  if (z < -HOLD_FROM) return 2 * tail + middle * (1 - 2 * normalUpper(HOLD_FROM)) - upper(-z);
  return tail + middle * (normalUpper(z) - normalUpper(HOLD_FROM));
}

/** What the noise comes to over all z, in the same units. */
const WHOLE = 2 * upper(0);

/** −ln of the prior and the likelihood; the last coordinate is ln(scatter²). */
function energyOf({ unknowns, readings }: Notebook): (at: Float64Array) => number {
  const place = new Map(unknowns.map(({ parameter }, i) => [parameter, i]));
  const rows = readings.map(({ row }) =>
    row.slopes.map(
      ({ parameter, slope }) => [place.get(parameter)!, slope * unknowns[place.get(parameter)!]!.sd] as const,
    ),
  );
  const free = unknowns.map(({ tail }) => tail === "student");
  return (at) => {
    const logSquare = at[unknowns.length]!;
    const square = Math.exp(logSquare);
    let energy = SHAPE * logSquare + SCALE / square;
    for (let j = 0; j < unknowns.length; j += 1)
      energy += free[j] ? Math.log(1 + at[j]! ** 2) : at[j]! ** 2 / 2;
    for (let i = 0; i < rows.length; i += 1) {
      const { row, said } = readings[i]!;
      let mean = 0;
      for (const [j, slope] of rows[i]!) mean += slope * at[j]!;
      const noise = Math.sqrt(said.sd ** 2 * square + row.beside);
      if (said.kind === "window") {
        let [low, high] = [(said.low - mean) / noise, (said.high - mean) / noise];
        if (low + high < 0) [low, high] = [-high, -low];
        const slipped = Math.min(0.5, SLIP_DENSITY * (said.high - said.low));
        energy -= Math.log(((1 - SLIPS) * (upper(low) - upper(high))) / WHOLE + SLIPS * slipped);
      } else {
        const sd = Math.max(REPEAT, noise);
        const z = Math.abs(said.log - mean) / sd;
        const density = Math.exp(z < HOLD_FROM ? -(z ** 2) / 2 : -HOLD_FROM * (z - HOLD_FROM / 2));
        energy -= Math.log(((1 - SLIPS) * density) / (WHOLE * sd) + SLIPS * SLIP_DENSITY);
      }
    }
    return energy;
  };
}

/** Mean and standard deviation of each question's row under the posterior. */
export function markovChain(notebook: Notebook, seed: number, steps: number): readonly Answer[] {
  const { unknowns, questions } = notebook;
  const random = seeded(seed);
  const size = unknowns.length + 1;
  const energy = energyOf(notebook);
  const asked = questions.map((row: Row) =>
    row.slopes.map(({ parameter, slope }): readonly [number, number] => {
      const j = unknowns.findIndex((unknown) => unknown.parameter === parameter);
      return [j, slope * unknowns[j]!.sd];
    }),
  );
  const sums = questions.map(() => [0, 0] as [number, number]);
  let at = new Float64Array(size);
  let now = energy(at);
  let factor = Matrix.eye(size).mul(0.3);
  const mean = new Float64Array(size);
  let second = Matrix.zeros(size, size);
  let scale = 1;
  const warmUp = steps / 4;
  for (let step = 1; step <= steps; step += 1) {
    const kick = Float64Array.from({ length: size }, () => random.normal());
    const next = at.map((value, i) => {
      let moved = value;
      for (let j = 0; j <= i; j += 1) moved += scale * factor.get(i, j) * kick[j]!;
      return moved;
    });
    const then = energy(next);
    const taken = Math.log(random.uniform()) < now - then;
    if (taken) [at, now] = [next, then];
    if (step <= warmUp) {
      scale *= Math.exp((taken ? 0.77 : -0.23) / Math.sqrt(step));
      for (let i = 0; i < size; i += 1) {
        mean[i]! += at[i]!;
        for (let j = 0; j <= i; j += 1) second.set(i, j, second.get(i, j) + at[i]! * at[j]!);
      }
      if (step % 5000 === 0) {
        // What the chain has seen of the posterior since the last time shapes its steps.
        const covariance = Matrix.zeros(size, size);
        for (let i = 0; i < size; i += 1)
          for (let j = 0; j <= i; j += 1) {
            const shared = second.get(i, j) / 5000 - (mean[i]! / 5000) * (mean[j]! / 5000);
            covariance.set(i, j, shared + (i === j ? 1e-4 : 0));
            covariance.set(j, i, covariance.get(i, j));
          }
        factor = new CholeskyDecomposition(covariance).lowerTriangularMatrix.mul(2.4 / Math.sqrt(size));
        if (step === 5000) scale = 1;
        mean.fill(0);
        second = Matrix.zeros(size, size);
      }
      continue;
    }
    asked.forEach((row, q) => {
      let value = 0;
      for (const [j, slope] of row) value += slope * at[j]!;
      sums[q]![0] += value;
      sums[q]![1] += value * value;
    });
  }
  const kept = steps - warmUp;
  return sums.map(([first, squares]) => ({
    mean: first / kept,
    sd: Math.sqrt(squares / kept - (first / kept) ** 2),
  }));
}
