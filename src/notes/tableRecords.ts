import { isText } from "../core/guards.js";
import { isColumn, readHeading } from "./headings.js";
import { markdownTables } from "./markdownTables.js";

/** Between two cells, the surest first: a spreadsheet copies tabs. */
const SEPARATORS = ["\t", ";", ","] as const;

/**
 * A table of text, as a spreadsheet copies or saves it, as records for {@link readRunNotes}.
 *
 * @param text - rows on lines of their own, the headings first; cells between tabs, semicolons or commas; or
 * tables in Markdown
 * @returns one record a row, with the headings as keys; cells stay text; empty rows are left out
 * @throws TypeError when `text` is not text
 *
 * @remarks The headings are the first line with two that {@link readRunNotes} knows, so that a title above
 * them is passed over; else the first line. The separator is theirs: a tab, else a semicolon, else a comma.
 * A cell in double quotes may hold separators, line breaks, and its quotes doubled (RFC 4180, 2005). A cell
 * without a heading has the number of its column as its key, so that nothing is lost; a heading that comes
 * again has its number behind it. Of text in Markdown each table with known headings is read: GitHub Flavored
 * Markdown Spec, version 0.29-gfm, 2019, section 4.10.
 *
 * @example
 * ```ts
 * tableRecords("Time\tTemp\n8:30\t68F\n") // => [{ Time: "8:30", Temp: "68F" }]
 * tableRecords('Time;Temp;Note\n8:30;"13,5 °C";') // => [{ Time: "8:30", Temp: "13,5 °C", Note: "" }]
 * tableRecords("| Time | Temp |\n|------|-----:|\n| 8:30 | 68F |") // => [{ Time: "8:30", Temp: "68F" }]
 * ```
 */
export function tableRecords(text: string): readonly Readonly<Record<string, string>>[] {
  isText("tableRecords/text", text);
  // A byte order mark, as some spreadsheets save one.
  const plain = text.replace(/^\ufeff/, "");
  const marked = markdownTables(plain);
  const ours = marked.filter(([headings]) => headings !== undefined && areKnown(headings));
  const tables = ours.length > 0 ? ours : marked.length > 0 ? marked : [separated(plain)];
  return tables.flatMap(recordsOf);
}

/** The rows of a table with separators: from the headings on if they are known, else from the first line. */
function separated(plain: string): Rows {
  const rows = (separator: string): Rows => rowsOf(plain, separator).filter(isFilled);
  for (const separator of SEPARATORS) {
    if (!plain.includes(separator)) continue;
    const all = rows(separator);
    const first = all.findIndex(areKnown);
    if (first !== -1) return all.slice(first);
  }
  const firstLine = /^[^\r\n]*/.exec(plain.trimStart())?.[0] ?? "";
  return rows(SEPARATORS.find((one) => firstLine.includes(one)) ?? "\t");
}

/** Whether two cells of a row, at least, head columns that are known. */
const areKnown = (row: readonly string[]): boolean =>
  row.filter((cell) => isColumn(readHeading(cell).field)).length > 1;
const isFilled = (row: readonly string[]): boolean => row.some((cell) => cell !== "");

type Rows = readonly (readonly string[])[];

function recordsOf(table: Rows): readonly Readonly<Record<string, string>>[] {
  const [headings = [], ...rows] = table.filter(isFilled);
  const keys = keysOf(headings);
  return rows.map((row) => {
    const record: Record<string, string> = {};
    row.forEach((cell, i) => {
      const key = keys[i] ?? String(i + 1);
      if (cell !== "" || headings[i]) put(record, key, cell);
    });
    return record;
  });
}

/** Also a heading such as "__proto__" is a key of the record's own. */
function put(record: Record<string, string>, key: string, value: string): void {
  Object.defineProperty(record, key, { value, enumerable: true, configurable: true, writable: true });
}

/** Headings as keys: one that is empty or comes again is told apart by its column. */
function keysOf(headings: readonly string[]): readonly string[] {
  const seen = new Set<string>();
  return headings.map((heading, i) => {
    const key = heading === "" ? String(i + 1) : seen.has(heading) ? `${heading} ${i + 1}` : heading;
    seen.add(key);
    return key;
  });
}

/** The cells of all rows, without the spaces around them. */
function rowsOf(text: string, separator: string): Rows {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = "";
  let quoted = false;
  const endCell = (): void => {
    row.push(cell.trim());
    cell = "";
  };
  for (let i = 0; i < text.length; i += 1) {
    const one = text.charAt(i);
    if (quoted) {
      if (one !== '"') cell += one;
      else if (text.charAt(i + 1) === '"') {
        cell += one;
        i += 1;
      } else quoted = false;
    } else if (one === '"' && cell.trim() === "") {
      cell = "";
      quoted = true;
    } else if (one === separator) endCell();
    else if (one === "\n" || one === "\r") {
      endCell();
      rows.push(row);
      row = [];
    } else cell += one;
  }
  endCell();
  return [...rows, row];
}
