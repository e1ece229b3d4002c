import { refuse } from "../core/guards.js";
import { leastSquaresLine, pooledSd } from "../core/leastSquares.js";
import { checkedDilutionRows, type DilutionRow, type PowerDilutionLaw } from "./dilution.js";

/**
 * How far makers' tables lie from any power: the pooled residual standard deviation of ln(time) over the two
 * read tables of four dilutions (Eastman Kodak, publication F-32), whose residuals have two degrees of
 * freedom each. Tables of three leave 0.00 to 0.14. It counts for three degrees of freedom beside a table's
 * own.
 */
const POOLED = { sd: 0.15, freedom: 3 };

/** What {@link fitDilutionLaw} returns. */
export interface FittedDilutionLaw {
  readonly law: PowerDilutionLaw & { readonly sd: number; readonly scatterLogSd: number };
  /** scatter of ln(time) about the fitted law, rows − 2 degrees of freedom; 0 for two rows */
  readonly residualLogSd: number;
  /** how many rows were fitted */
  readonly rows: number;
}

/**
 * Fits a power law to times at several dilutions by least squares of ln(time) on ln(concentration).
 *
 * @param rows - two or more rows: `dilution` as text or parts, no two of one strength, `timeS` above 0 s
 * @returns the law with the standard error of its exponent, the scatter about it, and the number of rows
 * @throws TypeError when the rows are not an array of objects with a dilution and a number
 * @throws RangeError for fewer than two rows, two rows of one strength, weaker baths that are faster, an
 * exponent above 3, or rows so close or scattered that its standard error passes 3
 *
 * @remarks n = −slope; its standard error is `scatterLogSd`/√Σ(ln c − mean)². `scatterLogSd` weighs the
 * scatter of published tables about a power, 0.15 (as 3 degrees of freedom), with the rows' own: two rows
 * leave no residual, and few that happen to lie on a line do not claim certainty. A large `residualLogSd`
 * says that the developer follows no power: use the rows as a table law.
 *
 * @example
 * ```ts
 * fitDilutionLaw([{ dilution: "1+1", timeS: 300 }, { dilution: "1+3", timeS: 600 }]).law.exponent // => 1
 * ```
 */
export function fitDilutionLaw(rows: readonly DilutionRow[]): FittedDilutionLaw {
  const points = checkedDilutionRows("fitDilutionLaw", rows).map(
    ({ x, timeS }) => [x, Math.log(timeS)] as const,
  );
  const { slope, residualSd, spreadX } = leastSquaresLine(points);
  if (!(slope <= 3))
    refuse(`fitDilutionLaw/rows`, `must give an exponent of at most 3, got ${slope.toFixed(2)}`, slope);
  const scatterLogSd = pooledSd(POOLED, residualSd, points.length - 2);
  const sd = scatterLogSd / Math.sqrt(spreadX);
  // A law that comes out must be one that may go in.
  if (!(sd <= 3))
    refuse(
      "fitDilutionLaw/rows",
      `must tell the exponent to at most 3, got ${sd.toFixed(2)}: are they too close?`,
      sd,
    );
  return {
    law: { kind: "power", exponent: Math.max(0, slope), sd, scatterLogSd },
    residualLogSd: residualSd,
    rows: points.length,
  };
}
