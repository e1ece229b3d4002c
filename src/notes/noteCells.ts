/*
 * Room: notes. The cells of a row of notes as people fill them: which column a heading means, and what a cell
 * says.
 */
import { plainObject, unreadable, wrongValue } from "../core/guards.js";
import { show } from "../core/errors.js";
import { withPoint, withUnit } from "../quantities/numberText.js";
import type { Outcome } from "../learning/types.js";

/** Other words for the columns. */
const SYNONYMS: ReadonlyMap<string, string> = new Map([
  ["temp", "temperature"],
  ["every", "agitation"],
  ["result", "outcome"],
  ["gradient", "gamma"],
  ["run", "id"],
  ["notes", "note"],
]);

/** A column, and what its heading says besides, which has to be the unit of bare numbers in it. */
export interface Column {
  readonly field: string;
  readonly unit: string;
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
 * The cells of a record that are not blank; `columns` keeps what was read of the headings. Throws when it is
 * no object, or a heading has a bracket that holds no unit of its column.
 */
export function cellsOf(record: unknown, readers: Readers, columns: Map<string, Column>): Cells {
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
    const { field, unit } = column;
    cells.push({ field, unit, heading, text });
  }
  return cells;
}

/**
 * The column of a heading, if what stands in it besides is a unit; a time of day, or of fixing, is a column
 * that is not known.
 */
function columnOf(heading: string, readers: Readers): Column {
  const column = readHeading(heading);
  const { field, unit } = column;
  const reader = readers.get(field);
  try {
    if (unit !== "") (reader as Reader)(`1 ${unit}`);
    return column;
  } catch {
    // A bracket holds a unit: to pass it over would be to guess.
    if (reader && /[([]/.test(heading)) wrongValue("/heading", "a column and its unit", heading);
    return { field: "", unit };
  }
}

/** Takes the cell of a column out; throws when there are two. */
export function taken(cells: Cells, field: string): Cell | undefined {
  const [cell, second] = cells.filter((each) => each.field === field);
  if (second) throw new RangeError(`${field} must stand in one column, got two`);
  if (cell) cells.splice(cells.indexOf(cell), 1);
  return cell;
}

/** Reads the cell of a column. */
export function read(cells: Cells, field: string, readers: Readers): unknown {
  const cell = taken(cells, field);
  return cell && (readers.get(field) as Reader)(withUnit(withPoint(cell.text), cell.unit));
}

/** Returns what was read; throws when there was nothing. */
export function needed<T>(field: string, value: T | undefined): T {
  if (value === undefined) throw new RangeError(`${field} is missing`);
  return value;
}

const OUTCOMES = '"good", "failed", "fogged", "over 1", "N-0.5" or "x1.2"';

/**
 * "good", "failed", "fogged"; steps over or under ("over 1", "-0.5", "N+1"); or the right time as a multiple
 * ("x1.2").
 */
export function judgement(text: string): Outcome {
  const lower = text.toLowerCase().replace(/\s/g, "").replace(/[−–]/g, "-");
  if (/^(?:good|ok|right|normal|n)$/.test(lower)) return { kind: "good" };
  if (lower === "failed" || lower === "fogged") return { kind: lower };
  const [, word, sign, steps] =
    /^(?:(over|under)|n?([-+]))(\d+(?:\.\d+)?)(?:steps?|stops?)?$/.exec(lower) ?? [];
  if (steps !== undefined)
    return { kind: "steps", steps: Number(steps) * (word === "under" || sign === "-" ? -1 : 1) };
  const ratio = /^[x\u00d7](\d+(?:\.\d+)?)$/.exec(lower)?.[1];
  if (ratio === undefined) unreadable("/outcome", "outcome", ["good", "N-0.5", "x1.2"], OUTCOMES, text);
  return { kind: "judged", timeRatio: Number(ratio) };
}
