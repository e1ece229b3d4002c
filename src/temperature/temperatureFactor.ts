import { bathTemperature, inverseKelvin, lawSlope, tableTime, type TemperatureLaw } from "./law.js";

/**
 * The factor by which development time changes between two temperatures: time at `toC` divided by time at
 * `fromC`.
 *
 * @param law - the temperature law of the developer and material
 * @param fromC - temperature the time is known for, 0 to 100 °C
 * @param toC - temperature of today's bath, 0 to 100 °C
 * @returns the time factor, dimensionless, above 0: below 1 when `toC` is the warmer
 * @throws TypeError when the law or a temperature is of the wrong kind
 * @throws RangeError when a temperature or a figure of the law is out of range, or a table's rows cannot be a
 * table
 *
 * @remarks Arrhenius: exp((E/R)(1/T − 1/T0)), T in kelvin. Coefficient: ratio^((T0 − T)/interval). Table: the
 * ratio of the table's own times, exact at its rows, a monotone cubic of ln t in 1/T between them, and
 * straight on with the slope of the nearest interval outside. This is a factor on time; the rate is its
 * inverse. Nothing here knows whether the emulsion stands the temperature or whether hydroquinone still works
 * in the cold: see the cautions of `compensate`.
 *
 * Source of the forms: S. Arrhenius, Z. phys. Chem. 4, 1889, p. 226; temperature coefficient over 10 °C: C.
 * E. K. Mees, Jahrbuch für Photographie 25, 1911, p. 170.
 *
 * @example
 * ```ts
 * temperatureFactor({ kind: "coefficient", ratio: 2, intervalC: 10 }, 20, 10) // => 2
 * ```
 */
export function temperatureFactor(law: TemperatureLaw, fromC: number, toC: number): number {
  const slope = lawSlope("temperatureFactor", law);
  bathTemperature("temperatureFactor/fromC", fromC);
  bathTemperature("temperatureFactor/toC", toC);
  return ratioUnder(law, slope, fromC, toC);
}

/** The same for a checked law of that slope. */
export function ratioUnder(
  law: TemperatureLaw,
  slope: number | undefined,
  fromC: number,
  toC: number,
): number {
  if (fromC === toC) return 1;
  const { kind } = law;
  if (kind === "table") {
    const timeAt = tableTime(law.rows);
    return timeAt(toC) / timeAt(fromC);
  }
  return Math.exp(
    (slope as number) * (kind === "arrhenius" ? inverseKelvin(toC) - inverseKelvin(fromC) : toC - fromC),
  );
}
