import { causes } from "../causes.js";
import { plainObject, refuse, wrongKind } from "../core/guards.js";
import { factorOf, type DilutionGiven } from "../core/cause.js";
import { prepared, type Prepared } from "./loop.js";
import { needsCounterpart } from "./terms.js";
import { pairFactor, type PairTerm } from "./pairTerms.js";
import type { Baseline, Compensation, Conditions, Knowledge } from "./types.js";

/** Columns of numbers, one row for each answer that is wanted. What is left out is as in the baseline. */
export interface ConditionColumns {
  /** °C, 0 to 100 */
  readonly temperatureC?: Float64Array | undefined;
  /** parts of water to one of stock, 0 to 100,000 */
  readonly waterParts?: Float64Array | undefined;
  /** s between agitations, 0 when continuous, to 3600 */
  readonly everyS?: Float64Array | undefined;
  /** cm² per litre, 0 to 1e6 */
  readonly usedCm2PerL?: Float64Array | undefined;
  /** h, 0 to 1e6 */
  readonly ageH?: Float64Array | undefined;
}

/** A known time and laws, checked once, for dials, heat maps and many draws. */
export interface PreparedCompensation {
  /** as `compensate` of the same baseline and knowledge */
  readonly compensate: (conditions: Conditions) => Compensation;
  /** the median time alone, s: that of `compensate` to the last bit */
  readonly timeS: (conditions: Conditions) => number;
  /** the median times of many rows, s */
  readonly times: (columns: ConditionColumns) => Float64Array;
}

/**
 * Checks a known time and laws once, to be asked under many conditions.
 *
 * @param baseline - the known time in s and the conditions it is known for
 * @param knowledge - laws known for this developer and material; generic laws are used for the rest
 * @returns three functions: the whole answer, the time alone, and the times of whole columns
 * @throws TypeError or RangeError as {@link compensate} does
 *
 * @remarks The answers are those of `compensate`. A table law is checked, sorted and curved once instead of
 * at each call.
 *
 * @example
 * ```ts
 * const known = { timeS: 510, temperatureC: 20 };
 * const ask = prepareCompensation(known, { temperature: { kind: "coefficient", ratio: 2, intervalC: 10 } });
 * ask.timeS({ temperatureC: 18 }) // => 585.8
 * ask.times({ temperatureC: Float64Array.of(20, 10) })[1] // => 1020
 * ```
 */
export function prepareCompensation(baseline: Baseline, knowledge: Knowledge = {}): PreparedCompensation {
  const ready = prepared("prepareCompensation", causes, baseline, knowledge, "compensate");
  return {
    compensate: ready.answer,
    timeS: ready.timeS,
    times: (columns) => timesOf(ready, columns),
  };
}

function timesOf({ terms, pairTerms, baselineS }: Prepared, columns: ConditionColumns): Float64Array {
  const given = Object.entries(plainObject("times/columns", columns)).filter(
    ([, column]) => column !== undefined,
  );
  let times: Float64Array | undefined;
  const sides: ((i: number) => unknown)[] = [];
  for (const [name, column] of given) {
    if (!(column instanceof Float64Array)) wrongKind(`times/columns/${name}`, "a Float64Array", column);
    times ??= new Float64Array(column.length).fill(baselineS);
    if (column.length !== times.length)
      refuse(`times/columns/${name}`, `must have ${times.length} rows, got ${column.length}`, column.length);
    const term = terms.find(({ cause }) => cause.column?.name === name);
    if (term === undefined) refuse(`times/columns/${name}`, "is no column that is read", name);
    sides[term.index] = multiplied(times, name, column, term, columns.waterParts);
  }
  if (times !== undefined) for (const term of pairTerms) multipliedByPair(times, term, sides);
  return times ?? new Float64Array(0);
}

/** Multiplies the times by the factors of a pair, where both of its columns are given. */
function multipliedByPair(
  times: Float64Array,
  term: PairTerm,
  sides: readonly (((i: number) => unknown) | undefined)[],
): void {
  if (term.places.some((place) => sides[place] === undefined)) return;
  const today: unknown[] = [];
  for (let i = 0; i < times.length; i += 1) {
    for (const place of term.places) today[place] = sides[place]?.(i);
    times[i] = (times[i] as number) * pairFactor(term, today);
  }
}

/** Multiplies the times by the factors of one column; returns the side of each row. */
function multiplied(
  times: Float64Array,
  name: string,
  column: Float64Array,
  term: Prepared["terms"][number],
  waterParts: Float64Array | undefined,
): (i: number) => unknown {
  const { cause, law, from, dilution, byStock, logAt } = term;
  const { side } = cause.column as NonNullable<typeof cause.column>;
  const at = `times/columns/${name}`;
  if (from === undefined) needsCounterpart(at, cause.field);
  const log = logAt ?? ((to: unknown): number => Math.log(factorOf(cause.effect(law, from, to))));
  const sideOf = (i: number): unknown => {
    const read: unknown = side(at, column[i] as number);
    return byStock ? cause.inBath?.(at, law, read, bathOf(waterParts, i, dilution)) : read;
  };
  let i = 0;
  try {
    for (; i < times.length; i += 1) {
      const to = sideOf(i);
      cause.within?.(at, law, to, false);
      times[i] = (times[i] as number) * Math.exp(log(to));
    }
  } catch (error) {
    // Only now is the row worth a text: it is read again under its own place.
    const to: unknown = side(`${at}/${i}`, column[i] as number);
    cause.within?.(`${at}/${i}`, law, to, false);
    throw error;
  }
  return sideOf;
}

/** The dilution of a row, where a column gives it. */
function bathOf(
  waterParts: Float64Array | undefined,
  row: number,
  known: DilutionGiven | undefined,
): DilutionGiven | undefined {
  return waterParts === undefined ? known : { stockParts: 1, waterParts: waterParts[row] as number };
}
