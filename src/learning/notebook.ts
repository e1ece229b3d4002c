/*
 * Room: learning. A notebook of runs in one fixed order, so that whoever learned what first makes no difference.
 */
import { arrayOf, inRange, plainObject, wrongKind, wrongValue } from "../core/guards.js";
import type { Run } from "./types.js";

/** Every field of a run, in the order in which it is written for comparing. */
const FIELDS = ["id", "date", "timeS", "temperatureC", "dilution", "agitation", "usedCm2PerL", "ageH", "strength", "outcome", "note"] as const;
const KNOWN = new Set<string>(FIELDS);
const TEXTS = ["id", "date", "note"] as const;

/** The fields of an object in one order, without those that storage drops. */
function ordered(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).filter(([, part]) => part !== undefined);
  return entries.sort(([a], [b]) => (a < b ? -1 : 1));
}

/** A run, the text by which it is the same as another, whatever order its fields were written in, and what an error calls it. */
export interface Entry {
  readonly run: Run;
  readonly text: string;
  readonly at: string;
}

/** Entries from runs. `where` is what errors call the list. */
export function entriesOf(where: string, given: readonly unknown[]): readonly Entry[] {
  return given.map((each, i) => entryOf(`${where}[${i}]`, each));
}

/** An entry from a run, checked for what a notebook needs: known fields, an id and a date that are such. */
export function entryOf(at: string, given: unknown): Entry {
  const run = plainObject(at, given) as unknown as Run;
  for (const name in run)
    if (!KNOWN.has(name)) throw new RangeError(`${at} has a field ${JSON.stringify(name.slice(0, 60))} that is not read`);
  for (const field of TEXTS) if (run[field] !== undefined && typeof run[field] !== "string") wrongKind(`${at}.${field}`, "text", run[field]);
  if (run.date !== undefined && !isDate(run.date)) wrongValue(`${at}.date`, 'an ISO date such as "2024-05-01"', run.date);
  return { run, text: JSON.stringify(FIELDS.map((field) => ordered(run[field]))), at };
}

/** Entries in the one order, a run with an id that comes twice once; two different runs of one id are refused. */
export function inOrder(entries: readonly Entry[]): readonly Entry[] {
  const byId = new Map<string, string>();
  const kept = entries.filter(({ run, text, at }) => {
    if (run.id === undefined) return true;
    const twin = byId.get(run.id);
    if (twin !== undefined && twin !== text)
      throw new RangeError(`${at}.id must stand for one run, got ${JSON.stringify(run.id.slice(0, 60))} for two different ones`);
    byId.set(run.id, text);
    return twin === undefined;
  });
  return kept.sort((a, b) => (a.text < b.text ? -1 : Number(a.text > b.text)));
}

const DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Whether a text is a date of ISO 8601, with or without a time of day after it. */
export function isDate(text: string): boolean {
  const [, month, day] = /^\d{4}-(\d\d)-(\d\d)(?:T.*)?$/.exec(text) ?? [];
  return Number(day) >= 1 && Number(day) <= (DAYS[Number(month) - 1] ?? 0);
}

/** Throws when a run is dated after today, which the caller tells: there is no clock in here. */
export function refuseFuture(where: string, today: unknown, entries: readonly Entry[]): void {
  if (today === undefined) return;
  if (typeof today !== "string") wrongKind(where, "text", today);
  if (!isDate(today)) wrongValue(where, 'an ISO date such as "2024-05-01"', today);
  for (const { run, at } of entries)
    if (run.date !== undefined && run.date.slice(0, 10) > today.slice(0, 10)) wrongValue(`${at}.date`, `at most today, ${today}`, run.date);
}

/** A list of one entry for each of the seven numbers that are learned; storage may have lost or doubled one. */
export function sevenOf(where: string, value: unknown): readonly unknown[] {
  const items = arrayOf(where, value, 7);
  inRange(`${where}.length`, items.length, 7, 7, "");
  return items;
}

/** The strength that runs have taught, last of the seven. */
export function learnedStrength(where: string, parameters: unknown): number {
  const last = plainObject(`${where}.parameters[6]`, sevenOf(`${where}.parameters`, parameters)[6]);
  return inRange(`${where}.parameters[6].value`, last["value"], -1e3, 1e3, "");
}

/** Checks that stored knowledge is of the schema that this version reads, and has what everything else can be made from. */
export function storedKnowledge(where: string, knowledge: unknown): void {
  const { schema, prior, runs } = plainObject(where, knowledge);
  if (typeof schema !== "number") wrongKind(`${where}.schema`, "a number", schema);
  if (schema > 1) wrongValue(`${where}.schema`, "1 (a newer version of this package wrote it)", schema);
  inRange(`${where}.schema`, schema, 1, 1, "");
  plainObject(`${where}.prior`, prior);
  arrayOf(`${where}.runs`, runs, 0);
}
