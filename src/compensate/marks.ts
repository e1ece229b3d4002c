/*
 * With which thermometer, and by whom: marks of a run or a question that are no conditions of the bath.
 */
import { isText } from "../core/guards.js";
import type { Joint, LearnedOffset } from "./joint.js";
import type { Factor } from "./types.js";

/** A mark, and how far one is off in ln(time) of which nothing is known: 0 ± `logSd`. */
export interface Mark {
  readonly name: "thermometer" | "by";
  readonly field: "thermometer" | "by";
  readonly logSd: number;
}

/** Every thermometer reads ln(time) off by 0 ± 0.06, about 0.8 °C (an assumption of this package). */
export const THERMOMETER: Mark = { name: "thermometer", field: "thermometer", logSd: 0.06 };

/** Everyone calls another negative right, 0 ± 0.15 in ln(time) (an assumption of this package). */
export const PERSON: Mark = { name: "by", field: "by", logSd: 0.15 };

/** The marks, in the order of their rows. */
export const marks: readonly Mark[] = [THERMOMETER, PERSON];

/** The name of the number that is the offset of one thermometer or person. */
export function offsetName(field: Mark["field"], name: string): string {
  return `${field} ${name}`;
}

/** Reads a mark: text, or nothing. */
export function readMark(at: string, given: unknown): string | undefined {
  if (given !== undefined) isText(at, given);
  return given;
}

/** The row of a mark that a question names, and the name of its number where it was learned. */
export interface MarkRow {
  readonly factor: Factor;
  readonly parameter?: string;
}

const NONE: readonly MarkRow[] = [];

/** The offset that every run names, of a thermometer or a person. */
function usualOffset(field: Mark["field"], joint: Joint | undefined): LearnedOffset | undefined {
  for (const one of joint?.offsets.values() ?? [])
    if (one.usual === true && one.parameter.startsWith(offsetName(field, ""))) return one;
  return undefined;
}

/** A row for each thermometer and person that today's conditions name, or all runs where they name none. */
export function markRows(at: string, conditions: object, joint: Joint | undefined): readonly MarkRow[] {
  const given = conditions as Readonly<Record<string, unknown>>;
  const silent = marks.every(({ field }) => given[field] === undefined);
  if (silent && (joint === undefined || joint.offsets.size === 0)) return NONE;
  return marks.flatMap(({ field, logSd }): readonly MarkRow[] => {
    const name = readMark(`${at}/${field}`, given[field]);
    const learned =
      name === undefined ? usualOffset(field, joint) : joint?.offsets.get(offsetName(field, name));
    if (learned === undefined && name === undefined) return [];
    if (learned === undefined)
      return [{ factor: { cause: field, value: 1, logSd, basis: "default", sources: [] } }];
    const { parameter, value, sd } = learned;
    const factor = {
      cause: field,
      value: Math.exp(value),
      logSd: sd,
      basis: "own-runs",
      sources: [],
    } as const;
    return [{ factor, parameter }];
  });
}
