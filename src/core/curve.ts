/*
 * Room: core. The one curve through the rows of a published table, for temperature and for dilution alike.
 * d3-interpolate is imported here and nowhere else: it does not shake out of a bundle.
 */
import { interpolateNumber } from "d3-interpolate";

/** A point of a table, already in the coordinates in which the law is nearly straight. */
export interface Knot {
  readonly x: number;
  readonly y: number;
}

/** An interval between two knots: its width and its slope. */
interface Step {
  readonly from: Knot;
  readonly to: Knot;
  readonly h: number;
  readonly slope: number;
}

/**
 * The slope at an inner knot: the harmonic mean of the slopes on both sides, weighted by the far interval, and zero
 * where the direction changes (Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5, 1984, p. 300). It keeps the cubic
 * monotone wherever the rows are.
 */
function innerSlope(before: Step, after: Step): number {
  if (!(before.slope * after.slope > 0)) return 0;
  const weightBefore = 2 * after.h + before.h;
  const weightAfter = after.h + 2 * before.h;
  return (weightBefore + weightAfter) / (weightBefore / before.slope + weightAfter / after.slope);
}

/**
 * A curve through `knots` (two or more, `x` strictly rising): exact at every knot, monotone between knots wherever
 * they are, with a continuous slope, and straight on with the slope of the nearest interval outside them.
 *
 * Each interval is a cubic in Bézier form, evaluated by repeated linear interpolation. Every step is a weighted mean of two
 * neighbours; since a(1 − t) + a·t need not be a in doubles, the last figure is held within the two rows, so that a level
 * stretch is level and no value leaves its interval, however the rounding falls.
 */
export function monotoneCurve(knots: readonly Knot[]): (x: number) => number {
  const steps = knots.slice(1).map((knot, i): Step => {
    const from = knots[i] as Knot;
    const h = knot.x - from.x;
    return { from, to: knot, h, slope: (knot.y - from.y) / h };
  });
  const first = steps[0] as Step;
  const last = steps[steps.length - 1] as Step;
  const slopes = [first.slope, ...steps.slice(1).map((step, i) => innerSlope(steps[i] as Step, step)), last.slope];
  const mix = (a: number, b: number, t: number): number => interpolateNumber(a, b)(t);
  return (x) => {
    if (x < first.from.x) return first.from.y + first.slope * (x - first.from.x);
    if (x > last.to.x) return last.to.y + last.slope * (x - last.to.x);
    const i = steps.findIndex((step) => x <= step.to.x);
    const { from, to, h } = steps[i] as Step;
    const p1 = from.y + ((slopes[i] as number) * h) / 3;
    const p2 = to.y - ((slopes[i + 1] as number) * h) / 3;
    const t = (x - from.x) / h;
    const middle = mix(p1, p2, t);
    const y = mix(mix(mix(from.y, p1, t), middle, t), mix(middle, mix(p2, to.y, t), t), t);
    return Math.min(Math.max(from.y, to.y), Math.max(Math.min(from.y, to.y), y));
  };
}

/** A printed time at a place of its table. */
export interface TimeKnot {
  readonly x: number;
  readonly timeS: number;
}

/** Time as a monotone curve of ln(time) through the rows of a table, x rising; at a row exactly the time that is printed. */
export function timeCurve(rows: readonly TimeKnot[]): (x: number) => number {
  const curve = monotoneCurve(rows.map(({ x, timeS }) => ({ x, y: Math.log(timeS) })));
  return (x) => rows.find((row) => row.x === x)?.timeS ?? Math.exp(curve(x));
}

/** How far x lies outside the values given; 0 among them. */
export function overrun(values: readonly number[], x: number): number {
  return Math.max(0, Math.min(...values) - x, x - Math.max(...values));
}
