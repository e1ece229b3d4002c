import type { Problem } from "../compensate/checkConditions.js";
import { arrayOf, inRange, plainObject, refuse } from "../core/guards.js";
import { parseDilution, type ParseDilutionOptions } from "../dilution/parseDilution.js";
import { entryOf, refuseFuture } from "../learning/notebook.js";
import { readOutcome } from "../learning/readOutcome.js";
import type { Run } from "../learning/types.js";
import { cellsOf, told, type Column } from "./noteCells.js";
import { readersFor } from "./readers.js";
import { readRow } from "./readRow.js";

/** How to read notes. */
export interface RunNotesOptions extends ParseDilutionOptions {
  /** today's ISO date: rows dated later are rejected */
  readonly today?: string | undefined;
  /** the year of dates without one, such as "3.7.", 1800 to 9999; left out, such a date stays in the note */
  readonly year?: number | undefined;
}

/**
 * A row that could not be read: its place in the records, the record as it came, and all that is wrong with
 * it.
 */
export interface RejectedNote {
  readonly row: number;
  readonly record: unknown;
  /** every problem in one line */
  readonly reason: string;
  /** every problem as data; its path points to the heading of the column */
  readonly problems: readonly Problem[];
}

/** The runs that were read, and the rows that were not; none is lost. */
export interface RunNotes {
  readonly runs: readonly Run[];
  readonly rejected: readonly RejectedNote[];
}

/**
 * Reads runs from the rows of a notebook or a CSV file, with cells as people fill them.
 *
 * @param records - one object a row, headings as keys, cells of text or numbers, blanks allowed. Columns, by
 * the first word of the heading: time (or development), temperature (or temp), dilution, agitation (or
 * every), used, age, outcome (or result), gamma (or gradient), density, wanted, appearance, factor, sd, id
 * (or run), date, thermometer, by, printed, note (or notes, remarks). A heading may carry the unit of bare
 * numbers as its last word: "Time (s)", "temperatureC", "Temp °F", "age h"; numbers under used, temperature
 * and age need one
 * @param options - `colon`: how to read a dilution with a colon; `today`: the ISO date after which rows are
 * rejected; `year`: the year of dates without one
 * @returns the runs, in their order, and each row that could not be read with all that is wrong with it; what
 * is in other columns, or beside a failure or a measurement, or in a side column that cannot be read, goes to
 * the run's note
 * @throws TypeError when `records` is not an array or `options` not an object
 * @throws RangeError when `options` is not understood
 *
 * @remarks Cells are read by {@link parseTime}, {@link parseTemperature}, {@link parseDilution}, {@link
 * parseAgitation}, {@link parseUse} and {@link parseAge}, with a decimal comma for a point; besides, halves
 * and quarters ("8 1/2 min"), "constant", "2/min", and "fresh" or 0 for a bath without use or age. Outcomes:
 * "good", "perfect" and the like, "failed", "fogged", "too thin", "a bit dense" (no amount is read into such
 * words), steps over or under ("over 1", "N+1"), the right time as a multiple ("x1.2"); or a gradient or
 * density with what was wanted; or a time of appearance with its factor. Without a column for it the outcome
 * may be among the remarks. A bare "+1" is rejected with the question which is meant: half of photographers
 * write what it was, half what it needs. A number without a unit, in the cell or the heading, is rejected,
 * not guessed. A row that says the same run as an earlier one is rejected as its duplicate.
 *
 * @example
 * ```ts
 * const notes = readRunNotes([
 *   { Time: "8:30", Temp: "68F", Dilution: "1+9", Outcome: "over 0.5" },
 *   { Time: "510", Temp: "20 °C", Dilution: "1+9", Outcome: "good" },
 * ]);
 * notes.runs
 * // => [{ timeS: 510, temperatureC: 20, dilution: "1+9", outcome: { kind: "steps", steps: 0.5 } }]
 * notes.rejected[0]?.row // => 1
 * ```
 */
export function readRunNotes(records: readonly unknown[], options: RunNotesOptions = {}): RunNotes {
  const rows = arrayOf("readRunNotes/records", records, 0);
  const { today, year, ...colon } = plainObject("readRunNotes/options", options) as RunNotesOptions;
  refuseFuture("readRunNotes/options/today", today, []);
  if (year !== undefined) inRange("readRunNotes/options/year", year, 1800, 9999, "count");
  parseDilution("stock", colon);
  const readers = readersFor({ ...colon, year });
  const columns = new Map<string, Column>();
  const runs: Run[] = [];
  const rejected: RejectedNote[] = [];
  const seen = new Map<string, number>();
  rows.forEach((record, row) => {
    const problems: Problem[] = [];
    told(problems, "", "", () => {
      const run = readRow(cellsOf(record, readers, columns, problems), readers, problems);
      if (problems.length > 0) return;
      const entry = entryOf("/run", run);
      refuseFuture("", today, [entry]);
      readOutcome("/run", run.timeS, run.outcome);
      // A run's text starts with a bracket, an id's with a quotation mark: they share the map and never meet.
      const id = run.id === undefined ? entry.text : JSON.stringify(run.id);
      const twin = seen.get(entry.text);
      if (twin !== undefined) refuse("/row", `is the same run as row ${twin}`, twin);
      const namesake = seen.get(id);
      if (namesake !== undefined)
        refuse("/id", `must be that of one run, but ${id} is that of row ${namesake}`, run.id);
      seen.set(entry.text, row).set(id, row);
      runs.push(run);
    });
    if (problems.length > 0)
      rejected.push({ row, record, reason: problems.map(({ message }) => message).join("; "), problems });
  });
  return { runs, rejected };
}
