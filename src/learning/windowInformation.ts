import { windowLikelihood } from "./windowLikelihood.js";

/** Half steps up to five either side, and all beyond as one. */
const WINDOWS_A_SIDE = 10;

/**
 * What an outcome that is one of a row of windows is expected to tell of ln(time): the mean square of d
 * ln(probability)/d ln(time), which is 1/variance for a value.
 *
 * @param off - ln(right time/time given), as it is expected
 * @param width - width of a window, in ln(time)
 * @param variance - of `off`, with the eye's noise in
 *
 * @remarks Fisher's information of a grouped reading, Σ P·g²: G. Kulldorff, Contributions to the Theory of
 * Estimation from Grouped and Partially Grouped Samples, Stockholm, 1961 (from memory).
 */
export function windowInformation(off: number, width: number, variance: number): number {
  let told = 0;
  for (let j = -WINDOWS_A_SIDE; j <= WINDOWS_A_SIDE; j += 1) {
    const low = j === -WINDOWS_A_SIDE ? -Infinity : (j - 0.5) * width;
    const high = j === WINDOWS_A_SIDE ? Infinity : (j + 0.5) * width;
    const { probability, slope } = windowLikelihood(low, high, off, variance);
    told += probability * slope * slope;
  }
  return told;
}
