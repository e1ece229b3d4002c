import { refuse } from "../core/guards.js";
import {
  logHAt,
  readCurve,
  type CharacteristicCurve,
  type DensityStep,
  type ReadCurve,
} from "./sensitometry.js";
import type { CurveEnd } from "../core/errorRules.js";
import { speedPointText } from "./text.js";

/** Where the speed of a film is taken: 0.10 above base plus fog (ISO 6). */
const SPEED_DENSITY = 0.1;

/** The point from which the speed of a film is taken. */
export interface SpeedPoint {
  /** log10 of the exposure, in the unit of the curve */
  readonly logH: number;
  /** density there */
  readonly density: number;
}

/**
 * The speed point of a characteristic curve: where its density is 0.10 above base plus fog.
 *
 * @param curve - three or more steps, in any order; base plus fog is the density of the least exposed step
 * when not given
 * @returns log10 of the exposure, and the density there
 * @throws TypeError when the curve is of the wrong kind
 * @throws RangeError when a value is out of range, or the curve does not pass through that density: the text
 * says which end is missing
 *
 * @remarks ISO 6:1993, Photography, Black-and-white pictorial still camera negative film/process systems,
 * Determination of ISO speed: point M (criterion from memory of the standard). Between steps the curve is a
 * monotone cubic.
 *
 * @example
 * ```ts
 * const curve = [[-3, 0.1], [-2.5, 0.12], [-2, 0.25], [-1.5, 0.5], [-1, 0.8]].map(([logH, density]) => ({
 * logH, density })); speedPoint(curve).logH // => -2.15
 * ```
 */
export function speedPoint(curve: CharacteristicCurve): SpeedPoint {
  return speedPointOf("speedPoint/curve", readCurve("speedPoint/curve", curve));
}

/** The speed point of a curve that was read already. */
export function speedPointOf(where: string, read: ReadCurve): SpeedPoint {
  const density = read.basePlusFog + SPEED_DENSITY;
  const logH = logHAt(read, density);
  if (logH === undefined)
    refuse(where, "curve-speed-point", speedPointText, { density, ...missingEnd(read, density) }, undefined);
  return { logH, density };
}

/** Which end of a curve keeps it from a density. */
export function missingEnd({ steps }: ReadCurve, density: number): CurveEnd {
  const first = (steps[0] as DensityStep).density;
  if (first > density) return { startsAt: first };
  return { endsAt: steps.reduce((most, step) => Math.max(most, step.density), first) };
}
