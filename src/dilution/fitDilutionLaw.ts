import { refuse } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { leastSquaresLine } from "../core/leastSquares.js";
import { fitRows, slopeUpdate } from "../core/slopeUpdate.js";
import {
  checkedDilutionLaw,
  checkedDilutionRows,
  GIVEN_EXPONENT_SD,
  TABLE_EXPONENT_SD,
  type DilutionLaw,
  type DilutionRow,
  type PowerDilutionLaw,
} from "./dilution.js";
import { DEPARTURE_LOG_SD, genericDilutionLaw } from "./genericDilutionLaw.js";
import { LEAST_EXPONENT_SD } from "./plausible.js";
import { exponentText } from "./text.js";

/** Options of {@link fitDilutionLaw}. */
export interface FitDilutionLawOptions {
  /**
   * what was known before the rows, best the class of the developer (`handbookDilutionLaw`); the generic law,
   * n = 0.75 ± 0.25, when left out
   */
  readonly prior?: DilutionLaw | undefined;
}

/** What {@link fitDilutionLaw} returns. */
export interface FittedDilutionLaw {
  /** the fitted law */
  readonly law: PowerDilutionLaw & {
    /** standard deviation of the exponent */
    readonly sd: number;
  };
  /**
   * scatter of ln(time) about the rows' own straight line over ln(concentration), rows − 2 degrees of
   * freedom; not there for two rows, which leave none
   */
  readonly residualLogSd?: number;
  /** how many rows were fitted */
  readonly rows: number;
}

/**
 * A power law from times at several dilutions: what was known of the developer beforehand, updated by the
 * rows.
 *
 * @param rows - two or more rows: `dilution` as text or parts, no two of one strength, `timeS` above 0 s;
 * `stepS` where the printed step is known
 * @param options - `prior`: what was known beforehand, for example the class of the developer
 * @returns the law with the standard deviation of its exponent, the scatter of the rows, and their number
 * @throws TypeError when the rows are not an array of objects with a dilution and a number, or the prior is
 * no law
 * @throws RangeError for fewer than two rows, two rows of one strength, weaker baths that are faster, or an
 * exponent that comes out above 3
 *
 * @remarks The update of {@link fitTemperatureLaw}, with x = −ln(concentration), a row known to 2.5 % or by
 * its `stepS`, and beside it the departure from a power that every dilution law has: a random walk of 0.19
 * over one unit of x, which rows near each other cannot tell from a slope. So two rows one doubling apart
 * make n = 0.75 ± 0.25 into ± 0.17, and never less sure. A large `residualLogSd` says that the developer
 * follows no power: use the rows as a table law. The numbers: docs/decisions/priors.md.
 *
 * @example
 * ```ts
 * const rows = [{ dilution: "1+1", timeS: 300 }, { dilution: "1+3", timeS: 600 }];
 * fitDilutionLaw(rows).law.exponent // => 0.883
 * fitDilutionLaw(rows, { prior: handbookDilutionLaw("solvent-stock") }).law.exponent // => 0.699
 * ```
 */
export function fitDilutionLaw(
  rows: readonly DilutionRow[],
  options: FitDilutionLawOptions = {},
): FittedDilutionLaw {
  const points = fitRows(checkedDilutionRows("fitDilutionLaw", rows));
  const { prior = genericDilutionLaw } = onlyFields("fitDilutionLaw/options", options, ["prior"]);
  const known = powerOf(prior);
  const { slope, sd } = slopeUpdate(
    points,
    { slope: known.exponent, sd: Math.max(LEAST_EXPONENT_SD, known.sd ?? GIVEN_EXPONENT_SD) },
    DEPARTURE_LOG_SD,
  );
  // A law that comes out must be one that may go in.
  if (!(slope <= 3)) refuse("fitDilutionLaw/rows", "exponent-at-most", exponentText, { max: 3 }, slope);
  const { residualSd } = leastSquaresLine(points.map(({ x, y }) => [x, y]));
  return {
    law: { kind: "power", exponent: slope, sd },
    ...(residualSd === undefined ? {} : { residualLogSd: residualSd }),
    rows: points.length,
  };
}

/** A prior as a power; a table becomes the power fitted to it, moved by what was learned of its slope. */
function powerOf(prior: unknown): PowerDilutionLaw {
  const law = checkedDilutionLaw("fitDilutionLaw/options/prior", prior);
  if (law.kind === "power") return law;
  const { exponent, sd } = fitDilutionLaw(law.rows).law;
  const { exponentOff = 0, sd: offSd = TABLE_EXPONENT_SD } = law;
  return { kind: "power", exponent: Math.max(0, exponent + exponentOff), sd: Math.hypot(sd, offSd) };
}
