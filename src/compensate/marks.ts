/*
 * With which thermometer, by whom, and out of which batch: marks of a run or a question that are no
 * conditions of the bath.
 */
import { inRange, isText } from "../core/guards.js";
import type { Joint, LearnedOffset } from "./joint.js";
import type { Factor, Knowledge } from "./types.js";

/** A mark, and how far one is off in ln(time) of which nothing is known: 0 ± `logSd`. */
export interface Mark {
  readonly name: "thermometer" | "by" | "batch";
  readonly field: "thermometer" | "by" | "batch";
  readonly logSd: number;
}

/** Every thermometer reads ln(time) off by 0 ± 0.06, about 0.8 °C (an assumption of this package). */
export const THERMOMETER: Mark = { name: "thermometer", field: "thermometer", logSd: 0.06 };

/** Everyone calls another negative right, 0 ± 0.15 in ln(time) (an assumption of this package). */
export const PERSON: Mark = { name: "by", field: "by", logSd: 0.15 };

/** A bottle or a mixing of one developer is off by 0 ± 0.08 in ln(time) (an assumption of this package). */
export const BATCH: Mark = { name: "batch", field: "batch", logSd: 0.08 };

/** The marks, in the order of their rows. */
export const marks: readonly Mark[] = [THERMOMETER, PERSON, BATCH];

/** The name of the number that is the offset of one thermometer, person or batch. */
export function offsetName(field: Mark["field"], name: string): string {
  return `${field} ${name}`;
}

/** Reads a mark: text, or nothing. */
export function readMark(at: string, given: unknown): string | undefined {
  if (given !== undefined) isText(at, given);
  return given;
}

/** By how much batches differ in ln(time), where the laws say it. */
export function readBatchLogSd(at: string, { batchLogSd }: Knowledge): number | undefined {
  return batchLogSd === undefined ? undefined : inRange(at, batchLogSd, 0, 3, undefined, "/batchLogSd");
}

/**
 * How far today's batch is off the known time, where the laws say how batches differ. A known time that was
 * not learned was found in one batch, which is off as well.
 */
function readFurtherLogSd(at: string, knowledge: Knowledge): number | undefined {
  const one = readBatchLogSd(at, knowledge);
  return one === undefined || knowledge.joint !== undefined ? one : Math.SQRT2 * one;
}

/** How far a batch is off of which nothing is known; a brew is never twice the same. */
export const logSdOfMark = ({ field, logSd }: Mark, batchLogSd: number | undefined): number =>
  field === "batch" ? (batchLogSd ?? logSd) : logSd;

/** The row of a mark, and the name of its number where it was learned. */
export interface MarkRow {
  readonly factor: Factor;
  readonly parameter?: string;
}

/** What rows multiply a time by. */
export const productOf = (rows: readonly MarkRow[]): number =>
  rows.reduce((all, { factor }) => all * factor.value, 1);

/** Whether a field is a mark. */
export const isMark = (field: string): boolean => marks.some((mark) => mark.field === field);

/** How many marks conditions name. */
export const marksNamed = (conditions: object): number =>
  marks.filter(({ field }) => (conditions as Readonly<Record<string, unknown>>)[field] !== undefined).length;

const NONE: readonly MarkRow[] = [];

/** Whether a number is the offset of a mark of this field. */
const isOf = (field: Mark["field"], { parameter }: LearnedOffset): boolean =>
  parameter.startsWith(offsetName(field, ""));

/** The offset that every run names, of a thermometer, a person or a batch. */
function usualOffset(field: Mark["field"], joint: Joint | undefined): LearnedOffset | undefined {
  for (const one of joint?.offsets.values() ?? []) if (one.usual === true && isOf(field, one)) return one;
  return undefined;
}

/**
 * Makes the function that gives a row for each thermometer, person and batch that today's conditions name,
 * or all runs where they name none. A batch that nobody names is a further one. A strength says how strong
 * today's batch is.
 *
 * @param asked - the place of the conditions
 * @param at - the place of the knowledge
 */
export function marksReader(
  asked: string,
  at: string,
  knowledge: Knowledge,
  joint: Joint | undefined,
): (conditions: object) => readonly MarkRow[] {
  const batchLogSd = readFurtherLogSd(at, knowledge);
  const isFurther =
    batchLogSd !== undefined || [...(joint?.offsets.values() ?? [])].some((one) => isOf("batch", one));
  return (conditions) => {
    const given = conditions as Readonly<Record<string, unknown>>;
    const silent = marks.every(({ field }) => given[field] === undefined);
    if (silent && !isFurther && (joint === undefined || joint.offsets.size === 0)) return NONE;
    return marks.flatMap((mark): readonly MarkRow[] => {
      const { field } = mark;
      const isBatch = field === "batch";
      const name = readMark(`${asked}/${field}`, given[field]);
      if (isBatch && given["strength"] !== undefined) return NONE;
      const learned =
        name === undefined ? usualOffset(field, joint) : joint?.offsets.get(offsetName(field, name));
      if (learned !== undefined) {
        const { parameter, value, sd } = learned;
        const own = { value: Math.exp(value), logSd: sd, basis: "own-runs", sources: [] } as const;
        return [{ factor: { cause: field, ...own }, parameter }];
      }
      if (name === undefined && !(isBatch && isFurther)) return NONE;
      // What the laws say of batches was given with them.
      const basis = isBatch && batchLogSd !== undefined ? "given" : "default";
      return [
        { factor: { cause: field, value: 1, logSd: logSdOfMark(mark, batchLogSd), basis, sources: [] } },
      ];
    });
  };
}
