/*
 * Room: learning. Linear regression with a prior, in numbers scaled by their prior standard deviations, so that the prior is 0 ± 1 for each.
 */

/** Mean and covariance of the scaled numbers. */
export interface Posterior {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

/**
 * The posterior of u in values = rows·u + noise, for a prior 0 ± 1 on each u and noise of the precisions (1/variance) given.
 *
 * @remarks (I + XᵀPX) u = XᵀP y; the inverse by Cholesky's factors. The matrix is at least the unit matrix, so it always has them,
 * however alike the rows. C. M. Bishop, Pattern Recognition and Machine Learning, New York, 2006, sec. 3.3.
 */
export function posterior(size: number, rows: readonly (readonly number[])[], values: readonly number[], precisions: readonly number[]): Posterior {
  const matrix = Array.from({ length: size }, (_, i) => new Float64Array(size).fill(1, i, i + 1));
  const right = new Float64Array(size);
  rows.forEach((row, run) => {
    for (let i = 0; i < size; i += 1) {
      const weighted = (row[i] as number) * (precisions[run] as number);
      if (weighted === 0) continue;
      right[i] = (right[i] as number) + weighted * (values[run] as number);
      const into = matrix[i] as Float64Array;
      for (let j = 0; j <= i; j += 1) into[j] = (into[j] as number) + weighted * (row[j] as number);
    }
  });
  const covariance = inverse(matrix);
  return { mean: covariance.map((row) => dot(row, right)), covariance };
}

/** The sum of products of two rows of one length. */
export function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

/** The inverse of a symmetric positive definite matrix, of which the lower triangle is read: L·Lᵀ, column by column of the unit matrix. */
function inverse(matrix: readonly Float64Array[]): number[][] {
  const lower = matrix.map((row) => row.slice());
  lower.forEach((row, i) => {
    for (let j = 0; j <= i; j += 1) {
      const other = lower[j] as Float64Array;
      const rest = (row[j] as number) - dot(row.subarray(0, j), other);
      row[j] = i === j ? Math.sqrt(rest) : rest / (other[j] as number);
    }
  });
  return matrix.map((_, column) => {
    const x = new Array<number>(matrix.length).fill(0).fill(1, column, column + 1);
    lower.forEach((row, i) => {
      x[i] = ((x[i] as number) - dot(row.subarray(0, i), x)) / (row[i] as number);
    });
    for (let i = x.length - 1; i >= 0; i -= 1) {
      let rest = x[i] as number;
      for (let k = i + 1; k < x.length; k += 1) rest -= (lower[k]?.[i] as number) * (x[k] as number);
      x[i] = rest / (lower[i]?.[i] as number);
    }
    return x;
  });
}
