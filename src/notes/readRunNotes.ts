import { parseAgitation } from "../agitation/parseAgitation.js";
import { arrayOf, plainObject } from "../core/guards.js";
import { present } from "../core/ordered.js";
import { parseDilution, type ParseDilutionOptions } from "../dilution/parseDilution.js";
import { parseAge } from "../age/parseAge.js";
import { parseUse } from "../use/parseUse.js";
import { parseTemperature } from "../quantities/parseTemperature.js";
import { numberFromText } from "../quantities/numberText.js";
import { parseTime } from "../quantities/parseTime.js";
import { bathTemperature } from "../temperature/law.js";
import {
  cellsOf,
  judgement,
  needed,
  read,
  taken,
  type Cells,
  type Column,
  type Readers,
} from "./noteCells.js";
import { entryOf, refuseFuture } from "../learning/notebook.js";
import { readOutcome } from "../learning/outcome.js";
import type { Outcome, Run } from "../learning/types.js";

/** How to read notes. */
export interface RunNotesOptions extends ParseDilutionOptions {
  /** today's ISO date: rows dated later are rejected */
  readonly today?: string;
}

/** A row that could not be read: its place in the records, the record as it came, and why. */
export interface RejectedNote {
  readonly row: number;
  readonly record: unknown;
  readonly reason: string;
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
 * (or run), date, note (or notes). A heading may carry the unit of bare numbers as its last word: "Time (s)",
 * "temperatureC", "Temp °F", "age h"; numbers under used, temperature and age need one
 * @param options - `colon`: how to read a dilution with a colon; `today`: the ISO date after which rows are
 * rejected
 * @returns the runs, in their order, and each row that could not be read with the reason; what stands in
 * other columns, or beside a failure or a measurement, goes to the run's note
 * @throws TypeError when `records` is not an array or `options` not an object
 * @throws RangeError when `options` is not understood
 *
 * @remarks Cells are read by {@link parseTime}, {@link parseTemperature}, {@link parseDilution}, {@link
 * parseAgitation}, {@link parseUse} and {@link parseAge}, with a decimal comma for a point. Outcomes: "good",
 * "failed", "fogged", steps over or under ("over 1", "N+1", "-0.5"), the right time as a multiple ("x1.2");
 * or a gradient or density with what was wanted; or a time of appearance with its factor. A number without a
 * unit, in the cell or the heading, is rejected, not guessed. A row that says the same run as an earlier one
 * is rejected as its duplicate.
 *
 * @example
 * ```ts
 * const notes = readRunNotes([
 *   { Time: "8:30", Temp: "68F", Dilution: "1+9", Outcome: "over 0.5" },
 *   { Time: "510", Temp: "20 °C", Dilution: "1+9", Outcome: "good" },
 * ]);
 * notes.runs // => [{ timeS: 510, temperatureC: 20, dilution: "1+9", outcome: { kind: "steps", steps: 0.5 } }]
 * notes.rejected[0]?.row // => 1
 * ```
 */
export function readRunNotes(records: readonly unknown[], options: RunNotesOptions = {}): RunNotes {
  const rows = arrayOf("readRunNotes/records", records, 0);
  const { today, ...colon } = plainObject("readRunNotes/options", options) as RunNotesOptions;
  refuseFuture("readRunNotes/options/today", today, []);
  parseDilution("stock", colon);
  const readers = readersFor(colon);
  const columns = new Map<string, Column>();
  const runs: Run[] = [];
  const rejected: RejectedNote[] = [];
  const seen = new Map<string, number>();
  rows.forEach((record, row) => {
    try {
      const run = readRow(cellsOf(record, readers, columns), readers);
      const entry = entryOf("/run", run);
      refuseFuture("", today, [entry]);
      readOutcome("/run", run);
      // A run's text starts with a bracket, an id's with a quotation mark: they share the map and never meet.
      const id = run.id === undefined ? entry.text : JSON.stringify(run.id);
      const twin = seen.get(entry.text);
      if (twin !== undefined) throw new RangeError(`the same run as row ${twin}`);
      const namesake = seen.get(id);
      if (namesake !== undefined) throw new RangeError(`id ${id} is that of row ${namesake}`);
      seen.set(entry.text, row).set(id, row);
      runs.push(run);
    } catch (error) {
      rejected.push({ row, record, reason: (error as Error).message });
    }
  });
  return { runs, rejected };
}

/** How each column is read that holds no plain words. */
function readersFor(options: ParseDilutionOptions): Readers {
  return new Map<string, (text: string) => unknown>([
    ["time", parseTime],
    ["temperature", parseTemperature],
    ["dilution", (text) => dilutionCell(text, options)],
    ["agitation", parseAgitation],
    ["used", parseUse],
    ["age", parseAge],
    ["outcome", judgement],
    ["appearance", parseTime],
    ...["gamma", "density", "wanted", "factor", "sd"].map(
      (field) => [field, (text: string) => numberFromText(text, field)] as const,
    ),
  ]);
}

function readRow(cells: Cells, readers: Readers): Run {
  const value = (field: string): unknown => read(cells, field, readers);
  const run = {
    timeS: needed("time", value("time")),
    temperatureC: bathTemperature("/temperature", needed("temperature", value("temperature"))),
    dilution: value("dilution"),
    agitation: value("agitation"),
    usedCm2PerL: value("used"),
    ageH: value("age"),
    outcome: readResult(cells, value),
    id: taken(cells, "id")?.text,
    date: taken(cells, "date")?.text,
  };
  const notes = cells.map(({ field, heading, text }) => (field === "note" ? text : `${heading}: ${text}`));
  return present({ ...run, note: notes.join("; ") || undefined }) as Run;
}

/**
 * The dilution as text where the text is plain, so that notes stay readable; as parts where a colon had to be
 * read.
 */
function dilutionCell(text: string, options: ParseDilutionOptions): Run["dilution"] {
  const parts = parseDilution(text, options);
  return text.includes(":") ? parts : text;
}

/** A kind of measurement and the fields of its outcome: what was read, what it goes with, and its spread. */
const MEASUREMENTS = [
  ["gamma", "gamma", "wanted", "sd"],
  ["density", "density", "wanted", "sd"],
  ["appearance", "appearanceS", "factor", "logSd"],
] as const;

/** The outcome: a failure says so in words; else what was measured; else the judgement in words. */
function readResult(cells: Cells, value: (field: string) => unknown): Outcome {
  const said = cells.find(({ field }) => field === "outcome");
  const judged = value("outcome") as Outcome | undefined;
  if (judged?.kind === "failed" || judged?.kind === "fogged") return judged;
  const sd = value("sd");
  const measurement = MEASUREMENTS.find(([each]) => cells.some(({ field }) => field === each));
  if (!measurement) return present({ ...needed("outcome", judged), logSd: sd }) as Outcome;
  // Words beside a measurement are kept with the notes.
  if (said) cells.push(said);
  const [kind, field, beside, spread] = measurement;
  return present({
    kind,
    [field]: value(kind),
    [beside]: needed(beside, value(beside)),
    [spread]: sd,
  }) as Outcome;
}
