import { arrayOf, plainObject } from "../core/guards.js";
import { parseDilution, type ParseDilutionOptions } from "../dilution/parseDilution.js";
import { bathTemperature } from "../temperature/law.js";
import { ageCell, agitationCell, cellText, numberCell, outcomeCell, readHeading, temperatureCell, timeCell, usedCell, withPoint } from "./noteCells.js";
import { entryOf, refuseFuture } from "./notebook.js";
import { readOutcome } from "./outcome.js";
import type { Outcome, Run } from "./types.js";

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
 * @param records - one object a row, headings as keys, cells of text or numbers, blanks allowed. Columns: time, temperature (or temp), dilution,
 * agitation, used, age, outcome (or result), gamma (or gradient), density, wanted, appearance, factor, sd, id (or run), date, note. A heading may
 * carry the unit: "Time (s)", "temperatureC", "Temp °F", "age h"
 * @param options - `colon`: how to read a dilution with a colon; `today`: the ISO date after which rows are rejected
 * @returns the runs, in their order, and each row that could not be read with the reason; what stands in other columns goes to the run's note
 * @throws TypeError when `records` is not an array or `options` not an object
 * @throws RangeError when `options` is not understood
 *
 * @remarks Outcomes: "good", "failed", "fogged", steps over or under ("over 1", "N+1", "-0.5"), the right time as a multiple ("x1.2"); or a
 * gradient or density with what was wanted; or a time of appearance with its factor. A number without a unit, in the cell or the heading, is
 * rejected, not guessed. A row equal to an earlier one in every cell is rejected as its duplicate.
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
  arrayOf("readRunNotes: records", records, 0);
  const { today, ...colon } = plainObject("readRunNotes: options", options) as RunNotesOptions;
  refuseFuture("readRunNotes: options.today", today, []);
  parseDilution("stock", colon);
  const runs: Run[] = [];
  const rejected: RejectedNote[] = [];
  const seen = new Map<string, number>();
  records.forEach((record, row) => {
    try {
      const run = readRow(record, colon);
      const entry = entryOf("run", run);
      refuseFuture("", today, [entry]);
      readOutcome("run", run);
      // A run's text starts with a bracket, an id's with a quotation mark: they share the map and never meet.
      const id = run.id === undefined ? entry.text : JSON.stringify(run.id);
      const twin = seen.get(entry.text);
      if (twin !== undefined) throw new RangeError(`the same as row ${twin} in every cell`);
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

/** Columns whose text stays as it is. */
const WORDS: readonly unknown[] = [undefined, "id", "date", "note"];

/** Reads a cell: its text, the unit of its heading, its field. */
type CellReader<T> = (text: string, unit: string, field: string) => T;

function readRow(record: unknown, options: ParseDilutionOptions): Run {
  const cells = new Map<string, readonly [text: string, unit: string]>();
  const notes: string[] = [];
  for (const [heading, cell] of Object.entries(plainObject("row", record))) {
    const { field, unit } = readHeading(heading);
    const text = cellText(cell);
    const wordy = WORDS.includes(field);
    // A quotient by nothing, in a column of words, says nothing about the run; where a figure belongs it is refused.
    if (text === "" || (wordy && (cell === Infinity || cell === -Infinity))) continue;
    if (field === undefined) notes.push(`${heading}: ${text}`);
    else if (cells.has(field)) throw new RangeError(`${field} must stand in one column, got two`);
    else cells.set(field, [wordy ? text : withPoint(text), unit]);
  }
  const cell = <T>(field: string, read: CellReader<T>): T | undefined => {
    const found = cells.get(field);
    return found && read(...found, field);
  };
  const needed = <T>(field: string, read: CellReader<T>): T => {
    if (!cells.has(field)) throw new RangeError(`${field} is missing`);
    return cell(field, read) as T;
  };
  const asIs = (text: string): string => text;
  const found = {
    timeS: needed("time", timeCell),
    temperatureC: bathTemperature("temperature", needed("temperature", temperatureCell)),
    dilution: cell("dilution", (text) => dilutionCell(text, options)),
    agitation: cell("agitation", agitationCell),
    usedCm2PerL: cell("used", usedCell),
    ageH: cell("age", ageCell),
    outcome: readResult(cell, needed),
    id: cell("id", asIs),
    date: cell("date", asIs),
    note: [cell("note", asIs) ?? [], ...notes].flat().join("; ") || undefined,
  };
  return Object.fromEntries(Object.entries(found).filter(([, value]) => value !== undefined)) as unknown as Run;
}

/** The dilution as text where the text is plain, so that notes stay readable; as parts where a colon had to be read. */
function dilutionCell(text: string, options: ParseDilutionOptions): Run["dilution"] {
  const parts = parseDilution(text, options);
  return text.includes(":") ? parts : text;
}

/** The outcome: a failure says so in words; else what was measured; else the judgement in words. */
function readResult(cell: <T>(field: string, read: CellReader<T>) => T | undefined, needed: <T>(field: string, read: CellReader<T>) => T): Outcome {
  const words = cell("outcome", outcomeCell);
  if (words?.kind === "failed" || words?.kind === "fogged") return words;
  const gamma = cell("gamma", numberCell);
  const density = cell("density", numberCell);
  const appearanceS = cell("appearance", timeCell);
  const sd = cell("sd", numberCell);
  const measured = (): { readonly wanted: number; readonly sd?: number } => ({
    wanted: needed("wanted", numberCell),
    ...(sd === undefined ? {} : { sd }),
  });
  if (gamma !== undefined) return { kind: "gamma", gamma, ...measured() };
  if (density !== undefined) return { kind: "density", density, ...measured() };
  const judged = appearanceS === undefined ? (words ?? needed("outcome", outcomeCell)) : { kind: "appearance", appearanceS, factor: needed("factor", numberCell) };
  return (sd === undefined ? judged : { ...judged, logSd: sd }) as Outcome;
}
