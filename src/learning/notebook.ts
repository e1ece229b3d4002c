/*
 * A notebook of runs in one fixed order, so that whoever learned what first makes no
 * difference.
 */
import { arrayOf, isShortText, notOneOf, refuse } from "../core/guards.js";
import { kept } from "../core/kept.js";
import { onlyFields } from "../core/onlyFields.js";
import { ordered, present } from "../core/ordered.js";
import { plainData } from "../core/plainData.js";
import { isoDate, notAfter } from "../quantities/isoDate.js";
import { everything, type Learning } from "./learning.js";
import type { DevelopmentRun } from "./types.js";
import { idText } from "./text.js";
import { isOwnField } from "../core/ownFields.js";

/** The fields of a run besides its conditions, as they are written for comparing: before these, and after. */
const BEFORE = ["id", "date", "timeS"] as const;
const AFTER = ["thermometer", "by", "batch", "printed", "outcome", "note"] as const;
/** The fields that are text, and how many characters each may have. */
const TEXTS = Object.entries({
  id: 200,
  thermometer: 200,
  by: 200,
  batch: 200,
  note: 2000,
  date: 40,
} as const) as ["id" | "thermometer" | "by" | "batch" | "note" | "date", number][];

/** Every field of a run, in the order in which it is written for comparing. */
export function runFields({ causes }: Learning): readonly string[] {
  return [...BEFORE, ...causes.map(({ cause }) => cause.field), ...AFTER];
}

const FIELDS = runFields(everything);

/** What a run means that leaves a field out, for the fields that no baseline has. */
const STARTS = new Map<string, unknown>(
  everything.causes.flatMap(({ cause }) => (cause.relative === true ? [[cause.field, cause.start]] : [])),
);

/**
 * A run, the text by which it is the same as another, whatever order its fields were written in, and what an
 * error calls it.
 */
export interface Entry {
  readonly run: DevelopmentRun;
  readonly text: string;
  readonly at: string;
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
  const run = onlyFields(at, given, fields) as unknown as DevelopmentRun;
  for (const [field, most] of TEXTS)
    if (run[field] !== undefined) isShortText(`${at}/${field}`, run[field], most);
  const printed: unknown = run.printed;
  if (printed !== undefined && printed !== true) notOneOf(`${at}/printed`, [true], printed);
  if (run.date !== undefined) isoDate(`${at}/date`, run.date);
  return new WrittenRun(ownCopy(at, run), at, fields);
}

/** A frozen copy of a run with the own fields of the caller; throws where one is not plain data. */
function ownCopy(at: string, run: DevelopmentRun): DevelopmentRun {
  const copy = kept(run);
  if (copy !== run) return copy;
  for (const field of Object.keys(run)) {
    const value = (run as unknown as Readonly<Record<string, unknown>>)[field];
    const stored = isOwnField(field) ? value !== undefined : typeof value === "object";
    if (stored) plainData(`${at}/${field}`, value);
  }
  // What is no number is refused where it is read.
  return run;
}

/** An entry that writes its text once it is asked for. */
class WrittenRun implements Entry {
  readonly run: DevelopmentRun;
  readonly at: string;
  private readonly fields: readonly string[];
  private written: string | undefined;

  constructor(run: DevelopmentRun, at: string, fields: readonly string[]) {
    this.run = run;
    this.at = at;
    this.fields = fields;
  }

  get text(): string {
    const run = this.run as unknown as Readonly<Record<string, unknown>>;
    this.written ??= JSON.stringify(
      this.fields.map((field) => (run[field] === STARTS.get(field) ? undefined : ordered(run[field]))),
    );
    return this.written;
  }
}

/** Reads the form of an entry; throws an input error. */
type ReadEntry = (entry: Entry) => unknown;

/**
 * The entries. A run that comes twice under its id is kept once, with the own fields of both. Two different
 * runs of one id are refused, unless `read` refuses one of them for what is wrong with it.
 */
export function withoutTwins(entries: readonly Entry[], read?: ReadEntry): Entry[] {
  const places = new Map<string, number>();
  const found: Entry[] = [];
  for (const entry of entries) {
    const { id } = entry.run;
    const place = id === undefined ? undefined : places.get(id);
    if (place === undefined) {
      if (id !== undefined) places.set(id, found.length);
      found.push(entry);
      continue;
    }
    const twin = found[place] as Entry;
    if (twin.text !== entry.text) {
      for (const one of [twin, entry]) read?.(one);
      refuse(`${entry.at}/id`, "id-of-one-run", idText, {}, id);
    }
    found[place] = withOwnOf(twin, entry);
  }
  return found;
}

const isOwn = ([field]: readonly [string, unknown]): boolean => isOwnField(field);

/** The fields of a run that are its owner's, as text in one order. */
export function ownText({ run }: Entry): string {
  return JSON.stringify(ordered(Object.fromEntries(Object.entries(run).filter(isOwn))));
}

/** An entry with its twin's own fields added, in one order. Where two have one name, the entry's stays. */
export function withOwnOf(entry: Entry, twin: Entry): Entry {
  if (ownText(entry) === ownText(twin)) return entry;
  const fields = Object.entries(entry.run);
  const own = Object.entries(present({ ...twin.run, ...present(entry.run) })).filter(isOwn);
  own.sort(([a], [b]) => byText(a, b));
  const run = kept(Object.fromEntries([...fields.filter((one) => !isOwn(one)), ...own]));
  return { run: run as unknown as DevelopmentRun, text: entry.text, at: entry.at };
}

/** Entries in the one order, without twins. `order` sorts those that are equal. */
export function inOrder(
  entries: readonly Entry[],
  read: ReadEntry,
  order: (entry: Entry) => string | undefined = () => undefined,
): readonly Entry[] {
  return withoutTwins(entries, read).sort(
    (a, b) =>
      byText(a.run.id, b.run.id) ||
      byText(a.run.date, b.run.date) ||
      byText(a.text, b.text) ||
      byText(order(a), order(b)),
  );
}

/** The last character there is: what is missing comes last. */
const LAST = "\uffff";
/** Which of two texts comes first. */
export const byText = (a: string = LAST, b: string = LAST): number => (a < b ? -1 : Number(a > b));

/** Throws when a run is dated after today, which the caller tells: there is no clock in here. */
export function refuseFuture(where: string, today: unknown, entries: readonly Entry[]): void {
  if (today === undefined) return;
  const last = isoDate(where, today);
  for (const { run, at } of entries) if (run.date !== undefined) notAfter(`${at}/date`, run.date, last);
}
