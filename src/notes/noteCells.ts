/*
 * Module: notes. The cells of a row of notes as people fill them: and what a cell says.
 */
import { ambiguous, plainObject, refuse, type TextForm, unreadable } from "../core/guards.js";
import { isInputError, problemOf, show, type CheckProblem } from "../core/errors.js";
import { pointerTo } from "../core/pointer.js";
import { isRough, withoutRoughly, withPoint, withUnit } from "../quantities/numberText.js";
import { TIMES } from "../quantities/timeText.js";
import { dayText } from "./dateCell.js";
import { columnOf, type Column, type Reader, type Readers } from "./headings.js";
import { oneColumnText } from "./text.js";

const HEADINGS: TextForm = { format: "column with its unit", examples: ["Time (s)", "Temp °F"] };

/** A cell with something in it. */
export interface Cell extends Column {
  readonly heading: string;
  readonly text: string;
  /** its place in the row, from 1 */
  readonly column: number;
  /** the cell held a number: its point parts no thousands */
  readonly exact?: boolean;
}

/** The cells of a row. What is read is taken out. */
export type Cells = Cell[];

/**
 * The cells of a record that are not blank; `columns` keeps what was read of the headings. A heading of a
 * main column whose bracket holds no unit of it is a problem; of any other column it is one that is not
 * known.
 */
export function cellsOf(
  record: unknown,
  readers: Readers,
  columns: Map<string, Column>,
  problems: CheckProblem[],
): Cells {
  const cells: Cells = [];
  for (const [place, [heading, cell]] of Object.entries(plainObject("/row", record)).entries()) {
    const text = textOf(cell);
    if (text === "") continue;
    const column = columns.get(heading) ?? columnOf(heading, readers);
    columns.set(heading, column);
    const { field, unit, refused = false } = column;
    if (refused) told(problems, heading, "", () => unreadable("/heading", HEADINGS, heading));
    else cells.push({ field, unit, heading, text, column: place + 1, exact: typeof cell === "number" });
  }
  return cells;
}

/** A cell as text; an empty one, also as a data frame or a spreadsheet leaves it, as no text. */
export function textOf(cell: unknown): string {
  if (cell === undefined || cell === null || Number.isNaN(cell)) return "";
  if (typeof cell === "string") return cell.trim();
  // A quotient by nothing says as much in words; where a figure belongs it is refused.
  if (cell === Infinity || cell === -Infinity) return "no number";
  return isDate(cell) ? dayText(cell) : show(cell);
}

const isDate = (cell: unknown): cell is Date => Object.prototype.toString.call(cell) === "[object Date]";

/** The one cell of a column, if there is one; where there are two, neither is. */
export function only(cells: Cells, field: string): Cell | undefined {
  const [cell, second] = cells.filter((each) => each.field === field);
  return second ? undefined : cell;
}

/** Takes a cell out of those that are left for the note. */
export function take(cells: Cells, cell: Cell): void {
  cells.splice(cells.indexOf(cell), 1);
}

/** What a cell says, by the reader of its column. */
export function said(cell: Cell, readers: Readers): unknown {
  const { field, unit } = cell;
  if (field === "time" && unit === "") asMinutesOrHours(cell.text);
  const reader = readers.get(field) as Reader;
  const text = withoutRoughly(cell.text);
  return field === "push" ? reader(text, unit) : reader(textWithUnit({ ...cell, text }));
}

/** What a cell says with the unit of its heading. A fourth figure shows that three are no thousands. */
export function textWithUnit({ text, unit, exact = false }: Cell): string {
  return withUnit(exact ? text.replace(/\.\d{3}$/, "$&0") : withPoint(text), unit);
}

/** A spreadsheet adds seconds to a time that was typed as "7:30": then its hours are minutes. */
const SAVED_CLOCK = /^0?([1-9]\d?):([0-5]\d):00$/;

function asMinutesOrHours(text: string): void {
  const [, first, second] = SAVED_CLOCK.exec(text) ?? [];
  if (first === undefined || second === undefined) return;
  ambiguous("", TIMES, [`${first}:${second}`, `${first} h ${second} min`], text);
}

/** Reads the cell of a main column; what is wrong with it is a problem. */
export function main(cells: Cells, field: string, readers: Readers, problems: CheckProblem[]): unknown {
  const found = cells.filter((each) => each.field === field);
  // What is said roughly is read, and is told in the note too.
  for (const cell of found) if (found.length > 1 || !isRough(cell.text)) take(cells, cell);
  const [cell, second] = found;
  if (cell === undefined) return undefined;
  return told(problems, cell.heading, cell.heading, () =>
    second ? twoColumns(cell, second) : said(cell, readers),
  );
}

/** Refuses two columns that say one thing. */
export function twoColumns({ heading }: Cell, second: Cell): never {
  return refuse("", "one-column", oneColumnText, { headings: [heading, second.heading] }, undefined);
}

/** Reads the cell of another column; what cannot be read is left for the note. */
export function beside(cells: Cells, field: string, readers: Readers): unknown {
  const cell = only(cells, field);
  if (cell === undefined) return undefined;
  try {
    const value = said(cell, readers);
    take(cells, cell);
    return value;
  } catch (error) {
    if (!isInputError(error)) throw error;
    return undefined;
  }
}

/** Works on a run that was read; what is wrong with a field of it is told by the heading of its column. */
export function toldOfRun(
  problems: CheckProblem[],
  headings: ReadonlyMap<string, string>,
  work: () => void,
): void {
  try {
    work();
  } catch (error) {
    if (!isInputError(error)) throw error;
    const [, field = ""] = /^\/run\/(\w+)$/.exec(error.path) ?? [];
    const heading = headings.get(field) ?? "";
    told(problems, heading, heading, () => {
      throw error;
    });
  }
}

/** Returns what was read, or notes the problem. `name` begins the message. */
export function told<T>(
  problems: CheckProblem[],
  heading: string,
  name: string,
  work: () => T,
): T | undefined {
  try {
    return work();
  } catch (error) {
    if (!isInputError(error)) throw error;
    const message = name === "" ? error.message : `${name} ${error.sentence}`;
    problems.push({ ...problemOf(error), path: pointerTo("", heading), message });
    return undefined;
  }
}
