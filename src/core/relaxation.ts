/*
 * Module: core. The one curve fit of the package: a quantity that nears a limit exponentially. A bath that
 * cools and a gradient that grows are both this curve. For each rate the rest is linear, so only the rate is
 * searched for (variable projection: G. H. Golub and V. Pereyra, SIAM J. Numer. Anal. 10, 1973, p. 413).
 */

/** A measured point; `weight` is 1/variance up to a common factor. */
export interface RelaxationPoint {
  readonly x: number;
  readonly y: number;
  readonly weight: number;
}

/** What is known beforehand: the limit, or the x at which y is 0, or neither. */
export interface RelaxationHold {
  readonly limit?: number | undefined;
  readonly zeroAt?: number | undefined;
}

/**
 * The best curve y = limit + step·e^(−rate·(x − first)), `first` the least x; `squares` is its weighted sum
 * of squares.
 */
export interface Relaxation {
  readonly rate: number;
  readonly limit: number;
  readonly step: number;
  readonly squares: number;
}

/**
 * Fits the curve to three points or more, two where something is held. Returns `undefined` when no rate from
 * 0.01 to 1000 over the span is best: the points then show no bend.
 */
export function fitRelaxation(
  points: readonly RelaxationPoint[],
  hold: RelaxationHold = {},
): Relaxation | undefined {
  const { limit, zeroAt } = hold;
  let first = Infinity;
  let last = -Infinity;
  for (const { x } of points) {
    first = Math.min(first, x);
    last = Math.max(last, x);
  }
  const span = last - first;
  const total = (of: (point: RelaxationPoint, i: number) => number): number =>
    points.reduce((sum, point, i) => sum + point.weight * of(point, i), 0);
  const weight = total(() => 1);
  // Everything that the curve needs at one rate: the linear part is solved, the slope of the squares comes
  // with it.
  const at = (rate: number): Relaxation & { readonly slope: number } => {
    const fall = points.map(({ x }) => Math.exp(-rate * (x - (zeroAt ?? first))));
    const shape = zeroAt === undefined ? fall : fall.map((one) => 1 - one);
    const free = limit === undefined && zeroAt === undefined;
    const meanShape = free ? total((_, i) => shape[i] as number) / weight : 0;
    const base = free ? total(({ y }) => y) / weight : (limit ?? 0);
    const lean = shape.map((one) => one - meanShape);
    const factor =
      total(({ y }, i) => (y - base) * (lean[i] as number)) / total((_, i) => (lean[i] as number) ** 2);
    const miss = points.map(({ y }, i) => y - base - factor * (lean[i] as number));
    return {
      rate,
      limit: zeroAt === undefined ? base - factor * meanShape : factor,
      step: zeroAt === undefined ? factor : -factor * Math.exp(-rate * (first - zeroAt)),
      squares: total((_, i) => (miss[i] as number) ** 2),
      // Of half the squares, by the rate; the sign of the shape's own slope differs with what is held.
      slope:
        total(({ x }, i) => (miss[i] as number) * factor * (fall[i] as number) * (x - (zeroAt ?? first))) *
        (zeroAt === undefined ? 1 : -1),
    };
  };
  const rates = Array.from({ length: 51 }, (_, i) => 10 ** (i / 10 - 2) / span);
  const squares = rates.map((rate) => at(rate).squares);
  const best = squares.indexOf(Math.min(...squares));
  if (best === 0 || best === rates.length - 1) return undefined;
  let low = rates[best - 1] as number;
  let high = rates[best + 1] as number;
  // The squares fall below the best rate and rise above it: halve down to the last figure.
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (at(middle).slope < 0) low = middle;
    else high = middle;
  }
  return at((low + high) / 2);
}

/**
 * The correlation of the estimates of two unknowns, `i` and `j`, from the columns of derivatives: minus the
 * cosine between what is left of both columns when the others have explained all they can. 0 where there is
 * but one unknown left of the two.
 */
export function correlationOf(columns: readonly (readonly number[])[], i: number, j: number): number {
  const [a, b] = [columns[i], columns[j]];
  if (a === undefined || b === undefined) return 0;
  const others = columns.filter((_, k) => k !== i && k !== j);
  const [left, right] = [leftOf(a, others), leftOf(b, others)];
  return Math.min(1, Math.max(-1, -dot(left, right) / Math.sqrt(dot(left, left) * dot(right, right))));
}

/** What is left of a column when the others, made orthogonal in turn, have explained all they can. */
function leftOf(column: readonly number[], others: readonly (readonly number[])[]): readonly number[] {
  const basis: (readonly number[])[] = [];
  const without = (rest: readonly number[]): readonly number[] =>
    basis.reduce((now, other) => {
      const share = dot(now, other) / dot(other, other);
      return now.map((value, k) => value - share * (other[k] as number));
    }, rest);
  for (const other of others) basis.push(without(other));
  return without(column);
}

/**
 * The standard error of each unknown for a unit scatter, from the columns of derivatives (each times the root
 * of the point's weight): 1 over what is left of a column when the others have explained all they can.
 */
export function standardErrors(columns: readonly (readonly number[])[]): readonly number[] {
  return columns.map((column, j) => {
    const rest = leftOf(
      column,
      columns.filter((_, i) => i !== j),
    );
    return 1 / Math.sqrt(dot(rest, rest));
  });
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);
}
