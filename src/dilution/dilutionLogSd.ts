import { overrun, tableSpread } from "../core/curve.js";
import {
  checkedDilutionRows,
  dilutionRatio,
  logConcentration,
  readDilution,
  type Dilution,
  type DilutionLaw,
  type DilutionRow,
} from "./dilution.js";
import { genericDilutionLaw } from "./genericDilutionLaw.js";

/**
 * The spread in n of a law that was given without one: that of one family of developers over several films.
 */
export const GIVEN_EXPONENT_SD: number = 0.15;

/**
 * The standard deviation of ln(dilutionFactor) between two dilutions.
 *
 * @param from - dilution that the time is known for
 * @param to - dilution of today's bath
 * @param law - the dilution law
 * @returns the standard deviation in ln(time), 0 when both are of one strength
 * @throws TypeError or RangeError as {@link dilutionFactor} does
 *
 * @remarks Power law: sd(n)·|ln(c_from/c_to)|, with sd(n) = 0.15 for a law given without a spread; in
 * quadrature with the scatter of single times about the power where the law states it, in full from one
 * doubling on. Table: the rounding of its rows, in proportion between neighbouring ones, and ± 0.32 in n
 * more, as the generic law has, over what of the way lies outside its range.
 *
 * @example
 * ```ts
 * dilutionLogSd("1+1", "1+3", { kind: "power", exponent: 1, sd: 0.2 }) // => 0.13863
 * ```
 */
export function dilutionLogSd(from: Dilution | string, to: Dilution | string, law: DilutionLaw): number {
  dilutionRatio("dilutionLogSd", law);
  const fromLogC = logConcentration(readDilution("dilutionLogSd/from", from));
  const toLogC = logConcentration(readDilution("dilutionLogSd/to", to));
  return spreadBetween(law, fromLogC, toLogC);
}

/** The same for a checked law, between two ln(concentration). */
export function spreadBetween(law: DilutionLaw, fromLogC: number, toLogC: number): number {
  if (law.kind === "power") {
    const step = Math.abs(toLogC - fromLogC);
    const bySlope = (law.sd ?? GIVEN_EXPONENT_SD) * step;
    // Neighbouring dilutions share their departure from the power; from one doubling on it counts in full.
    return law.scatterLogSd === undefined
      ? bySlope
      : Math.hypot(bySlope, law.scatterLogSd * Math.min(1, step / Math.LN2));
  }
  return tableSpread(checkedDilutionRows("", law.rows), -fromLogC, -toLogC, genericDilutionLaw.sd as number);
}

/**
 * How far a concentration lies beyond a table's checked rows, in ln(concentration): above 0 where it is
 * weaker; 0 inside.
 */
export function dilutionOverrun(rows: readonly DilutionRow[], logC: number): number {
  return overrun(checkedDilutionRows("", rows), -logC);
}
