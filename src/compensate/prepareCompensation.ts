import { causes } from "../causes.js";
import { plainObject, wrongCount, wrongKind } from "../core/guards.js";
import { factorOf, type DilutionGiven } from "../core/cause.js";
import { kept } from "../core/kept.js";
import { prepared, type Prepared } from "./loop.js";
import { knownWithin } from "./terms.js";
import type { Baseline, Compensation, Conditions, Knowledge } from "./types.js";
import { refuseField } from "../core/onlyFields.js";

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
 * at each call. Baseline and knowledge are copied: a change of them afterwards changes no answer.
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
  const ready = prepared("prepareCompensation", causes, kept(baseline), kept(knowledge), "compensate");
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
  // ln(factor) of each row: the terms add up, and one exponential at the end makes a time of the sum.
  let logs: Float64Array | undefined;
  const sides: (Float64Array | undefined)[] = [];
  const alone: (Float64Array | undefined)[] = [];
  const paired = new Set(pairTerms.flatMap(({ places }) => places));
  for (const [name, column] of given) {
    if (!(column instanceof Float64Array)) wrongKind(`times/columns/${name}`, ["Float64Array"], column);
    logs ??= new Float64Array(column.length);
    if (column.length !== logs.length)
      wrongCount(`times/columns/${name}`, column.length, { least: logs.length, most: logs.length });
    if (!terms.some(({ cause }) => cause.column?.name === name)) {
      const values = terms.flatMap(({ cause }) => cause.column?.name ?? []);
      refuseField("times/columns", name, values);
    }
  }
  if (logs === undefined) return new Float64Array(0);
  // In the order of the causes: a dilution is read before what counts by the stock in it.
  for (const term of terms) {
    const name = term.cause.column?.name ?? "";
    const column = (columns as Readonly<Record<string, Float64Array | undefined>>)[name];
    if (column === undefined) continue;
    const { index } = term;
    if (paired.has(index)) alone[index] = new Float64Array(column.length);
    sides[index] = added(logs, name, column, term, columns.waterParts, alone[index]);
  }
  for (const { places, logAt } of pairTerms) {
    const [a, b] = [sides[places[0]], sides[places[1]]];
    const [logsA, logsB] = [alone[places[0]], alone[places[1]]];
    if (a !== undefined && b !== undefined && logsA !== undefined && logsB !== undefined)
      for (let i = 0; i < logs.length; i += 1)
        logs[i] = (logs[i] as number) + logAt(a[i], b[i], logsA[i] as number, logsB[i] as number);
  }
  for (let i = 0; i < logs.length; i += 1) logs[i] = baselineS * Math.exp(logs[i] as number);
  return logs;
}

/**
 * Adds the ln(factor) of one column to those of the rows, and keeps it in `own`; returns the side of each
 * row.
 */
function added(
  logs: Float64Array,
  name: string,
  column: Float64Array,
  term: Prepared["terms"][number],
  waterParts: Float64Array | undefined,
  own: Float64Array | undefined,
): Float64Array {
  const { cause, law, from, dilution, byStock, logAt } = term;
  const { side } = cause.column as NonNullable<typeof cause.column>;
  const at = `times/columns/${name}`;
  knownWithin(term, at);
  const sideAt = (place: string, row: number): unknown => {
    const read: unknown = side(place, column[row] as number);
    const to: unknown = byStock ? cause.inBath?.(place, law, read, bathOf(waterParts, row, dilution)) : read;
    cause.within?.(place, law, to, false);
    return to;
  };
  const log = logAt ?? ((to: unknown): number => Math.log(factorOf(cause.effect(law, from, to))));
  const sides = new Float64Array(column.length);
  let i = 0;
  try {
    for (; i < logs.length; i += 1) {
      const to = sideAt(at, i);
      sides[i] = to as number;
      const one = log(to);
      if (own !== undefined) own[i] = one;
      logs[i] = (logs[i] as number) + one;
    }
  } catch (error) {
    // Only now is the row worth a text: it is read again under its own place.
    sideAt(`${at}/${i}`, i);
    throw error;
  }
  return sides;
}

/** The dilution of a row, where a column gives it. */
function bathOf(
  waterParts: Float64Array | undefined,
  row: number,
  known: DilutionGiven | undefined,
): DilutionGiven | undefined {
  return waterParts === undefined ? known : { stockParts: 1, waterParts: waterParts[row] as number };
}
