/*
 * Room: core. Linear regression with a prior, in numbers scaled by their prior standard deviations, so that the prior is 0 ± 1 for each.
 */

/** Mean and covariance of the scaled numbers. */
export interface Posterior {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

/** What was read: the slopes of its row, and the value that the row should come to. */
export interface Surprise {
  readonly slopes: readonly number[];
  readonly surprise: number;
}

/**
 * The posterior of u in surprises = slopes·u + noise, for a prior 0 ± 1 on each u and noise of the precisions (1/variance) given.
 *
 * @remarks (I + XᵀPX) u = XᵀP y. The matrix is at least the unit matrix, so it has an inverse however alike the rows. C. M. Bishop, Pattern
 * Recognition and Machine Learning, New York, 2006, sec. 3.3.
 */
export function posterior(size: number, readings: readonly Surprise[], precisions: readonly number[]): Posterior {
  const matrix = Array.from({ length: size }, (_, i) => new Float64Array(size).fill(1, i, i + 1));
  const right = new Float64Array(size);
  readings.forEach(({ slopes: row, surprise }, run) => {
    for (let i = 0; i < size; i += 1) {
      const weighted = (row[i] as number) * (precisions[run] as number);
      if (weighted === 0) continue;
      right[i] = (right[i] as number) + weighted * surprise;
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

/**
 * The inverse of a symmetric matrix that is at least the unit matrix, of which the lower triangle is read: one pivot of its diagonal after
 * another (Gauss and Jordan). Every pivot is 1 or more, whatever the rounding says: what is left of such a matrix is at least a unit matrix too.
 */
function inverse(lower: readonly Float64Array[]): number[][] {
  const matrix = lower.map((row, i) => lower.map((other, j) => (j > i ? other[i] : row[j]) as number));
  matrix.forEach((pivots, k) => {
    const pivot = Math.max(1, pivots[k] as number);
    pivots[k] = 1;
    pivots.forEach((each, j) => {
      pivots[j] = each / pivot;
    });
    matrix.forEach((row, i) => {
      if (i === k) return;
      const factor = row[k] as number;
      row[k] = 0;
      pivots.forEach((each, j) => {
        row[j] = (row[j] as number) - factor * each;
      });
    });
  });
  return matrix;
}
