import { overrun } from "../core/curve.js";
import { dilutionRatio, logConcentration, readDilution, type Dilution, type DilutionLaw } from "./dilution.js";

/** The spread in n of a law that was given without one: that of one family of developers over several films. */
export const GIVEN_EXPONENT_SD: number = 0.15;

/** The standard deviation in ln(time) of each row of a maker's table: its rounding to a quarter or half minute. */
const ROW_LOG_SD = 0.025;

/**
 * The standard deviation of ln(dilutionFactor) between two dilutions.
 *
 * @param from - dilution that the time is known for
 * @param to - dilution of today's bath
 * @param law - the dilution law
 * @returns the standard deviation in ln(time), 0 when both are of one strength
 * @throws TypeError or RangeError as {@link dilutionFactor} does
 *
 * @remarks Power law: sd(n)·|ln(c_from/c_to)|, with sd(n) = 0.15 for a law given without a spread; in quadrature with the scatter of
 * single times about the power where the law states it, in full from one doubling on. Table: the rounding of its rows,
 * and outside its range ± 0.15 in n more over the distance beyond its nearest row.
 *
 * @example
 * ```ts
 * dilutionLogSd("1+1", "1+3", { kind: "power", exponent: 1, sd: 0.2 }) // => 0.13863
 * ```
 */
export function dilutionLogSd(from: Dilution | string, to: Dilution | string, law: DilutionLaw): number {
  dilutionRatio("dilutionLogSd:", law);
  const fromLogC = logConcentration(readDilution("dilutionLogSd: from", from));
  const toLogC = logConcentration(readDilution("dilutionLogSd: to", to));
  return spreadBetween(law, fromLogC, toLogC);
}

/** The same for a checked law, between two ln(concentration). */
export function spreadBetween(law: DilutionLaw, fromLogC: number, toLogC: number): number {
  if (fromLogC === toLogC) return 0;
  if (law.kind === "power") {
    const step = Math.abs(toLogC - fromLogC);
    const bySlope = (law.sd ?? GIVEN_EXPONENT_SD) * step;
    // Neighbouring dilutions share their departure from the power; from one doubling on it counts in full.
    return law.scatterLogSd === undefined
      ? bySlope
      : Math.hypot(bySlope, law.scatterLogSd * Math.min(1, step / Math.LN2));
  }
  const beyond = dilutionOverrun(law.rows, fromLogC) + dilutionOverrun(law.rows, toLogC);
  return Math.hypot(ROW_LOG_SD * Math.SQRT2, GIVEN_EXPONENT_SD * beyond);
}

/** How far a concentration lies outside a table's rows, in ln(concentration); 0 inside. */
export function dilutionOverrun(rows: readonly { readonly dilution: Dilution | string }[], logC: number): number {
  return overrun(
    rows.map((row) => logConcentration(readDilution("dilutionLogSd: law.rows", row.dilution))),
    logC,
  );
}
