/*
 * Which film and which developer the rows of a notebook are of: it takes one notebook for each.
 */
import type { DevelopmentRun } from "../learning/types.js";
import { sayer } from "../core/cautionTexts.js";
import type { Caution } from "../core/caution.js";
import { isShortText } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { pointerTo } from "../core/pointer.js";
import { isName, NAMES } from "./headings.js";
import type { Cells } from "./noteCells.js";
import { notesSentences } from "./text.js";

/** Which rows to read, by the names in them. */
export interface OnlyNamed {
  /** the film, plate or paper, as its column has it, to 200 characters */
  readonly material?: string | undefined;
  /** the developer, as its column has it, to 200 characters */
  readonly developer?: string | undefined;
}

/** So many names of a column are listed. */
const LISTED = 5;
/** So many characters of a name are. */
const SHOWN = 60;

const say = /* @__PURE__ */ sayer(notesSentences);

/** Names are one where they differ in case, in outer spaces or in how many are between words. */
const alike = (name: string): string => name.normalize("NFC").trim().replace(/\s+/g, " ").toLowerCase();

/**
 * Spells a person, a thermometer or a batch as the notebook did first, where a later row differs in case or
 * spaces alone: two spellings would be two people. `spelt` holds the first spellings.
 */
export function asSpelt(run: DevelopmentRun, spelt: Map<string, string>): DevelopmentRun {
  const spelling = (field: "by" | "thermometer" | "batch"): object => {
    const name = run[field];
    if (name === undefined) return {};
    const key = `${field} ${alike(name)}`;
    if (!spelt.has(key)) spelt.set(key, name);
    return { [field]: spelt.get(key) };
  };
  return { ...run, ...spelling("by"), ...spelling("thermometer"), ...spelling("batch") };
}

/** Checks which rows are to be read. */
export function checkedOnly(at: string, given: unknown): OnlyNamed {
  if (given === undefined) return {};
  const named = onlyFields(at, given, NAMES);
  for (const name of NAMES) if (named[name] !== undefined) isShortText(`${at}/${name}`, named[name], 200);
  return named;
}

/** Whether a row is one of those to be read: it has each of the names that are asked for. */
export function isAsked(cells: Cells, asked: OnlyNamed): boolean {
  return NAMES.every((name) => {
    const wanted = asked[name];
    return (
      wanted === undefined || cells.some(({ field, text }) => field === name && alike(text) === alike(wanted))
    );
  });
}

/** A name as it first came, and how many runs have it. */
interface Named {
  readonly value: string;
  runs: number;
}

/** One column of names: its heading as it first came, and how many runs have each name. */
interface NameColumn {
  readonly heading: string;
  readonly names: Map<string, Named>;
  named: number;
}

/** The columns of names, by their headings without case. */
export type NameColumns = Map<string, NameColumn>;

/** Counts the names of a run that was read. */
export function countNames(columns: NameColumns, cells: Cells): void {
  for (const { field, heading, text } of cells) {
    if (!isName(field)) continue;
    const key = alike(heading);
    const column: NameColumn = columns.get(key) ?? { heading, names: new Map<string, Named>(), named: 0 };
    columns.set(key, column);
    const name = alike(text);
    const found: Named = column.names.get(name) ?? { value: text.slice(0, SHOWN), runs: 0 };
    column.names.set(name, found);
    found.runs += 1;
    column.named += 1;
  }
}

/** A caution for each column with several names among the runs, or with a name in some and none in others. */
export function mixedNames(columns: NameColumns, runs: number): readonly Caution[] {
  return [...columns.values()].flatMap(({ heading, names, named }) => {
    const unnamed = Math.max(0, runs - named);
    if (names.size + Math.sign(unnamed) < 2) return [];
    const values = [...names.values()].sort((a, b) => b.runs - a.runs).slice(0, LISTED);
    return [
      say("mixed-notes", "warn", {
        path: pointerTo("", heading),
        quantity: "count",
        actual: names.size,
        data: { heading, values, unnamed },
      }),
    ];
  });
}
