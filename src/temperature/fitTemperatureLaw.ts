import { inRange } from "../core/guards.js";
import { leastSquaresLine } from "../core/leastSquares.js";
import { checkedRows, GAS_CONSTANT_KJ, inverseKelvin, type ArrheniusLaw, type TemperatureRow } from "./law.js";
import { TABLE_ROW_LOG_SD } from "./temperatureLogSd.js";

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
 * @param rows - two or more rows: `temperatureC` 0 to 100 °C, all different, `timeS` above 0 s, none longer when warmer
 * @returns the law with the standard error of its activation energy, the scatter about it, and the number of rows
 * @throws TypeError when the rows are not an array of objects with numbers
 * @throws RangeError for fewer than two rows, two rows at one temperature, times that rise with temperature, values out of
 * range, a table steeper than 200 kJ/mol, or rows so close or scattered that the standard error passes 200 kJ/mol
 *
 * @remarks E = R × slope; its standard error is R × residual sd / √Σ(1/T − mean)². Two rows leave no residual, so there the
 * standard error is that of two times rounded by 2.5 % each. NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1.
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
  const points = checkedRows("fitTemperatureLaw: ", rows).map(
    ({ temperatureC, timeS }) => [inverseKelvin(temperatureC), Math.log(timeS)] as const,
  );
  const { slope, residualSd, spreadX } = leastSquaresLine(points);
  const activationEnergyKJPerMol = Math.max(0, GAS_CONSTANT_KJ * slope);
  if (!(activationEnergyKJPerMol <= 200))
    throw new RangeError(
      `fitTemperatureLaw: rows must give at most 200 kJ/mol, got ${activationEnergyKJPerMol.toFixed(1)} kJ/mol`,
    );
  const scatter = points.length > 2 ? residualSd : TABLE_ROW_LOG_SD;
  const sdKJPerMol = (GAS_CONSTANT_KJ * scatter) / Math.sqrt(spreadX);
  // A law that comes out must be one that may go in.
  inRange("fitTemperatureLaw: fitted sdKJPerMol", sdKJPerMol, 0, 200, " kJ/mol (are the rows too close?)");
  return {
    law: { kind: "arrhenius", activationEnergyKJPerMol, sdKJPerMol },
    residualLogSd: residualSd,
    rows: points.length,
  };
}
