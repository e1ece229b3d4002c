/*
 * Tables in Markdown: GitHub Flavored Markdown Spec, version 0.29-gfm, 2019, section 4.10.
 */

/** A cell of the row below the headings. */
const DASHES = /^:?-+:?$/;
/** What ends a table besides an empty line: a heading, a quotation, a fence around code. */
const OTHER_BLOCK = /^ {0,3}(?:#{1,6}(?:\s|$)|>|```|~~~)/;
/** A stroke between two cells; one behind a backslash is text. */
const STROKE = /(?<!\\)\|/;
/** A cell that is emphasised as a whole, or set as code. */
const SET = /^(\*\*|__|[*_`])(?=\S)(.+)\1$/;

/** The rows of each table, the headings first. */
export function markdownTables(text: string): readonly (readonly (readonly string[])[])[] {
  const lines = text.split(/\r\n|\n|\r/);
  const tables: (readonly string[])[][] = [];
  for (let i = 1; i < lines.length; i += 1) {
    const headings = cellsIn(lines[i - 1] as string);
    const dashes = cellsIn(lines[i] as string);
    // The headings are as many as the cells below them: else it is no table.
    if (
      headings.length === 0 ||
      headings.length !== dashes.length ||
      !dashes.every((cell) => DASHES.test(cell))
    )
      continue;
    const table = [headings.map(plainText)];
    for (i += 1; i < lines.length && isRow(lines[i] as string); i += 1)
      table.push(cellsIn(lines[i] as string).map(plainText));
    tables.push(table);
  }
  return tables;
}

const isRow = (line: string): boolean => line.trim() !== "" && !OTHER_BLOCK.test(line);

/** The cells of a line, without the strokes at its ends; none where there is no stroke. */
function cellsIn(line: string): readonly string[] {
  const cells = line.trim().split(STROKE);
  if (cells.length === 1) return [];
  if (cells[0] === "") cells.shift();
  if (cells.at(-1) === "") cells.pop();
  return cells.map((cell) => cell.trim());
}

const plainText = (cell: string): string => cell.replaceAll("\\|", "|").replace(SET, "$2");
