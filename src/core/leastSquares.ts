/*
 * Module: core. A straight line by least squares, with the standard error of its slope.
 */
import { linearRegression, mean, sumSimple } from "simple-statistics";

/**
 * A fitted line: `residualSd` is the scatter about it, n − 2 degrees of freedom; `undefined` with none left.
 */
export interface FittedLine {
  readonly slope: number;
  readonly intercept: number;
  readonly residualSd: number | undefined;
  /** sum of squared deviations of x from its mean */
  readonly spreadX: number;
}

/**
 * The scatter of rows about a fit, pooled with one that is known beforehand: the mean of both variances by
 * their degrees of freedom, so that few rows that happen to lie on a line do not claim certainty, and those
 * that leave no residual, two on a line, have the known one alone.
 */
export function pooledSd(
  known: { readonly sd: number; readonly freedom: number },
  residualSd: number | undefined,
  freedom: number,
): number {
  if (residualSd === undefined) return known.sd;
  return Math.sqrt((known.freedom * known.sd ** 2 + freedom * residualSd ** 2) / (known.freedom + freedom));
}

/**
 * Ordinary least squares of y on x. The x values are centred first: with 1/T in 1/K they differ in the fourth
 * digit only, and uncentred sums would lose most of the figures.
 */
export function leastSquaresLine(points: readonly (readonly [x: number, y: number])[]): FittedLine {
  const meanX = mean(points.map(([x]) => x));
  const meanY = mean(points.map(([, y]) => y));
  const centred = points.map(([x, y]) => [x - meanX, y - meanY]);
  const { m, b } = linearRegression(centred);
  const squares = centred.map(([x, y]) => ((y as number) - m * (x as number) - b) ** 2);
  return {
    slope: m,
    intercept: meanY + b - m * meanX,
    residualSd: points.length > 2 ? Math.sqrt(sumSimple(squares) / (points.length - 2)) : undefined,
    spreadX: sumSimple(centred.map(([x]) => (x as number) ** 2)),
  };
}
