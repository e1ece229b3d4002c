/*
 * What a bare "Dev" heads: the time, or the developer.
 */
import { isInputError } from "../core/errors.js";
import { columnOf, isBareDevelopment, type Column, type Readers } from "./headings.js";
import { said, textOf } from "./noteCells.js";

/** How many cells of a bare "Dev" there are, and how many of them are times. */
interface Counted {
  readonly cells: number;
  readonly times: number;
  /** figures of which only the unit is not said */
  readonly figures: number;
}

/**
 * The columns of bare "Dev" headings that hold the developer, by their headings. That is so where another
 * column holds times, and where no cell is a time. Where every cell is one beside another column for it, both
 * say the time, and the row is refused.
 */
export function developmentColumns(rows: readonly unknown[], readers: Readers): Map<string, Column> {
  const bare = new Map<string, Counted>();
  const known = new Set<string>();
  let otherTime = false;
  for (const record of rows) {
    if (typeof record !== "object" || record === null) continue;
    for (const [heading, cell] of Object.entries(record)) {
      const text = textOf(cell);
      if (text === "") continue;
      if (isBareDevelopment(heading)) bare.set(heading, counted(bare.get(heading), text, readers));
      else if (!known.has(heading)) {
        known.add(heading);
        otherTime ||= columnOf(heading, readers).field === "time";
      }
    }
  }
  const columns = new Map<string, Column>();
  for (const [heading, { cells, times, figures }] of bare)
    if (otherTime ? times < cells : times + figures === 0)
      columns.set(heading, { field: "developer", unit: "" });
  return columns;
}

function counted(
  { cells, times, figures }: Counted = { cells: 0, times: 0, figures: 0 },
  text: string,
  readers: Readers,
): Counted {
  const more = { cells: cells + 1, times, figures };
  try {
    said({ heading: "", field: "time", unit: "", column: 1, text }, readers);
    return { ...more, times: times + 1 };
  } catch (error) {
    if (!isInputError(error)) throw error;
    return error.code === "ambiguous" ? { ...more, figures: figures + 1 } : more;
  }
}
