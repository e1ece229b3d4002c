/*
 * The one curve through the rows of a published table, for temperature and for dilution alike. Rows are found
 * by bisection, since a table may have 100,000 of them.
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
  const falling = [...knots].reverse().find(({ x }) => x < last.x && last.x - x >= reach) ?? first;
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

/** A printed time at a place of its table. */
export interface TimeKnot {
  readonly x: number;
  readonly timeS: number;
  /** the step to which the time was rounded, s, where it is known */
  readonly stepS?: number;
}

/**
 * Time as a monotone curve of ln(time) through the rows of a table, x rising; at a row exactly the time that
 * is printed. Outside the rows it goes on as {@link monotoneCurve} does.
 */
export function timeCurve(rows: readonly TimeKnot[], reach = 0): (x: number) => number {
  const curve = monotoneCurve(
    rows.map(({ x, timeS }) => ({ x, y: Math.log(timeS) })),
    reach,
  );
  return (x) => {
    const row = rows[firstFrom(rows, x)];
    return row?.x === x ? row.timeS : Math.exp(curve(x));
  };
}

/**
 * How far x lies beyond the rows of a table, x rising: below 0 before the first, above 0 after the last, 0
 * among them.
 */
export function overrun(rows: readonly TimeKnot[], x: number): number {
  return Math.min(0, x - (rows[0] as TimeKnot).x) + Math.max(0, x - (rows[rows.length - 1] as TimeKnot).x);
}

/**
 * The standard deviation in ln(time) of each row of a maker's table. Makers round to a quarter or half
 * minute: half a step on six minutes is 2 to 4 %, and two rows enter a ratio.
 */
export const TABLE_ROW_LOG_SD = 0.025;

/** What is unknown of a table beside the rounding of its rows. */
export interface TableUnread {
  /** standard deviation of ln(ratio) for each unit of x between a place and its nearest row */
  readonly perX: number;
  /** the same of a random walk, by the root of that way */
  readonly perRootX: number;
  /** how far apart, in x, the rows are along whose chord the table goes on outside them */
  readonly reach: number;
}

/**
 * The standard deviation of ln(ratio) between two places of a table, its rows with x rising: their rounding,
 * and what is unread. The rounding acts in full from row to row and in proportion over a step shorter than
 * that between the two nearest rows; over what lies between two rows it goes on at the same rate, and outside
 * them at that of the chord along which the table goes on. Prepared once a table: the rows are walked here,
 * not at each place.
 */
export function tableSpread(
  rows: readonly TimeKnot[],
  { perX, perRootX, reach }: TableUnread,
): (a: number, b: number) => number {
  const nearest = rows
    .slice(1)
    .reduce((least, { x }, i) => Math.min(least, x - (rows[i] as TimeKnot).x), Infinity);
  const [before, after] = endWidths(rows, reach);
  const [first, last] = [(rows[0] as TimeKnot).x, (rows.at(-1) as TimeKnot).x];
  const distance = (row: TimeKnot | undefined, x: number): number => (row ? Math.abs(x - row.x) : Infinity);
  const toRow = (x: number): number => {
    const i = firstFrom(rows, x);
    return Math.min(distance(rows[i - 1], x), distance(rows[i], x));
  };
  /** the way before the rows and behind them, each against the width of its chord */
  const outside = (low: number, high: number): readonly [way: number, chords: number] => {
    const early = Math.max(0, Math.min(high, first) - low);
    const late = Math.max(0, high - Math.max(low, last));
    return [early + late, early / before + late / after];
  };
  return (a, b) => {
    const step = Math.abs(a - b);
    const way = toRow(a) + toRow(b);
    const [out, chords] = outside(Math.min(a, b), Math.max(a, b));
    const among = Math.min(step - out, nearest + (way - out)) / nearest;
    return Math.hypot(
      TABLE_ROW_LOG_SD * Math.SQRT2 * (Math.max(0, among) + chords),
      perX * Math.min(step, way),
      perRootX * Math.sqrt(Math.min(step, way)),
    );
  };
}
