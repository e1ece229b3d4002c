import { normalDensity, normalUpper } from "../core/normal.js";

/** Half steps up to five either side, and all beyond as one. */
const WINDOWS_A_SIDE = 10;

/** A window as improbable as this tells nothing that counts, and its figures would cancel. */
const NONE = 1e-12;

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
  const sd = Math.sqrt(variance);
  let told = 0;
  let [above, dense] = [1, 0];
  // Each limit ends one window and begins the next: P and dP/d off are differences from limit to limit.
  for (let j = -WINDOWS_A_SIDE; j <= WINDOWS_A_SIDE; j += 1) {
    const limit = j === WINDOWS_A_SIDE ? Infinity : ((j + 0.5) * width - off) / sd;
    const [nextAbove, nextDense] = [normalUpper(limit), normalDensity(limit)];
    const probability = above - nextAbove;
    if (probability > NONE) told += (dense - nextDense) ** 2 / probability;
    [above, dense] = [nextAbove, nextDense];
  }
  return told / variance;
}
