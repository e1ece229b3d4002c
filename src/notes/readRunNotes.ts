import type { Caution } from "../core/caution.js";
import type { CheckProblem } from "../core/errors.js";
import { arrayOf, refuse } from "../core/guards.js";
import { inNameOf } from "../core/inNameOf.js";
import { onlyFields } from "../core/onlyFields.js";
import { parseDilution, type ParseDilutionOptions } from "../dilution/parseDilution.js";
import { entryOf, refuseFuture } from "../learning/notebook.js";
import { readOutcome } from "../learning/readOutcome.js";
import type { DevelopmentRun } from "../learning/types.js";
import { isColumn, isName, unknownHeading, type Readers } from "./headings.js";
import {
  asSpelt,
  checkedOnly,
  countNames,
  isAsked,
  mixedNames,
  type NameColumns,
  type OnlyNamed,
} from "./names.js";
import { developmentColumns } from "./developmentColumns.js";
import { cellsOf, said, told, toldOfRun, twoColumns, type Cells } from "./noteCells.js";
import { checkedDateOptions } from "./parseDate.js";
import { refuseUnsaidPush } from "./pushCell.js";
import { readersFor } from "./readers.js";
import { readRow } from "./readRow.js";
import { idOfRowText, otherRunText } from "./text.js";

/** How to read notes. */
export interface RunNotesOptions extends ParseDilutionOptions {
  /** today's ISO date: rows dated later are rejected */
  readonly today?: string | undefined;
  /** the year of dates without one, such as "3.7.", 1800 to 9999; left out, such a date stays in the note */
  readonly year?: number | undefined;
  /**
   * which comes first in dates such as "3/4/2024", where no figure above 12 decides; left out, such a date
   * stays in the note
   */
  readonly dates?: "day-first" | "month-first" | undefined;
  /**
   * which film or developer to read, where the notebook holds several: rows that name another, or none, are
   * left aside. Names are compared without case and outer spaces
   */
  readonly only?: OnlyNamed | undefined;
}

const OPTIONS: readonly (keyof RunNotesOptions)[] = ["colon", "today", "year", "dates", "only"];

/**
 * A row that could not be read: its place in the records, the record as it came, and all that is wrong with
 * it.
 */
export interface RejectedNote {
  /** which row of what was given, counted from 1 as the sentences do: the first is row 1 */
  readonly row: number;
  /** the row as it was given */
  readonly record: unknown;
  /** every problem in one line */
  readonly reason: string;
  /** every problem as data; its path points to the heading of the column */
  readonly problems: readonly CheckProblem[];
}

/**
 * A heading or a cell that was not read: what it holds is in the note of the run, and the run is as in the
 * baseline there.
 */
export interface UnreadNote {
  /** the heading of the column as it was given */
  readonly heading: string;
  /** which cell of its row, counted from 1 */
  readonly column: number;
  /** which row, counted from 1; of a heading that is not known the first row with something below it */
  readonly row: number;
  /** what the cell holds */
  readonly text: string;
  /** whether the heading is not known: then none of its cells was read, and it is listed once */
  readonly whole: boolean;
  /** why, in one line */
  readonly reason: string;
  /** why, as data; its path points to the heading */
  readonly problem: CheckProblem;
}

/** The runs that were read, and the rows that were not; none is lost. */
export interface RunNotes {
  /** the runs that could be read */
  readonly runs: readonly DevelopmentRun[];
  /** the row of each run, counted from 1 */
  readonly rows: readonly number[];
  /** the rows that could not, each with its reason */
  readonly rejected: readonly RejectedNote[];
  /** the headings that are not known, and the cells that could not be read, in the order of the rows */
  readonly unread: readonly UnreadNote[];
  /** the rows that `only` left aside, counted from 1 */
  readonly leftAside: readonly number[];
  /** columns of films or developers with several names, `"mixed-notes"`; paths point to their headings */
  readonly cautions: readonly Caution[];
}

/**
 * Reads runs from the rows of a notebook or a CSV file, with cells as people fill them.
 *
 * @param records - one object a row, headings as keys, cells of text, numbers or dates, blanks allowed.
 * Columns, by the first word of the heading: time (or development, minutes), temperature (or temp),
 * dilution (or dil), agitation (or agit, every), used (or rolls), volume, age, outcome (or result,
 * verdict), gamma (or gradient), density, wanted, appearance, factor, sd, id (or run), date, thermometer,
 * by, batch (or bottle), printed, note (or notes, remarks); in German Zeit, Temperatur, Verdünnung,
 * Bewegung, Alter, Ergebnis (or Urteil, Bewertung), Datum, Bemerkung, Ansatz (or Flasche); push (or pull,
 * push/pull); film (or plate, paper, emulsion, material; Platte, Papier), developer (Entwickler). "Bath"
 * and "dev" may stand before. "Dev" alone is the time where no other column is and its cells are times,
 * else the developer. A heading may carry the unit of bare numbers as its last word, "in" before it or not:
 * "Time (s)", "Zeit in min", "Time (mm:ss)", "temperatureC", "Temp °F", "age h"; numbers under used,
 * temperature and age need one
 * @param options - `colon`: how to read a dilution with a colon; `today`: the ISO date after which rows are
 * rejected; `year`: the year of dates without one; `dates`: which comes first in "3/4/2024"; `only`: the
 * film and the developer to read
 * @returns the runs, in their order, and their rows; each row that could not be read with all that is wrong
 * with it; and what was not read: headings that are not known, side columns that cannot be read, an age
 * that is "unknown" or "?", use without a volume, remarks about push that do not say how far. All of that,
 * and what is beside a failure or a measurement, goes to the run's note; the rows that were left aside; and a
 * caution for each column with several films or developers, which are read as one
 * @throws TypeError when `records` is not an array or `options` not an object
 * @throws RangeError when `options` is not understood
 *
 * @remarks Cells are read by {@link parseTime}, {@link parseTemperature}, {@link parseDilution}, {@link
 * parseAgitation}, {@link parseUse} and {@link parseAge}; besides, "~20 °C" (which stays in the note too),
 * "2/min", and "fresh" or 0 for a bath without use or age. Dates: "2024-03-05", "5 March 2024", "5. März
 * 2024", "5.3.24", "13/4/2024", and a `Date`. Outcomes: "good", "perfect" and the like, "failed", "fogged",
 * "too thin", "a bit dense" (no amount is read into such words), steps over or under ("over 1"), the right
 * time as a multiple ("x1.2", "needs +15%"); or a gradient or density with what was wanted; or a time of
 * appearance with its factor. Of several the gradient or density counts, else the words, else the appearance;
 * the others stay in the note. Without a column for it the outcome may be among the remarks. "+1" and "N+1"
 * as outcomes are rejected with the question which is meant: half of photographers write what it was, half
 * what it needs; so are "over 1 stop" and "flat". A number without a unit, in the cell or the heading, is
 * rejected, not guessed; but a temperature of 20 is °C, since a bath of 20 °F is ice. A push is read by
 * {@link parseStops} from its column, and from a remark of which a part says it and no more ("pushed 1 stop,
 * grainy"). Two that differ are rejected with the question which is meant. Any other remark about push ("next
 * time push 1 stop", "pushed") is listed as unread where the run is taken for a normal one. A row that says
 * the same run as an earlier one is rejected as its duplicate. People, thermometers and batches are spelt as
 * they were first, where case or spaces alone differ. Rows and columns are counted from 1, in data and
 * sentences.
 *
 * @example
 * ```ts
 * const notes = readRunNotes([
 *   { Time: "8:30", Temp: "68F", Dilution: "1+9", Outcome: "over 0.5" },
 *   { Time: "510", Temp: "20 °C", Dilution: "1+9", Outcome: "good" },
 * ]);
 * notes.runs
 * // => [{ timeS: 510, temperatureC: 20, dilution: "1+9", outcome: { kind: "steps", steps: 0.5 } }]
 * notes.rejected[0]?.row // => 2
 * ```
 */
export function readRunNotes(records: readonly unknown[], options: RunNotesOptions = {}): RunNotes {
  const all = arrayOf("readRunNotes/records", records, 0);
  const { today, year, dates, only, colon } = onlyFields(
    "readRunNotes/options",
    options,
    OPTIONS,
  ) as RunNotesOptions;
  const asked = checkedOnly("readRunNotes/options/only", only);
  refuseFuture("readRunNotes/options/today", today, []);
  checkedDateOptions("readRunNotes/options", { year, dates });
  inNameOf("readRunNotes", () => parseDilution("stock", { colon }));
  const readers = readersFor({ colon, year, dates });
  const columns = developmentColumns(all, readers);
  const names: NameColumns = new Map();
  const leftAside: number[] = [];
  const runs: DevelopmentRun[] = [];
  const rows: number[] = [];
  const rejected: RejectedNote[] = [];
  const unread: UnreadNote[] = [];
  const strange = new Set<string>();
  const spelt = new Map<string, string>();
  const seen = new Map<string, number>();
  for (const [place, record] of all.entries()) {
    const row = place + 1;
    const problems: CheckProblem[] = [];
    told(problems, "", "", () => {
      const cells = cellsOf(record, readers, columns, problems);
      if (!isAsked(cells, asked)) {
        leftAside.push(row);
        problems.length = 0;
        return;
      }
      // What is read of these is taken out of the cells.
      const headings = new Map(cells.map(({ field, heading }) => [field, heading]));
      const run = asSpelt(readRow(cells, readers, problems), spelt);
      const normal = problems.length === 0 && run.pushStops === undefined;
      for (const one of unreadCells(cells, readers, normal)) {
        const { heading, whole } = one;
        if (!whole || !strange.has(heading)) unread.push({ ...one, row });
        if (whole) strange.add(heading);
      }
      if (problems.length > 0) return;
      toldOfRun(problems, headings, () => {
        const entry = entryOf("/run", run);
        refuseFuture("", today, [entry]);
        readOutcome("/run", run.timeS, run.outcome);
        // A run's text starts with a bracket, an id's with a quotation mark: they never meet in the map.
        const id = run.id === undefined ? entry.text : JSON.stringify(run.id);
        const twin = seen.get(entry.text);
        if (twin !== undefined) refuse("/row", "other-run", otherRunText, { row: twin }, undefined);
        const namesake = seen.get(id);
        if (namesake !== undefined)
          refuse("/run/id", "id-of-one-run", idOfRowText, { row: namesake }, run.id);
        seen.set(entry.text, row).set(id, row);
        runs.push(run);
        rows.push(row);
        countNames(names, cells);
      });
    });
    if (problems.length > 0)
      rejected.push({ row, record, reason: problems.map(({ message }) => message).join("; "), problems });
  }
  return { runs, rows, rejected, unread, leftAside, cautions: mixedNames(names, runs.length) };
}

/**
 * What is left of a row because its heading is not known or its cell cannot be read; and of a run that is
 * taken for a normal one the remarks about push.
 */
function unreadCells(cells: Cells, readers: Readers, normal: boolean): readonly Omit<UnreadNote, "row">[] {
  return cells.flatMap((cell) => {
    const { heading, column, text, field } = cell;
    if (isName(field) || (field === "note" && !normal)) return [];
    const whole = !isColumn(field);
    const problems: CheckProblem[] = [];
    told(problems, heading, whole ? "heading" : heading, () => {
      if (whole) unknownHeading(heading);
      if (field === "note") refuseUnsaidPush(text);
      const other = cells.find((each) => each !== cell && each.field === field);
      if (other && field !== "note") twoColumns(other, cell);
      return readers.has(field) && said(cell, readers);
    });
    return problems.map((problem) => ({ heading, column, text, whole, reason: problem.message, problem }));
  });
}
