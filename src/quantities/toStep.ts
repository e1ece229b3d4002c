/*
 * Rounding as on paper: the decimals of a number are counted in whole units of their last place.
 */

/** A number above 0 or 0 as its figures and the place of the last: 8.55 is 855 and −2. */
function decimals(value: number): readonly [figures: bigint, place: number] {
  const [mantissa = "", exponent] = value.toExponential().split("e");
  const [whole = "", fraction = ""] = mantissa.split(".");
  return [BigInt(whole + fraction), Number(exponent) - fraction.length];
}

/** The multiple of a step above 0 nearest to a value of 0 or more, halves up; exact in decimals. */
export function toStep(value: number, step: number): number {
  const [figures, place] = decimals(value);
  const [stepFigures, stepPlace] = decimals(step);
  const last = Math.min(place, stepPlace);
  const units = figures * 10n ** BigInt(place - last);
  const stepUnits = stepFigures * 10n ** BigInt(stepPlace - last);
  return Number(`${((2n * units + stepUnits) / (2n * stepUnits)) * stepUnits}e${last}`);
}
