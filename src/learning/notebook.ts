/*
 * A notebook of runs in one fixed order, so that whoever learned what first makes no
 * difference.
 */
import { arrayOf, plainObject, wrongKind, wrongValue, refuse } from "../core/guards.js";
import { show } from "../core/errors.js";
import { ordered } from "../core/ordered.js";
import { isoDate, notAfter } from "../quantities/isoDate.js";
import { everything, type Learning } from "./learning.js";
import type { Run } from "./types.js";

/** The fields of a run besides its conditions, as they are written for comparing: before these, and after. */
const BEFORE = ["id", "date", "timeS"] as const;
const AFTER = ["thermometer", "by", "printed", "outcome", "note"] as const;
const TEXTS = ["id", "thermometer", "by", "note"] as const;

/** Every field of a run, in the order in which it is written for comparing. */
export function runFields({ causes }: Learning): readonly string[] {
  return [...BEFORE, ...causes.map(({ cause }) => cause.field), ...AFTER];
}

const FIELDS = runFields(everything);

/**
 * A run, the text by which it is the same as another, whatever order its fields were written in, and what an
 * error calls it.
 */
export interface Entry {
  readonly run: Run;
  readonly text: string;
  readonly at: string;
}

/**
 * Returns an object that has no other fields than these and the caller's own, which begin with "x-": one that
 * is misspelt would be taken for one left out.
 */
export function onlyFields(at: string, given: unknown, fields: readonly string[]): Record<string, unknown> {
  const object = plainObject(at, given);
  for (const name in object)
    if (!fields.includes(name) && !name.startsWith("x-"))
      refuse(at, `has a field ${show(name)} that is not read`, name, { values: fields }, "not-one-of");
  return object;
}

/** Entries from a list of runs. `where` is what errors call the list. */
export function entriesOf(
  where: string,
  runs: unknown,
  fields: readonly string[] = FIELDS,
): readonly Entry[] {
  return arrayOf(where, runs, 0).map((run, i) => entryOf(`${where}/${i}`, run, fields));
}

/** An entry from a run, checked for what a notebook needs: known fields, an id and a date that are such. */
export function entryOf(at: string, given: unknown, fields: readonly string[] = FIELDS): Entry {
  const run = onlyFields(at, given, fields) as unknown as Run;
  for (const field of TEXTS)
    if (run[field] !== undefined && typeof run[field] !== "string")
      wrongKind(`${at}/${field}`, "text", run[field]);
  const printed: unknown = run.printed;
  if (printed !== undefined && printed !== true) wrongKind(`${at}/printed`, "true or left out", printed);
  if (run.date !== undefined) isoDate(`${at}/date`, run.date);
  const written = run as unknown as Readonly<Record<string, unknown>>;
  return { run, text: JSON.stringify(fields.map((field) => ordered(written[field]))), at };
}

/**
 * Entries in the one order, a run with an id that comes twice once; two different runs of one id are refused.
 */
export function inOrder(entries: readonly Entry[]): readonly Entry[] {
  const byId = new Map<string, string>();
  const kept = entries.filter(({ run, text, at }) => {
    if (run.id === undefined) return true;
    const twin = byId.get(run.id);
    if (twin !== undefined && twin !== text) wrongValue(`${at}/id`, "the id of one run only", run.id);
    byId.set(run.id, text);
    return twin === undefined;
  });
  return kept.sort((a, b) => (a.text < b.text ? -1 : Number(a.text > b.text)));
}

/** Throws when a run is dated after today, which the caller tells: there is no clock in here. */
export function refuseFuture(where: string, today: unknown, entries: readonly Entry[]): void {
  if (today === undefined) return;
  const last = isoDate(where, today);
  for (const { run, at } of entries) if (run.date !== undefined) notAfter(`${at}/date`, run.date, last);
}
