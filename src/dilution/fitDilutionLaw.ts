import { leastSquaresLine } from "../core/leastSquares.js";
import { checkedDilutionRows, type DilutionRow, type PowerDilutionLaw } from "./dilution.js";

/** What {@link fitDilutionLaw} returns. */
export interface FittedDilutionLaw {
  readonly law: PowerDilutionLaw & { readonly sd: number };
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
 * @throws RangeError for fewer than two rows, two rows of one strength, weaker baths that are faster, or an exponent above 3
 *
 * @remarks n = −slope; its standard error is the residual sd / √Σ(ln c − mean)². Two rows leave no residual, so there it is that of
 * two times rounded by 2.5 % each. A large `residualLogSd` says that the developer follows no power: use the rows as a table law.
 *
 * @example
 * ```ts
 * fitDilutionLaw([{ dilution: "1+1", timeS: 300 }, { dilution: "1+3", timeS: 600 }]).law.exponent // => 1
 * ```
 */
export function fitDilutionLaw(rows: readonly DilutionRow[]): FittedDilutionLaw {
  const points = checkedDilutionRows("fitDilutionLaw: ", rows).map(({ logC, timeS }) => [-logC, Math.log(timeS)] as const);
  const { slope, residualSd, spreadX } = leastSquaresLine(points);
  if (!(slope <= 3)) throw new RangeError(`fitDilutionLaw: rows must give an exponent of at most 3, got ${slope.toFixed(2)}`);
  const sd = (points.length > 2 ? residualSd : 0.025) / Math.sqrt(spreadX);
  return { law: { kind: "power", exponent: Math.max(0, slope), sd }, residualLogSd: residualSd, rows: points.length };
}
