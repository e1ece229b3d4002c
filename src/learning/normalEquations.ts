import type { SparseRow } from "./sparseRow.js";

/** A square matrix, row after row. */
type Matrix = Float64Array;

/** Scaled numbers with a normal distribution: their means and their covariance. */
export interface Normal {
  readonly mean: Float64Array;
  readonly covariance: Matrix;
}

/** A row, the value that it should come to, and the variance of that. */
export interface Weighted {
  readonly row: SparseRow;
  readonly value: number;
  readonly variance: number;
}

/**
 * The posterior of independent numbers about 0 with these precisions, after readings.
 *
 * @remarks The inverse of (prior precision + Σ x·xᵀ/variance), by Cholesky's factor: C. M. Bishop, Pattern
 * Recognition and Machine Learning, New York, 2006, eq. 3.50 and 3.51. No pivot can be less than the prior
 * precision of its number; where rounding says so, it is held there.
 */
export function posteriorOf(prior: readonly number[], readings: readonly Weighted[]): Normal {
  const size = prior.length;
  const precision: Matrix = new Float64Array(size * size);
  const right = new Float64Array(size);
  prior.forEach((own, i) => {
    precision[i * size + i] = own;
  });
  for (const { row, value, variance } of readings) {
    const { at, slopes } = row;
    for (let i = 0; i < at.length; i += 1) {
      const place = at[i] as number;
      const weighted = (slopes[i] as number) / variance;
      const line = place * size;
      right[place] = (right[place] as number) + weighted * value;
      for (let j = 0; j <= i; j += 1) {
        const cell = line + (at[j] as number);
        precision[cell] = (precision[cell] as number) + weighted * (slopes[j] as number);
      }
    }
  }
  const covariance = inverse(precision, prior);
  const mean = new Float64Array(size);
  for (let i = 0; i < size; i += 1)
    for (let j = 0; j < size; j += 1)
      mean[i] = (mean[i] as number) + (covariance[i * size + j] as number) * (right[j] as number);
  return { mean, covariance };
}

/** The inverse of a positive definite matrix, of which the lower half is given. */
function inverse(lower: Matrix, least: readonly number[]): Matrix {
  const size = least.length;
  const root = factor(lower, least);
  const back = inverseFactor(root, size);
  const found: Matrix = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1)
    for (let j = 0; j <= i; j += 1) {
      let sum = 0;
      for (let k = i; k < size; k += 1)
        sum += (back[k * size + i] as number) * (back[k * size + j] as number);
      found[i * size + j] = sum;
      found[j * size + i] = sum;
    }
  return found;
}

/** Cholesky's factor: the lower triangle whose product with its transpose is the matrix. */
function factor(lower: Matrix, least: readonly number[]): Matrix {
  const size = least.length;
  const root: Matrix = new Float64Array(size * size);
  for (let j = 0; j < size; j += 1) {
    for (let i = j; i < size; i += 1) {
      let left = lower[i * size + j] as number;
      for (let k = 0; k < j; k += 1) left -= (root[i * size + k] as number) * (root[j * size + k] as number);
      root[i * size + j] =
        i === j ? Math.sqrt(Math.max(least[j] as number, left)) : left / (root[j * size + j] as number);
    }
  }
  return root;
}

/** The inverse of a lower triangle. */
function inverseFactor(root: Matrix, size: number): Matrix {
  const found: Matrix = new Float64Array(size * size);
  for (let j = 0; j < size; j += 1)
    for (let i = j; i < size; i += 1) {
      let left = i === j ? 1 : 0;
      for (let k = j; k < i; k += 1) left -= (root[i * size + k] as number) * (found[k * size + j] as number);
      found[i * size + j] = left / (root[i * size + i] as number);
    }
  return found;
}

/** What a row comes to on average. */
export function meanAlong(mean: Float64Array, { at, slopes }: SparseRow): number {
  let total = 0;
  for (let i = 0; i < at.length; i += 1) total += (slopes[i] as number) * (mean[at[i] as number] as number);
  return total;
}

/** The variance of what a row comes to. */
export function varianceAlong({ mean, covariance }: Normal, { at, slopes }: SparseRow): number {
  let total = 0;
  for (let i = 0; i < at.length; i += 1) {
    const place = at[i] as number;
    const line = place * mean.length;
    let across = 0;
    for (let j = 0; j < i; j += 1)
      across += (slopes[j] as number) * (covariance[line + (at[j] as number)] as number);
    const slope = slopes[i] as number;
    total += slope * (2 * across + slope * (covariance[line + place] as number));
  }
  // Rounding must not carry it below nothing.
  return Math.max(0, total);
}

/** The covariance of what two rows come to. */
export function covarianceOf(covariance: Matrix, size: number, a: SparseRow, b: SparseRow): number {
  let total = 0;
  for (let i = 0; i < a.at.length; i += 1) {
    const line = (a.at[i] as number) * size;
    let across = 0;
    for (let j = 0; j < b.at.length; j += 1)
      across += (b.slopes[j] as number) * (covariance[line + (b.at[j] as number)] as number);
    total += (a.slopes[i] as number) * across;
  }
  return total;
}
