/*
 * Room: learning. Linear regression with a prior, in numbers scaled by their prior standard deviations, so
 * that the prior is 0 ± 1 for each.
 */

/**
 * Scaled numbers u = mean + spread·z, with z independent and standard normal: a row of `spread` for each
 * number, and its covariance with another is the dot product of the two.
 */
export interface Posterior {
  readonly mean: number[];
  readonly spread: readonly number[][];
}

/** What was read: the slopes of its row, and the value that the row should come to. */
export interface Surprise {
  readonly slopes: readonly number[];
  readonly surprise: number;
}

/**
 * The posterior of all the readings, for a prior 0 ± 1 on each of `size` numbers and noise of the variances
 * given.
 */
export function posterior(
  size: number,
  readings: readonly Surprise[],
  variances: readonly number[],
): Posterior {
  const mean = new Array<number>(size).fill(0);
  const found = { mean, spread: mean.map((_, i) => mean.map((_, j) => Number(i === j))) };
  readings.forEach((reading, i) => {
    update(found, reading, variances[i] as number);
  });
  return found;
}

/**
 * Brings a posterior to what it is after one more reading, surprise = slopes·u + noise of the variance given;
 * a variance of 0 holds the numbers there beyond doubt.
 *
 * @remarks With S the spread, x the slopes, f = Sᵀx and k = 1/(variance + f·f), the mean moves by k·Sf times
 * what it misses the reading by, and S loses k/(1 + √(k·variance))·(Sf)fᵀ. So a covariance keeps twice the
 * digits and never turns negative, however alike the readings: J. E. Potter's form of the update, in R. H.
 * Battin, Astronautical Guidance, New York, 1964, sec. 9 (from memory).
 */
export function update({ mean, spread }: Posterior, { slopes, surprise }: Surprise, variance: number): void {
  const shares = new Array<number>(mean.length).fill(0);
  for (let i = 0; i < shares.length; i += 1) add(shares, slopes[i] as number, spread[i] as number[]);
  const gain = 1 / (variance + dot(shares, shares));
  const miss = gain * (surprise - dot(mean, slopes));
  const less = gain / (1 + Math.sqrt(gain * variance));
  for (let i = 0; i < shares.length; i += 1) {
    const row = spread[i] as number[];
    const along = dot(row, shares);
    mean[i] = (mean[i] as number) + miss * along;
    add(row, -less * along, shares);
  }
}

/** Adds to a row a multiple of another of its length. */
function add(row: number[], times: number, other: readonly number[]): void {
  if (times === 0) return;
  for (let i = 0; i < row.length; i += 1) row[i] = (row[i] as number) + times * (other[i] as number);
}

/** The sum of products of two rows of one length. */
export function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += (a[i] as number) * (b[i] as number);
  return sum;
}
