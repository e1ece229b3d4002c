/*
 * What the published tables of this repository say of the priors: maximum likelihood over tables, each with its
 * own slope, a scatter of slopes between tables and, for dilution, a departure from a power.
 */
import { agitationRatios } from "../reference/agitation.js";
import { dilutionTables, temperatureTables, waterOf, type Table } from "./tables.js";

const R = 8.314462618e-3;

/** A row in the coordinates in which a law is straight, and how well its time is known. */
interface Point {
  readonly x: number;
  readonly y: number;
  readonly sd: number;
}

/** A table as points. */
export interface Series {
  readonly id: string;
  readonly read: boolean;
  /** class of the developer, or how the table was made */
  readonly group: string;
  readonly points: readonly Point[];
}

function pointsOf<At>({ rows, halfStepS }: Table<At>, x: (at: At) => number): readonly Point[] {
  return rows
    .map(({ at, timeS }) => ({
      x: x(at),
      y: Math.log(timeS),
      // Evenly within a step, and 0.8 % beside it.
      sd: Math.hypot(halfStepS / Math.sqrt(3) / timeS, 0.008),
    }))
    .sort((a, b) => a.x - b.x);
}

/** Tables of temperature over 1/RT, so that a slope is an activation energy in kJ/mol. */
export const temperatures: readonly Series[] = temperatureTables.map((table) => ({
  id: table.id,
  read: table.provenance === "read",
  group:
    table.provenance !== "read"
      ? "from memory, small tank"
      : table.id.startsWith("rotary") || table.id.startsWith("DIL-017")
        ? "read, rotary tube"
        : "read, others",
  points: pointsOf(table, (at) => 1 / (R * (at + 273.15))),
}));

/** A developer as stock and at 1+1: how much lower the activation energy of the diluted bath is, in kJ/mol. */
export interface StockAndHalfPair {
  readonly name: string;
  readonly read: boolean;
  readonly changeKJ: number;
  /** the standard error of that change, from the rounding of the rows */
  readonly sdKJ: number;
}

/** Every pair of tables of temperature that was published for stock and for 1+1. */
export const stockAndHalfPairs: readonly StockAndHalfPair[] = (
  [
    ["ascorbate, film of size 135", "rotary-ascorbate-stock-film-100", "rotary-ascorbate-half-film-100"],
    ["ascorbate, film of size 120", "DIL-017-stock", "DIL-017-1+1"],
    ["borax", "memory-tank-borax", "memory-tank-borax-half"],
  ] as const
).map(([name, ...ids]) => {
  const [stock, half] = ids.map((id) => temperatures.find((one) => one.id === id)!) as [Series, Series];
  const [of, to] = [ownSlope(stock), ownSlope(half)];
  return {
    name,
    read: stock.read && half.read,
    changeKJ: to.slope - of.slope,
    sdKJ: Math.hypot(of.sd, to.sd),
  };
});

/** The walk over one unit of 1/RT that is so much over one °C, at 20 °C. */
export const overInverse = (perDegree: number): number => perDegree * Math.sqrt(R) * 293.15;

/** Tables of dilution over −ln(concentration), so that a slope is an exponent. */
export const dilutions: readonly Series[] = dilutionTables.map((table) => ({
  id: table.id,
  read: table.provenance === "read",
  group: table.family,
  points: pointsOf(table, (at) => Math.log1p(waterOf(at))),
}));

/**
 * ln of the likelihood of a table's rows: slope from N(mean, between²), level free, a random walk beside the line
 * with `walk` over one unit of x. Row by row, as a filter.
 */
function logLikelihood({ points }: Series, mean: number, between: number, walk: number): number {
  const [first, ...others] = points as readonly [Point, ...Point[]];
  let [at, level, slope] = [first.x, first.y, mean];
  let [levels, slopes, both] = [first.sd ** 2, between ** 2, 0];
  let sum = 0;
  for (const { x, y, sd } of others) {
    const gap = x - at;
    at = x;
    level += slope * gap;
    levels += gap * (2 * both + gap * slopes + walk ** 2);
    both += gap * slopes;
    const variance = levels + sd ** 2;
    const miss = y - level;
    sum -= (Math.log(variance) + miss ** 2 / variance) / 2;
    level += (levels / variance) * miss;
    slope += (both / variance) * miss;
    slopes -= both ** 2 / variance;
    both -= (both * levels) / variance;
    levels -= levels ** 2 / variance;
  }
  return sum;
}

/** The most likely mean and scatter between tables. */
export interface Found {
  readonly tables: number;
  readonly mean: number;
  readonly between: number;
  readonly logLikelihood: number;
}

/** Searches a grid: means up to `most`, in a hundred steps, scatters up to half of it. */
export function mostLikely(series: readonly Series[], walk: number, most: number): Found {
  let best: Found = { tables: series.length, mean: 0, between: 0, logLikelihood: -Infinity };
  for (let i = 1; i <= 100; i += 1)
    for (let j = 0; j <= 50; j += 1) {
      const [mean, between] = [(most * i) / 100, (most * j) / 100];
      const sum = series.reduce((all, one) => all + logLikelihood(one, mean, between, walk), 0);
      if (sum > best.logLikelihood) best = { tables: series.length, mean, between, logLikelihood: sum };
    }
  return best;
}

/** The slope of one table by its rows alone, and its standard error. */
export function ownSlope({ points }: Series): { readonly slope: number; readonly sd: number } {
  const weights = points.map(({ sd }) => sd ** -2);
  const total = weights.reduce((sum, one) => sum + one, 0);
  const mean = (of: (point: Point) => number): number =>
    points.reduce((sum, point, i) => sum + weights[i]! * of(point), 0) / total;
  const [meanX, meanY] = [mean(({ x }) => x), mean(({ y }) => y)];
  const tells = points.reduce((sum, { x }, i) => sum + weights[i]! * (x - meanX) ** 2, 0);
  const moved = points.reduce((sum, { x, y }, i) => sum + weights[i]! * (x - meanX) * (y - meanY), 0);
  return { slope: moved / tells, sd: tells ** -0.5 };
}

/** The root mean square of values about one. */
export const aboutOne = (values: readonly number[], centre: number): number =>
  Math.sqrt(values.reduce((sum, one) => sum + (one - centre) ** 2, 0) / values.length);

/** Mean and standard deviation of values. */
export function moments(values: readonly number[]): { readonly mean: number; readonly sd: number } {
  const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
  const squares = values.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return { mean, sd: values.length > 1 ? Math.sqrt(squares / (values.length - 1)) : NaN };
}

/**
 * Each published ratio of agitation as a scale along the curve of the generic law; the mean of a record's ratios,
 * the geometric middle of a range.
 */
export function agitationScales(
  loss: number,
  staleTimeS: number,
): readonly { readonly id: string; readonly scale: number }[] {
  const curve = (agitation: (typeof agitationRatios)[number]["rows"][number]["from"]): number => {
    if (typeof agitation !== "object") return 0;
    const x = agitation.everyS / staleTimeS;
    return -Math.log(1 - loss * (1 + Math.expm1(-x) / x)) / loss;
  };
  return agitationRatios.map(({ id, rows }) => ({
    id,
    scale: moments(
      rows.map(({ from, to, low, high }) => Math.log(low * high) / 2 / (curve(to) - curve(from))),
    ).mean,
  }));
}
