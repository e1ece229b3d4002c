import { refuse } from "../core/guards.js";
import { leastSquaresLine, pooledSd } from "../core/leastSquares.js";
import { checkedRows, GAS_CONSTANT_KJ, type ArrheniusLaw, type TemperatureRow } from "./law.js";
import { TABLE_ROW_LOG_SD } from "../core/curve.js";

/**
 * The rounding of printed times, worth two degrees of freedom beside the rows' own: as much as a table of
 * four rows has, an assumption of this package.
 */
const ROUNDING = { sd: TABLE_ROW_LOG_SD, freedom: 2 };

/** What {@link fitTemperatureLaw} returns. */
export interface FittedTemperatureLaw {
  readonly law: ArrheniusLaw & { readonly sdKJPerMol: number };
  /** scatter of ln(time) about the fitted law, rows − 2 degrees of freedom; 0 for two rows */
  readonly residualLogSd: number;
  /** how many rows were fitted */
  readonly rows: number;
}

/**
 * Fits an Arrhenius law to a time-temperature table by least squares of ln(time) on 1/T.
 *
 * @param rows - two or more rows: `temperatureC` 0 to 100 °C, all different, `timeS` above 0 s, none longer
 * when warmer
 * @returns the law with the standard error of its activation energy, the scatter about it, and the number of
 * rows
 * @throws TypeError when the rows are not an array of objects with numbers
 * @throws RangeError for fewer than two rows, two rows at one temperature, times that rise with temperature,
 * values out of range, a table steeper than 200 kJ/mol, or rows so close or scattered that the standard error
 * passes 200 kJ/mol
 *
 * @remarks E = R × slope; its standard error is R·s/√Σ(1/T − mean)², where s² is the mean of the residual
 * variance, with its rows − 2 degrees of freedom, and of (2.5 %)², the rounding of a printed time, with two:
 * few rows that happen to lie on one line do not claim certainty, and two rows, which leave no residual, have
 * the rounding alone. NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1; the mean of variances: A.
 * Gelman and others, Bayesian Data Analysis, 3rd ed., Boca Raton, 2013, sec. 3.2 (from memory).
 *
 * @example
 * ```ts
 * fitTemperatureLaw([
 *   { temperatureC: 16, timeS: 720 },
 *   { temperatureC: 20, timeS: 480 },
 *   { temperatureC: 24, timeS: 330 },
 * ]).law.activationEnergyKJPerMol // => 69.67
 * ```
 */
export function fitTemperatureLaw(rows: readonly TemperatureRow[]): FittedTemperatureLaw {
  const points = checkedRows("fitTemperatureLaw", rows).map(({ x, timeS }) => [x, Math.log(timeS)] as const);
  const { slope, residualSd, spreadX } = leastSquaresLine(points);
  const activationEnergyKJPerMol = Math.max(0, GAS_CONSTANT_KJ * slope);
  if (!(activationEnergyKJPerMol <= 200))
    refuse(
      `fitTemperatureLaw/rows`,
      `must give at most 200 kJ/mol, got ${activationEnergyKJPerMol.toFixed(1)} kJ/mol`,
      activationEnergyKJPerMol,
    );
  const sdKJPerMol =
    (GAS_CONSTANT_KJ * pooledSd(ROUNDING, residualSd, points.length - 2)) / Math.sqrt(spreadX);
  // A law that comes out must be one that may go in.
  if (!(sdKJPerMol <= 200))
    refuse(
      "fitTemperatureLaw/rows",
      `must tell the energy to at most 200 kJ/mol, got ${sdKJPerMol.toFixed(1)}: are they too close?`,
      sdKJPerMol,
    );
  return {
    law: { kind: "arrhenius", activationEnergyKJPerMol, sdKJPerMol },
    residualLogSd: residualSd,
    rows: points.length,
  };
}
