/*
 * Room: learning. The cells of a row of notes as people fill them: which column a heading means, and what a cell says.
 */
import { plainObject, show, wrongValue } from "../core/guards.js";
import { numberFromText, withPoint, withUnit } from "../quantities/numberText.js";
import type { Outcome } from "./types.js";

/** Other words for the columns. */
const SYNONYMS: Readonly<Record<string, string>> = {
  development: "time",
  temp: "temperature",
  every: "agitation",
  result: "outcome",
  gradient: "gamma",
  run: "id",
  notes: "note",
};

/** Units that a heading may carry for its column, as the last word. */
const UNITS = ["s", "sec", "min", "h", "c", "f"];

/** A column by the first word of its heading, and the unit in it, if any. */
interface Column {
  readonly field: string;
  readonly unit: string;
}

/** Reads a heading such as "Time (s)", "temperatureC", "Temp °F", "time_min". */
export function readHeading(heading: string): Column {
  const words = heading.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();
  const [first = "", ...rest] = words.match(/[a-z0-9]+/g) ?? [];
  const last = rest.pop() ?? "";
  return { field: Object.hasOwn(SYNONYMS, first) ? (SYNONYMS[first] as string) : first, unit: UNITS.includes(last) ? last : "" };
}

/** A cell with something in it: its text as it stands, empty where that says nothing in words; and with a decimal point, for a figure. */
interface Cell extends Column {
  readonly heading: string;
  readonly words: string;
  readonly figures: string;
}

/** The cells of a row. What is read is taken out. */
export type Cells = Cell[];

/** The cells of a record that are not blank. */
export function cellsOf(record: unknown): Cells {
  const cells: Cells = [];
  for (const [heading, cell] of Object.entries(plainObject("row", record))) {
    // What a data frame or a spreadsheet leaves in an empty cell.
    if (cell === undefined || cell === null || Number.isNaN(cell)) continue;
    const text = typeof cell === "string" ? cell.trim() : show(cell);
    // A quotient by nothing says nothing in words; where a figure belongs it is refused.
    const words = cell === Infinity || cell === -Infinity ? "" : text;
    if (text !== "") cells.push({ ...readHeading(heading), heading, words, figures: withPoint(text) });
  }
  return cells;
}

/** Takes the cell of a column out; throws when there are two. */
function taken(cells: Cells, field: string): Cell | undefined {
  const [cell, second] = cells.filter((each) => each.field === field);
  if (second) throw new RangeError(`${field} must stand in one column, got two`);
  if (cell) cells.splice(cells.indexOf(cell), 1);
  return cell;
}

/** Reads a cell; `unit` is that of a bare number in it, when not in the heading. */
export function read<T>(cells: Cells, field: string, reader: (text: string) => T, unit?: string): T | undefined {
  const cell = taken(cells, field);
  return cell && reader(withUnit(cell.figures, unit ?? cell.unit));
}

/** Reads a plain number. */
export function readNumber(cells: Cells, field: string): number | undefined {
  const cell = taken(cells, field);
  return cell && numberFromText(cell.figures, field);
}

/** Reads words as they stand. */
export function readWords(cells: Cells, field: string): string | undefined {
  return taken(cells, field)?.words || undefined;
}

/** Returns what was read; throws when there was nothing. */
export function needed<T>(field: string, value: T | undefined): T {
  if (value === undefined) throw new RangeError(`${field} is missing`);
  return value;
}

const OUTCOMES = '"good", "failed", "fogged", "over 1", "under 0.5", "N+1", "x1.2", or a measured gradient or density with what was wanted';

/** "good", "failed", "fogged"; steps over or under ("over 1", "-0.5", "N+1"); or the right time as a multiple ("x1.2"). */
export function judgement(text: string): Outcome {
  const lower = text.toLowerCase().replaceAll("−", "-");
  if (/^(?:good|ok|right|normal|n)$/.test(lower)) return { kind: "good" };
  if (lower === "failed" || lower === "fogged") return { kind: lower };
  const [, word, sign, steps] = /^(?:(over|under)\s*|n?\s*([-+]))(\d+(?:\.\d+)?)(?:\s*(?:steps?|stops?))?$/.exec(lower) ?? [];
  if (steps !== undefined) return { kind: "steps", steps: Number(steps) * (word === "under" || sign === "-" ? -1 : 1) };
  const ratio = /^[x\u00d7]\s*(\d+(?:\.\d+)?)$/.exec(lower)?.[1];
  if (ratio === undefined) wrongValue("outcome", OUTCOMES, text);
  return { kind: "judged", timeRatio: Number(ratio) };
}
