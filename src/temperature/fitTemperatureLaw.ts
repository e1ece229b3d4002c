import type { Departure } from "../core/departures.js";
import { refuse } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { leastSquaresLine } from "../core/leastSquares.js";
import { fitRows, slopeUpdate, withShownScatter } from "../core/slopeUpdate.js";
import { walkKnots } from "../core/walk.js";
import { asArrheniusLaw } from "./asArrheniusLaw.js";
import { genericTemperatureLaw } from "./genericTemperatureLaw.js";
import {
  checkedRows,
  checkedTemperatureLaw,
  GAS_CONSTANT_KJ,
  GIVEN_LAW_SD_KJ,
  SPACING_C,
  ZERO_CELSIUS_K,
  type ArrheniusLaw,
  type TemperatureLaw,
  type TemperatureRow,
} from "./law.js";
import { fahrenheitRow, LEAST_ENERGY_SD_KJ } from "./plausible.js";
import { FAHRENHEIT_ABOVE_C } from "./temperatureCautions.js";
import { energyText, notFahrenheitText } from "./text.js";

/** Options of {@link fitTemperatureLaw}. */
export interface FitTemperatureLawOptions {
  /** what was known before the rows; the generic law, 60 ± 18 kJ/mol, when left out */
  readonly prior?: TemperatureLaw | undefined;
}

/** What {@link fitTemperatureLaw} returns. */
export interface FittedTemperatureLaw {
  /** the fitted law */
  readonly law: ArrheniusLaw & {
    /** standard deviation of the activation energy, kJ/mol */
    readonly sdKJPerMol: number;
    /** none at the rows; beyond them the law is left a random walk */
    readonly departures: readonly Departure[];
  };
  /**
   * scatter of ln(time) about the rows' own straight line over 1/T, rows − 2 degrees of freedom; not there
   * for two rows, which leave none
   */
  readonly residualLogSd?: number;
  /** how many rows were fitted */
  readonly rows: number;
}

/**
 * An Arrhenius law from a time-temperature table: what was known of the law beforehand, updated by the rows.
 *
 * @param rows - two or more rows: `temperatureC` 0 to 45 °C, all different, `timeS` above 0 s, none longer
 * when warmer; `stepS` where the printed step is known
 * @param options - `prior`: what was known of the law beforehand
 * @returns the law with the standard deviation of its activation energy, the scatter of the rows, and their
 * number
 * @throws TypeError when the rows are not an array of objects with numbers, or the prior is no law
 * @throws RangeError for fewer than two rows, two rows at one temperature, times that rise with temperature,
 * values out of range, or an energy that comes out above 200 kJ/mol. A row above 45 °C is refused with the
 * question whether it is in °F, as `learn` sets such a run aside; colder figures in °F look like hot baths
 * and nothing tells them
 *
 * @remarks A normal prior on E and a flat one on the level: a = 1/τ² + Σp(x − x̄)², E = (m/τ² +
 * Σp(x − x̄)(ln t − mean))/a, sd = a^−½, with x = 1/RT and p = 1/variance of a row. A row is known to 2.5 %,
 * or to √((stepS/(t√12))² + 0.008²); three and more that scatter more than that count for less. Two show no
 * scatter, and are taken for printed ones: own times that repeat to 5 % are `stepS: 0.05 * timeS * √12`. So
 * two neighbouring rows say little, and many rows over a wide range leave nothing of the prior. Beyond the
 * rows the law departs from its energy, as a random walk of 0.03 in ln(time) over one °C, and between them as
 * a bridge. A prior without a spread has ± 14 kJ/mol; one below ± 3 is taken as ± 3. The form is the
 * conjugate normal update: A. Gelman and others, Bayesian Data Analysis, 3rd ed., Boca Raton, 2013, sec. 14.8
 * (from memory). The numbers: docs/decisions/priors.md.
 *
 * @example
 * ```ts
 * const rows = [{ temperatureC: 20, timeS: 390 }, { temperatureC: 21.11, timeS: 390 }];
 * fitTemperatureLaw(rows).law.activationEnergyKJPerMol // => 37.0
 * fitTemperatureLaw(rows).law.sdKJPerMol // => 14.1
 * ```
 */
export function fitTemperatureLaw(
  rows: readonly TemperatureRow[],
  options: FitTemperatureLawOptions = {},
): FittedTemperatureLaw {
  const knots = checkedRows("fitTemperatureLaw", rows);
  const hot = fahrenheitRow(rows);
  if (hot >= 0)
    refuse(
      `fitTemperatureLaw/rows/${hot}/temperatureC`,
      "not-fahrenheit",
      notFahrenheitText,
      { min: 0, max: FAHRENHEIT_ABOVE_C, quantity: "temperatureC", hint: "fahrenheit" },
      rows[hot]?.temperatureC,
    );
  const { prior = genericTemperatureLaw } = onlyFields("fitTemperatureLaw/options", options, ["prior"]);
  const middle = knots.reduce((sum, { x }) => sum + x, 0) / knots.length;
  const known = energyNear(prior, 1 / middle - ZERO_CELSIUS_K);
  const points = fitRows(knots.map((row) => ({ ...row, x: row.x / GAS_CONSTANT_KJ })));
  const { slope, sd } = slopeUpdate(withShownScatter(points), {
    slope: known.activationEnergyKJPerMol,
    sd: Math.max(LEAST_ENERGY_SD_KJ, known.sdKJPerMol ?? GIVEN_LAW_SD_KJ),
  });
  // A law that comes out must be one that may go in.
  if (!(slope <= 200)) refuse("fitTemperatureLaw/rows", "energy-at-most", energyText, { max: 200 }, slope);
  const rowsC = knots.map(({ x }) => 1 / x - ZERO_CELSIUS_K);
  const { residualSd } = leastSquaresLine(points.map(({ x, y }) => [x, y]));
  return {
    law: { kind: "arrhenius", activationEnergyKJPerMol: slope, sdKJPerMol: sd, departures: heldAt(rowsC) },
    ...(residualSd === undefined ? {} : { residualLogSd: residualSd }),
    rows: points.length,
  };
}

/** No departure at the rows, or at some of many: between them and beyond them is where the law may depart. */
function heldAt(places: readonly number[]): readonly Departure[] {
  const [pin] = places as readonly [number];
  return walkKnots(pin, places, SPACING_C).map((at) => ({ at, log: 0, sd: 0 }));
}

/**
 * A prior in any form as one activation energy: that which agrees with it 5 °C either side of the rows'
 * middle.
 */
function energyNear(prior: unknown, middleC: number): ArrheniusLaw {
  const law = checkedTemperatureLaw("fitTemperatureLaw/options/prior", prior);
  return law.kind === "arrhenius" && law.departures === undefined
    ? law
    : asArrheniusLaw(law, Math.max(0, middleC - 5), Math.min(100, middleC + 5));
}
