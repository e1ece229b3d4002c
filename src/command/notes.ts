/*
 * A table of notes beside a recipe or a day: what its runs teach.
 */
import {
  describeCaution,
  describeCautions,
  readRunNotes,
  tableRecords,
  temperatureCautions,
  type CheckProblem,
  type OnlyNamed,
  type RunNotes,
} from "../index.js";
import { fault, isFault, problemText } from "./fault.js";
import { textOf } from "./fileText.js";
import type { Io } from "./io.js";
import type { Words } from "./words.js";

/** Notes that were read, and where they are. */
export interface Notes extends RunNotes {
  readonly file: string;
}

/** Reads the notes of a file; what is wrong with the file itself is told under its name. */
export function readNotes(file: string, only: OnlyNamed, io: Io): Notes {
  return inNotes(file, () => {
    const records = tableRecords(textOf(file, io));
    const notes = readRunNotes(records, { only });
    // Which rows are asked for does not change what the columns are.
    if (notes.runs.length === 0 && isNoTable(readRunNotes(records))) throw fault(NO_TABLE, { file });
    return { file, ...notes };
  });
}

const NO_TABLE = {
  en: "no table with a time, a temperature and an outcome was found",
  de: "keine Tabelle mit Zeit, Temperatur und Ergebnis gefunden",
};

/** Whether no row says any of what a run needs: the headings are others, or it is no table. */
function isNoTable({ rejected }: RunNotes): boolean {
  return (
    rejected.length > 0 &&
    rejected.every(({ problems }) =>
      ["/time", "/temperature", "/outcome"].every((column) =>
        problems.some(({ code, path }) => code === "missing" && path === column),
      ),
    )
  );
}

/** Makes a call, and tells its fault under the name of the notes. */
export function inNotes<T>(file: string, call: () => T): T {
  try {
    return call();
  } catch (error) {
    if (!isFault(error)) throw error;
    throw fault({ en: error.message, de: error.german }, { ...error, file });
  }
}

/** A row, and what is wrong with it. */
interface SaidOfRow {
  readonly row: number;
  readonly wrong: string;
}

/** The runs that teach nothing, since they failed or may be in °F: learning says only how many. */
function teachNothing({ runs, rows }: Notes, words: Words): readonly SaidOfRow[] {
  return runs.flatMap(({ temperatureC, outcome }, i) => {
    const row = rows[i] as number;
    if (outcome.kind === "failed" || outcome.kind === "fogged")
      return [{ row, wrong: words.spoilt[outcome.kind] }];
    return temperatureCautions(temperatureC)
      .filter(({ code }) => code === "maybe-fahrenheit")
      .map((caution) => ({ row, wrong: describeCaution(caution, words.texts?.cautions, words) }));
  });
}

/** The heading that a JSON Pointer leads to. */
const headingOf = (path: string): string => path.slice(1).replaceAll("~1", "/").replaceAll("~0", "~");

/** What was read and what was not, a line each. */
export function notesLines(notes: Notes, words: Words): readonly string[] {
  const { file, runs, rejected, unread, leftAside, cautions } = notes;
  const columns = unread.filter(({ whole }) => whole).map(({ heading }) => JSON.stringify(heading));
  // A column that is not there has no heading to name it by.
  const place = ({ code, path }: CheckProblem): string =>
    code === "missing" ? words.column(path.slice(1)) : headingOf(path);
  const said = (problem: CheckProblem): string =>
    `${place(problem)}: ${problemText(problem, words)}`.replace(/^: /, "");
  const cells = unread
    .filter(({ whole }) => !whole)
    .map(({ row, problem }) => ({ row, wrong: said(problem) }));
  const aside = runs.length + rejected.length === 0 ? words.noneAsked : words.leftAside;
  const rows = (of: readonly SaidOfRow[]): readonly string[] => {
    const alike = new Map<string, number[]>();
    for (const { row, wrong } of of) {
      const held = alike.get(wrong);
      if (held === undefined) alike.set(wrong, [row]);
      else held.push(row);
    }
    return [...alike].map(([wrong, all]) => words.rows(all, wrong));
  };
  const wrongRows = rejected.map(({ row, problems }) => ({ row, wrong: problems.map(said).join("; ") }));
  const unlearned = teachNothing(notes, words);
  return [
    words.notes(file, runs.length - unlearned.length),
    ...[
      // The sentence names the column; its path would say so again.
      ...describeCautions(
        cautions.map((one) => ({ ...one, path: "" })),
        words.texts?.cautions,
        words,
      ),
      ...(leftAside.length === 0 ? [] : [aside(leftAside.length)]),
      ...(rejected.length === 0 ? [] : [words.notRead, ...rows(wrongRows)]),
      ...(unlearned.length === 0 ? [] : [words.notLearned, ...rows(unlearned)]),
      ...(cells.length === 0 ? [] : [words.cellsNotRead, ...rows(cells)]),
      ...(columns.length === 0 ? [] : [words.columnsNotRead(columns.join(", "))]),
    ].map((line) => `  ${line}`),
  ];
}
