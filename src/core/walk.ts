import type { Row, Slope, Unknown } from "./row.js";

/** A random walk along some axis, as numbers to be learned: one for each gap between two knots. */
export interface Walk {
  readonly unknowns: readonly Unknown[];
  /** what ln(time) does from one place to another; `from` is a knot, or both are */
  row(from: number, to: number): Row;
}

/**
 * A random walk whose values are learned at knots.
 *
 * @param name - begins the name of each number
 * @param knots - places along the axis, rising, one at least
 * @param sd - standard deviation over one unit of the axis
 *
 * @remarks The rise over a gap of width w is normal with the variance sd²·w, and independent of all others. A
 * place x between the knots a and b has its share of the rise, and the variance of a bridge beside it,
 * sd²·(x − a)(b − x)/(b − a). Beyond the last knot the variance grows by sd² a unit.
 */
export function walkOver(name: string, knots: readonly number[], sd: number): Walk {
  const gaps = knots.slice(1).map((high, i) => {
    const low = knots[i] as number;
    return { parameter: `${name} ${low} to ${high}`, low, high, width: high - low };
  });
  const [first = 0] = knots;
  const last = knots.at(-1) ?? first;
  return {
    unknowns: gaps.map((gap) => ({ parameter: gap.parameter, sd: sd * Math.sqrt(gap.width) })),
    row(from, to) {
      const [low, high, sign] = from < to ? [from, to, 1] : [to, from, -1];
      const slopes: Slope[] = [];
      let free = Math.max(0, first - to, to - last);
      for (const gap of gaps) {
        const covered = Math.min(high, gap.high) - Math.max(low, gap.low);
        if (covered > 0) slopes.push({ parameter: gap.parameter, slope: (sign * covered) / gap.width });
        if (to > gap.low && to < gap.high) free = ((to - gap.low) * (gap.high - to)) / gap.width;
      }
      return { slopes, beside: sd * sd * free };
    },
  };
}

/**
 * Knots for a walk: the pin, the two ends, and between them no two places nearer than `spacing`, so that many
 * different values do not make as many numbers.
 */
export function walkKnots(pin: number, places: readonly number[], spacing: number): readonly number[] {
  const outward = (far: (place: number) => number): number[] => {
    const distances = places.map(far).filter((distance) => distance > 0);
    const end = Math.max(0, ...distances);
    let last = 0;
    return distances
      .sort((a, b) => a - b)
      .filter((distance) => {
        const kept = distance - last >= spacing || (distance === end && last < end);
        if (kept) last = distance;
        return kept;
      });
  };
  const below = outward((place) => pin - place).map((distance) => pin - distance);
  return [...below.reverse(), pin, ...outward((place) => place - pin).map((distance) => pin + distance)];
}
