import { refuse } from "../core/guards.js";
import {
  readCurve,
  ROUNDING,
  type CharacteristicCurve,
  type DensityStep,
  type ReadCurve,
} from "./sensitometry.js";
import { speedPointOf, type SpeedPoint } from "./speedPoint.js";
import { curveReachesText } from "./text.js";

/** How far above the speed point the second point lies, in log H (ISO 6). */
const SPAN = 1.3;

/**
 * The average gradient of a characteristic curve in the ISO 6 geometry: from the speed point to 1.30 in log H
 * above it.
 *
 * @param curve - three or more steps, as for {@link speedPoint}
 * @returns rise of density over 1.30; 0.80/1.30 = 0.615 is the gradient at which ISO 6 takes the speed
 * @throws TypeError or RangeError as {@link speedPoint} does, and a RangeError when the curve ends less than
 * 1.30 above the speed point
 *
 * @remarks ISO 6:1993, points M and N (geometry from memory of the standard). It is not the gradient of the
 * straight part, which is higher.
 *
 * @example
 * ```ts
 * const curve = [[-3, 0.1], [-2.5, 0.12], [-2, 0.25], [-1.5, 0.5], [-0.5, 1.1]].map(([logH, density]) => ({
 * logH, density })); averageGradient(curve) // => 0.529
 * ```
 */
export function averageGradient(curve: CharacteristicCurve): number {
  const read = readCurve("averageGradient/curve", curve);
  return gradientFrom("averageGradient/curve", read, speedPointOf("averageGradient/curve", read));
}

/** The average gradient from a known speed point. */
export function gradientFrom(where: string, read: ReadCurve, point: SpeedPoint): number {
  const upper = point.logH + SPAN;
  const last = (read.steps[read.steps.length - 1] as DensityStep).logH;
  if (upper > last + ROUNDING)
    refuse(where, "curve-reaches", curveReachesText, { logH: upper, lastLogH: last }, undefined);
  return (read.densityAt(upper) - point.density) / SPAN;
}
