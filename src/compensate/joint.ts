/*
 * The correlations of what was learned together: a base time and an energy that were both learned in the cold
 * are each poorly known, and their sum well.
 */
import type { AnyCause } from "../core/cause.js";
import { arrayOf, inRange, isBoolean, isText, longEnough, plainObject, refuse } from "../core/guards.js";
import type { Baseline } from "./types.js";
import { asLearnedText } from "./text.js";

/** The correlations of the numbers that were learned from the same runs. Made by `learn`. */
export interface JointSpread {
  /** the base time and its conditions that were learned with them */
  readonly baseline: Baseline;
  /** the names of the numbers, in the order of the rows */
  readonly parameters: readonly string[];
  /** their correlations: symmetric, 1 on the diagonal */
  readonly correlation: readonly (readonly number[])[];
  /**
   * what of each number's spread is its own, once those before it are known, 0 to 1: the diagonal of the
   * Cholesky factor. A matrix that was rounded or edited no longer agrees with it
   */
  readonly unshared: readonly number[];
  /** the offsets of thermometers, people and batches, by the names of their numbers, in ln(time) */
  readonly offsets?: readonly LearnedOffset[] | undefined;
}

/** The offset of one thermometer, person or batch. */
export interface LearnedOffset {
  /** the name of its number */
  readonly parameter: string;
  /** how much longer it makes times, in ln(time) */
  readonly value: number;
  /** its standard deviation */
  readonly sd: number;
  /** every run names it: who asks without a name means it */
  readonly usual?: boolean | undefined;
}

/** The place of a number in a correlation matrix, by its name. */
export interface Joint {
  readonly place: ReadonlyMap<string, number>;
  readonly correlation: readonly (readonly number[])[];
  readonly offsets: ReadonlyMap<string, LearnedOffset>;
}

/** Matrices that were checked. They are frozen, so that they stay as they were. */
const checked = new WeakSet();

/** Checks stored correlations: what is no matrix, or not the one that was written, is refused. */
export function checkedJoint(at: string, given: unknown): Joint {
  const {
    baseline,
    parameters,
    correlation,
    unshared,
    offsets = [],
  } = plainObject(at, given) as unknown as JointSpread;
  const place = new Map<string, number>();
  arrayOf(`${at}/parameters`, parameters, 0).forEach((name, i) => {
    isText(`${at}/parameters/${i}`, name);
    place.set(name, i);
  });
  longEnough(`${at}/correlation`, correlation, 0);
  longEnough(`${at}/unshared`, unshared, 0);
  const size = parameters.length;
  if (!checked.has(correlation)) {
    checkMatrix(`${at}/correlation`, correlation, size, unshared);
    if (Object.isFrozen(correlation) && correlation.every((row) => Object.isFrozen(row)))
      checked.add(correlation);
  }
  plainObject(`${at}/baseline`, baseline);
  return { place, correlation, offsets: checkedOffsets(`${at}/offsets`, offsets) };
}

function checkedOffsets(at: string, given: unknown): ReadonlyMap<string, LearnedOffset> {
  const offsets = arrayOf(at, given, 0).map((one, i) => {
    const { parameter, value, sd, usual } = plainObject(`${at}/${i}`, one) as unknown as LearnedOffset;
    isText(`${at}/${i}/parameter`, parameter);
    if (usual !== undefined) isBoolean(`${at}/${i}/usual`, usual);
    inRange(`${at}/${i}/value`, value, -10, 10);
    inRange(`${at}/${i}/sd`, sd, 0, 10);
    return [parameter, { parameter, value, sd, usual }] as const;
  });
  return new Map(offsets);
}

/** Refuses what `learn` did not write so: ones on the diagonal, symmetric, as independent as it says. */
function changed(at: string, value: unknown): never {
  return refuse(at, "as-learned", asLearnedText, {}, value);
}

function checkMatrix(
  at: string,
  matrix: JointSpread["correlation"],
  size: number,
  unshared: readonly number[],
): void {
  const entry = (i: number, j: number): number => {
    const row = matrix[i];
    return inRange(`${at}/${i}/${j}`, Array.isArray(row) ? row[j] : undefined, -1, 1);
  };
  for (let i = 0; i < size; i += 1) {
    if (Math.abs(entry(i, i) - 1) > 1e-9) changed(`${at}/${i}/${i}`, matrix[i]?.[i]);
    for (let j = 0; j < i; j += 1)
      if (Math.abs(entry(i, j) - entry(j, i)) > 1e-9) changed(`${at}/${i}/${j}`, matrix[i]?.[j]);
  }
  const diagonal = choleskyDiagonal(matrix, size);
  for (let i = 0; i < size; i += 1) {
    const own = diagonal[i] as number;
    if (!(Math.abs(own - (unshared[i] as number)) <= 1e-6)) changed(at, own);
  }
}

/** The diagonal of the Cholesky factor of a matrix; NaN from where it is not positive definite. */
export function choleskyDiagonal(matrix: readonly (readonly number[])[], size: number): readonly number[] {
  const root: number[][] = [];
  for (let i = 0; i < size; i += 1) {
    const row: number[] = [];
    root.push(row);
    for (let j = 0; j <= i; j += 1) {
      let rest = (matrix[i] as readonly number[])[j] as number;
      for (let k = 0; k < j; k += 1) rest -= (row[k] as number) * ((root[j] as number[])[k] as number);
      row.push(i === j ? Math.sqrt(rest) : rest / ((root[j] as number[])[j] as number));
    }
  }
  return root.map((row, i) => row[i] as number);
}

/** A share of ln(time) that a learned number explains: its slope times its standard deviation, signed. */
export type Share = readonly [parameter: string, amount: number];

/** The covariances of shares that were learned together: 2·ρ·a·b for each pair. */
export function covarianceOf({ place, correlation }: Joint, shares: readonly Share[]): number {
  let sum = 0;
  for (let a = 1; a < shares.length; a += 1) {
    const [name, amount] = shares[a] as Share;
    const row = place.get(name);
    if (row === undefined) continue;
    for (let b = 0; b < a; b += 1) {
      const [other, otherAmount] = shares[b] as Share;
      const column = place.get(other);
      if (column !== undefined)
        sum += 2 * amount * otherAmount * ((correlation[row] as readonly number[])[column] as number);
    }
  }
  return sum;
}

/**
 * Whether a baseline is the one that correlations were learned with: its conditions, and its time to
 * rounding.
 */
export function sameBaseline(
  known: Baseline,
  learned: Baseline | undefined,
  causes: readonly AnyCause[],
): boolean {
  if (learned === undefined) return false;
  if (known === learned) return true;
  const away = Math.abs(known.timeS - learned.timeS);
  if (!(away <= Math.max(1, 0.01 * learned.timeS))) return false;
  const a = known as unknown as Readonly<Record<string, unknown>>;
  const b = learned as unknown as Readonly<Record<string, unknown>>;
  return causes.every(({ field }) => JSON.stringify(a[field]) === JSON.stringify(b[field]));
}
