import { refuse } from "../core/guards.js";
import { logHAt, readCurve, type CharacteristicCurve } from "./sensitometry.js";
import { missingEnd } from "./speedPoint.js";
import { curveRisesText, outerArcText } from "./text.js";

/** The two arcs about the point on base plus fog, in density and log H alike. */
const INNER = 0.2;
const OUTER = 2.2;

/** The least angle looked at: a slope of 0.1. */
const LEAST: number = Math.atan(0.1);

/**
 * The contrast index of a characteristic curve: the slope of the line from base plus fog that cuts the curve
 * 0.2 and 2.2 away from its foot.
 *
 * @param curve - three or more steps, as for {@link speedPoint}
 * @returns the slope of that line, dimensionless
 * @throws TypeError when the curve is of the wrong kind
 * @throws RangeError when a value is out of range, or the curve does not reach both arcs with a slope above
 * 0.1
 *
 * @remarks C. J. Niederpruem, C. N. Nelson and J. A. C. Yule, Contrast Index, Photographic Science and
 * Engineering 10, 1966, p. 35 (from memory, not seen in print): arcs of radius 0.2 and 2.2 about one foot on
 * the base-plus-fog line. The foot is found with the slope.
 *
 * @example
 * ```ts
 * const curve = [[-3, 0.1], [-2.5, 0.15], [-2, 0.35], [-1.5, 0.65], [-1, 0.97], [-0.5, 1.3]].map(([logH,
 * density]) => ({ logH, density })); contrastIndex(curve) // => 0.601
 * ```
 */
export function contrastIndex(curve: CharacteristicCurve): number {
  const where = "contrastIndex/curve";
  const read = readCurve(where, curve);
  const { basePlusFog } = read;
  const crossing = (radius: number, angle: number): number =>
    logHAt(read, basePlusFog + radius * Math.sin(angle)) ?? NaN;
  // How much farther apart the two crossings lie than the arcs ask for, at one angle; it grows with the
  // angle. Where the curve does not reach
  // a crossing it is NaN, which passes no comparison below.
  const excess = (angle: number): number =>
    crossing(OUTER, angle) - crossing(INNER, angle) - (OUTER - INNER) * Math.cos(angle);
  let low = LEAST;
  let high = Math.PI / 2;
  if (!(excess(low) < 0)) {
    const foot = basePlusFog + INNER * Math.sin(low);
    refuse(where, "curve-rises", curveRisesText, missingEnd(read, foot), undefined);
  }
  for (let n = 0; n < 60; n += 1) {
    const middle = (low + high) / 2;
    if (excess(middle) < 0) low = middle;
    else high = middle;
  }
  if (!(Math.abs(excess(low)) < 1e-6)) {
    // The search ends at the last density that the curve reaches, or at a level stretch on which it jumps
    // past the arc.
    const top = basePlusFog + OUTER * Math.sin(low);
    const end = logHAt(read, top + 1e-6) === undefined ? missingEnd(read, top) : {};
    refuse(where, "curve-outer-arc", outerArcText, end, undefined);
  }
  return Math.tan(low);
}
