import { overrun, tableSpread } from "../core/curve.js";
import {
  bathTemperature,
  checkedRows,
  GAS_CONSTANT_KJ,
  inverseKelvin,
  lawSlope,
  type TemperatureLaw,
  type TemperatureRow,
} from "./law.js";

/**
 * The spread of a law that was given without one, kJ/mol: the standard deviation between the published tables
 * of one developer on different films (D-76 gives 40 to 64 over four tables, XTOL 25 to 76 over four; both in
 * the handbook room).
 */
export const GIVEN_LAW_SD_KJ: number = 12;

/**
 * The standard deviation of ln(temperatureFactor) between two temperatures.
 *
 * @param law - the temperature law
 * @param fromC - temperature the time is known for, 0 to 100 °C
 * @param toC - temperature of today's bath, 0 to 100 °C
 * @returns the standard deviation in ln(time), 0 when the temperatures are equal
 * @throws TypeError or RangeError as {@link temperatureFactor} does
 *
 * @remarks Arrhenius: sd(E)/R·|1/T − 1/T0|. Coefficient: sd(ratio)/ratio·|T − T0|/interval. A law given
 * without a spread has that of an activation energy known to ± 12 kJ/mol, which is what published tables of
 * one developer on several films show. Table: the rounding of its rows, in proportion between neighbouring
 * ones, and ± 12 kJ/mol more over what of the way lies outside its range.
 *
 * @example
 * ```ts
 * temperatureLogSd({ kind: "arrhenius", activationEnergyKJPerMol: 60, sdKJPerMol: 20 }, 20, 14) // => 0.17145
 * ```
 */
export function temperatureLogSd(law: TemperatureLaw, fromC: number, toC: number): number {
  lawSlope("temperatureLogSd", law);
  bathTemperature("temperatureLogSd/fromC", fromC);
  bathTemperature("temperatureLogSd/toC", toC);
  return spreadUnder(law, fromC, toC);
}

/** The same for a checked law. */
export function spreadUnder(law: TemperatureLaw, fromC: number, toC: number): number {
  if (law.kind === "arrhenius") return energyLogSd(law.sdKJPerMol ?? GIVEN_LAW_SD_KJ, fromC, toC);
  if (law.kind === "coefficient")
    // null, which is what JSON makes of NaN, is no spread of 0.
    return typeof law.sdRatio !== "number"
      ? energyLogSd(GIVEN_LAW_SD_KJ, fromC, toC)
      : ((law.sdRatio / law.ratio) * Math.abs(toC - fromC)) / law.intervalC;
  return tableSpread(
    checkedRows("", law.rows),
    inverseKelvin(fromC),
    inverseKelvin(toC),
    GIVEN_LAW_SD_KJ / GAS_CONSTANT_KJ,
  );
}

function energyLogSd(sdKJPerMol: number, fromC: number, toC: number): number {
  return (sdKJPerMol / GAS_CONSTANT_KJ) * Math.abs(inverseKelvin(toC) - inverseKelvin(fromC));
}

/**
 * How far a temperature lies beyond a table's checked rows, as a difference of 1/T: above 0 where it is
 * colder; 0 inside.
 */
export function tableOverrun(rows: readonly TemperatureRow[], temperatureC: number): number {
  return overrun(checkedRows("", rows), inverseKelvin(temperatureC));
}
