/*
 * Module: notes. The cells of a row of notes as people fill them: which column a heading means, and what a
 * cell says.
 */
import type { Problem } from "../compensate/checkConditions.js";
import { plainObject, refuse, wrongValue } from "../core/guards.js";
import { isInputError, show } from "../core/errors.js";
import { pointerTo } from "../core/pointer.js";
import { withPoint, withUnit } from "../quantities/numberText.js";

/** Other words for the columns. */
const SYNONYMS: ReadonlyMap<string, string> = new Map([
  ["temp", "temperature"],
  ["every", "agitation"],
  ["result", "outcome"],
  ["gradient", "gamma"],
  ["run", "id"],
  ["notes", "note"],
  ["remark", "note"],
  ["remarks", "note"],
  ["comment", "note"],
  ["comments", "note"],
  ["thermom", "thermometer"],
  ["who", "by"],
]);

/** A column, and what its heading says besides, which has to be the unit of bare numbers in it. */
export interface Column {
  readonly field: string;
  readonly unit: string;
  /** a bracket holds what is no unit of the column */
  readonly refused?: boolean;
}

/** Reads a heading such as "Time (s)", "temperatureC", "Temp °F", "Dev. time [min]". */
export function readHeading(heading: string): Column {
  const words = heading
    .replace(/([a-z\d])([A-Z])/g, "$1 $2")
    .toLowerCase()
    .replace(/[\s_:.()[\]]+/g, " ")
    .trim()
    .replace(/^dev(?:elopment)?(?: time)?(?= |$)/, "time");
  const [first = "", ...rest] = words.split(" ");
  return { field: SYNONYMS.get(first) ?? first, unit: rest.join(" ") };
}

/** A cell with something in it. */
interface Cell extends Column {
  readonly heading: string;
  readonly text: string;
}

/** The cells of a row. What is read is taken out. */
export type Cells = Cell[];

type Reader = (text: string) => unknown;

/** How the cells of each column are read that holds no plain words. */
export type Readers = ReadonlyMap<string, Reader>;

/**
 * The cells of a record that are not blank; `columns` keeps what was read of the headings. A heading of a
 * main column whose bracket holds no unit of it is a problem; of any other column it is one that is not
 * known.
 */
export function cellsOf(
  record: unknown,
  readers: Readers,
  columns: Map<string, Column>,
  problems: Problem[],
): Cells {
  const cells: Cells = [];
  for (const [heading, cell] of Object.entries(plainObject("/row", record))) {
    // What a data frame or a spreadsheet leaves in an empty cell.
    if (cell === undefined || cell === null || Number.isNaN(cell)) continue;
    // A quotient by nothing says as much in words; where a figure belongs it is refused.
    const text =
      typeof cell === "string"
        ? cell.trim()
        : cell === Infinity || cell === -Infinity
          ? "no number"
          : show(cell);
    if (text === "") continue;
    const column = columns.get(heading) ?? columnOf(heading, readers);
    columns.set(heading, column);
    const { field, unit, refused = false } = column;
    if (refused) told(problems, heading, "", () => wrongValue("/heading", "a column and its unit", heading));
    else cells.push({ field, unit, heading, text });
  }
  return cells;
}

/** The columns without which a row is no run, or says what it does not know. */
const MAIN: readonly string[] = ["time", "temperature", "dilution", "agitation", "used", "age", "outcome"];

/**
 * The column of a heading, if what it holds besides is a unit; a time of day, or of fixing, is a column
 * that is not known.
 */
function columnOf(heading: string, readers: Readers): Column {
  const column = readHeading(heading);
  const { field, unit } = column;
  const reader = readers.get(field);
  try {
    if (unit !== "") (reader as Reader)(`1 ${unit}`);
    return column;
  } catch (error) {
    // A unit of the column, though 1 of it is out of range: 1 °F is no bath.
    if (isInputError(error) && error.code === "out-of-range") return column;
    // A bracket holds a unit: to pass it over would be to guess.
    const refused = MAIN.includes(field) && /[([]/.test(heading);
    return refused ? { field, unit, refused } : { field: "", unit };
  }
}

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
export function said({ field, text, unit }: Cell, readers: Readers): unknown {
  return (readers.get(field) as Reader)(withUnit(withPoint(text), unit));
}

/** Reads the cell of a main column; what is wrong with it is a problem. */
export function main(cells: Cells, field: string, readers: Readers, problems: Problem[]): unknown {
  const found = cells.filter((each) => each.field === field);
  for (const cell of found) take(cells, cell);
  const [cell, second] = found;
  if (cell === undefined) return undefined;
  return told(problems, cell.heading, cell.heading, () =>
    second
      ? refuse("", `must be one column, got two: ${cell.heading} and ${second.heading}`, found.length, {
          most: 1,
        })
      : said(cell, readers),
  );
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

/** Returns what was read, or notes the problem. `name` begins the message. */
export function told<T>(problems: Problem[], heading: string, name: string, work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (!isInputError(error)) throw error;
    const { code, expected, actual, sentence } = error;
    const message = name === "" ? error.message : `${name} ${sentence}`;
    problems.push({ code, path: pointerTo("", heading), expected, actual, message, sentence });
    return undefined;
  }
}
