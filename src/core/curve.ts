/*
 * The one curve through points, such as the rows of a published table. They are found by bisection, since a
 * table may have 100,000 of them.
 */

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
 * The slope at an inner knot: the harmonic mean of the slopes on both sides, weighted by the far interval,
 * and zero where the direction changes (Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5, 1984, p. 300). It
 * keeps the cubic monotone wherever the rows are.
 */
function innerSlope(before: Step, after: Step): number {
  if (!(before.slope * after.slope > 0)) return 0;
  const weightBefore = 2 * after.h + before.h;
  const weightAfter = after.h + 2 * before.h;
  return (weightBefore + weightAfter) / (weightBefore / before.slope + weightAfter / after.slope);
}

/**
 * A curve through `knots` (two or more, `x` strictly rising): exact at every knot, monotone between knots
 * wherever they are, with a continuous slope, and straight on outside them, along the chord of the outermost
 * knots that lie `reach` apart: of the nearest interval when left out.
 *
 * Each interval is a cubic, the chord and t(1 − t) times a mean of how far the slopes at its ends depart from
 * it. The last figure is held within the two rows, so that a level stretch is level and no value leaves its
 * interval, however the rounding falls.
 */
export function monotoneCurve(knots: readonly Knot[], reach = 0): (x: number) => number {
  const chords = endChords(knots, reach);
  const steps = knots.slice(1).map((knot, i): Step => {
    const from = knots[i] as Knot;
    const h = knot.x - from.x;
    return { from, to: knot, h, slope: (knot.y - from.y) / h };
  });
  const starts = steps.map((step, i) => (i === 0 ? step.slope : innerSlope(steps[i - 1] as Step, step)));
  return (x) => {
    const i = Math.min(Math.max(0, firstFrom(knots, x) - 1), steps.length - 1);
    const { from, to, h, slope } = steps[i] as Step;
    const t = (x - from.x) / h;
    if (t < 0 || t > 1) return onChord(chords[t < 0 ? 0 : 1], x);
    const bend = mix((starts[i] as number) - slope, slope - (starts[i + 1] ?? slope), t);
    const y = mix(from.y, to.y, t) + t * (1 - t) * h * bend;
    return Math.min(Math.max(from.y, to.y), Math.max(Math.min(from.y, to.y), y));
  };
}

/** A chord that starts at the first or the last knot; h is its width, below 0 at the last. */
interface Chord<K extends { readonly x: number }> {
  readonly end: K;
  readonly inner: K;
  readonly h: number;
}

/** At both ends, the chord to the nearest knot that lies `reach` away, or else to the farthest. */
function endChords<K extends { readonly x: number }>(
  knots: readonly K[],
  reach: number,
): readonly [first: Chord<K>, last: Chord<K>] {
  const [first, last] = [knots[0] as K, knots.at(-1) as K];
  const rising = knots.slice(1).find(({ x }) => x - first.x >= reach) ?? last;
  const falling =
    knots
      .slice(0, -1)
      .reverse()
      .find(({ x }) => last.x - x >= reach) ?? first;
  return [
    { end: first, inner: rising, h: rising.x - first.x },
    { end: last, inner: falling, h: falling.x - last.x },
  ];
}

const onChord = ({ end, inner, h }: Chord<Knot>, x: number): number =>
  end.y + ((inner.y - end.y) / h) * (x - end.x);

/** The widths of the chords along which a curve goes on before its first and after its last place. */
export function endWidths(
  places: readonly { readonly x: number }[],
  reach: number,
): readonly [first: number, last: number] {
  const [first, last] = endChords(places, reach);
  return [first.h, -last.h];
}

/** What lies the share t of the way from a to b: exactly a at 0 and b at 1. */
function mix(a: number, b: number, t: number): number {
  return a * (1 - t) + b * t;
}

/** The index of the first row at x or beyond it, x rising; the number of rows where none is. */
export function firstFrom(rows: readonly { readonly x: number }[], x: number): number {
  let low = 0;
  let high = rows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (x <= (rows[middle] as { readonly x: number }).x) high = middle;
    else low = middle + 1;
  }
  return low;
}
