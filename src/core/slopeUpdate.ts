/*
 * The slope of ln(time), known beforehand, after some printed or measured times: what both fits of a law do.
 */
import { TABLE_ROW_LOG_SD, type TimeKnot } from "./table.js";

/** A row of a fit: y is ln(time), `sd` its standard deviation. */
export interface FitRow {
  readonly x: number;
  readonly y: number;
  readonly sd: number;
}

/** A slope and its standard deviation. */
export interface Slope {
  readonly slope: number;
  readonly sd: number;
}

/** What a row spreads beside the rounding to its step: clock, thermometer and the smoothing of a table. */
const BESIDE_ROUNDING = 0.008;

/** How much the doubt about a scatter of so many degrees of freedom widens it: by this over their number. */
const DOUBT = 3;

/**
 * The rows of a fit. A time rounded to a step s has the standard deviation s/(t√12), and 0.8 % beside it; one
 * whose step is unknown has 2.5 %.
 */
export function fitRows(knots: readonly TimeKnot[]): readonly FitRow[] {
  return knots.map(({ x, timeS, stepS }) => ({
    x,
    y: Math.log(timeS),
    sd: stepS === undefined ? TABLE_ROW_LOG_SD : Math.hypot(stepS / (timeS * Math.sqrt(12)), BESIDE_ROUNDING),
  }));
}

/**
 * The slope after the rows, sorted by x, from a normal prior N(m, τ²) and a flat one on the level:
 * a = 1/τ² + Σp(x − x̄)², slope = (m/τ² + Σp(x − x̄)(y − ȳ))/a, sd² = 1/a, with p = 1/sd² of a row and the
 * means weighted by p.
 *
 * `walkSd` is how far y departs from any straight line over one unit of x, as a random walk: rows near each
 * other then say less of the slope. Row by row this is R. E. Kalman's filter (J. Basic Eng. 82, 1960, p. 35),
 * which without a walk gives the formula above.
 */
export function slopeUpdate(rows: readonly FitRow[], prior: Slope, walkSd = 0): Slope {
  const [first, ...others] = rows as readonly [FitRow, ...FitRow[]];
  let at = first.x;
  let level = first.y;
  let { slope } = prior;
  // Variances of level and slope, and their covariance.
  let levels = first.sd ** 2;
  let slopes = prior.sd ** 2;
  let both = 0;
  for (const { x, y, sd } of others) {
    const gap = x - at;
    at = x;
    level += slope * gap;
    levels += gap * (2 * both + gap * slopes + walkSd ** 2);
    both += gap * slopes;
    const missed = levels + sd ** 2;
    const miss = y - level;
    level += (levels / missed) * miss;
    slope += (both / missed) * miss;
    slopes -= both ** 2 / missed;
    both -= (both * levels) / missed;
    levels -= levels ** 2 / missed;
  }
  return { slope, sd: Math.sqrt(Math.max(0, slopes)) };
}

/**
 * The same rows, their standard deviations raised where they scatter about a straight line of their own by
 * more than they state, and never lowered: own measured times can scatter more than printed ones do. Two rows
 * show no scatter, and stay as stated.
 *
 * @remarks Times √((1 + 3/ν)·Σ(miss/sd)²/ν) where that is above 1, ν = rows − 2: the scatter that is most
 * likely, and for its own doubt what Student's t of ν degrees of freedom wants at 90 %. From ν = 3 on the
 * term 1 + 3/ν is the square of its quantile over the normal one: 2.05 for three, 1.50 for five.
 */
export function withShownScatter(rows: readonly FitRow[]): readonly FitRow[] {
  const free = rows.length - 2;
  if (free === 0) return rows;
  const { meanX, meanY, tells, moved } = sums(rows);
  const slope = moved / tells;
  const squares = sum(rows.map(({ x, y, sd }) => ((y - meanY - slope * (x - meanX)) / sd) ** 2));
  const more = Math.sqrt(Math.max(1, ((1 + DOUBT / free) * squares) / free));
  return rows.map((row) => ({ ...row, sd: row.sd * more }));
}

/** The weighted sums of a straight line: its slope is `moved` over `tells`. */
function sums(rows: readonly FitRow[]): {
  readonly meanX: number;
  readonly meanY: number;
  readonly tells: number;
  readonly moved: number;
} {
  const weights = rows.map(({ sd }) => sd ** -2);
  const total = sum(weights);
  const meanX = sum(rows.map(({ x }, i) => (weights[i] as number) * x)) / total;
  const meanY = sum(rows.map(({ y }, i) => (weights[i] as number) * y)) / total;
  const pulls = rows.map(({ x }, i) => (weights[i] as number) * (x - meanX));
  return {
    meanX,
    meanY,
    tells: sum(rows.map(({ x }, i) => (pulls[i] as number) * (x - meanX))),
    moved: sum(rows.map(({ y }, i) => (pulls[i] as number) * (y - meanY))),
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
