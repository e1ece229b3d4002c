import type { Row, Slope, Unknown } from "./row.js";

/** A random walk along some axis, as numbers to be learned: one for each gap between two knots. */
export interface Walk {
  readonly unknowns: readonly Unknown[];
  /** the gaps, in the order of the unknowns */
  readonly gaps: readonly (readonly [low: number, high: number])[];
  /** what ln(time) does from one place to another */
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
 * way that covers c of the gap has c/w of its rise, and the variance of a bridge beside it, sd²·c(w − c)/w.
 * Beyond the knots the variance grows by sd² a unit.
 */
export function walkOver(name: string, knots: readonly number[], sd: number): Walk {
  const gaps = knots.slice(1).map((high, i) => [knots[i] as number, high] as const);
  const names = gaps.map(([low, high]) => `${name} ${low} to ${high}`);
  const [first = 0] = knots;
  const last = knots.at(-1) ?? first;
  return {
    gaps,
    unknowns: gaps.map(([low, high], i) => ({
      parameter: names[i] as string,
      sd: sd * Math.sqrt(high - low),
    })),
    row(from, to) {
      const [low, high, sign] = from < to ? [from, to, 1] : [to, from, -1];
      const slopes: Slope[] = [];
      let free = Math.max(0, Math.min(high, first) - low) + Math.max(0, high - Math.max(low, last));
      gaps.forEach(([start, end], i) => {
        const covered = Math.min(high, end) - Math.max(low, start);
        if (covered <= 0) return;
        const width = end - start;
        slopes.push({ parameter: names[i] as string, slope: (sign * covered) / width });
        free += (covered * (width - covered)) / width;
      });
      return { slopes, beside: sd * sd * free };
    },
  };
}

/**
 * Knots for a walk: the pin, the two ends, and between them no two places nearer than `spacing`, so that many
 * different values do not make as many numbers. A place farther out can take the knot of one close by.
 */
export function walkKnots(pin: number, places: readonly number[], spacing: number): readonly number[] {
  const outward = (far: (place: number) => number): number[] => {
    const distances = places.map(far).filter((distance) => distance > 0);
    const end = distances.reduce((most, distance) => Math.max(most, distance), 0);
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
