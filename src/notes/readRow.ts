import type { Problem } from "../compensate/checkConditions.js";
import { isInputError } from "../core/errors.js";
import { refuse } from "../core/guards.js";
import { present } from "../core/ordered.js";
import type { Outcome, Run } from "../learning/types.js";
import { withPoint } from "../quantities/numberText.js";
import { judgement } from "./judgement.js";
import { beside, main, only, said, take, told, type Cells, type Readers } from "./noteCells.js";

/** Reads a row: the run, as far as there are no problems. */
export function readRow(cells: Cells, readers: Readers, problems: Problem[]): Run {
  const value = (field: string): unknown => main(cells, field, readers, problems);
  const words = (field: string): string | undefined => {
    const cell = only(cells, field);
    if (cell) take(cells, cell);
    return cell?.text;
  };
  const needed = (field: string): unknown => {
    const given = cells.some((cell) => cell.field === field);
    const read = value(field);
    if (!given) told(problems, field, field, () => missing());
    return read;
  };
  const run = {
    timeS: needed("time"),
    temperatureC: needed("temperature"),
    dilution: value("dilution"),
    agitation: value("agitation"),
    usedCm2PerL: value("used"),
    ageH: value("age"),
    outcome: readResult(cells, readers, problems),
    id: words("id"),
    date: beside(cells, "date", readers),
    thermometer: words("thermometer"),
    by: words("by"),
    printed: beside(cells, "printed", readers),
  };
  const notes = cells.map(({ field, heading, text }) => (field === "note" ? text : `${heading}: ${text}`));
  return present({ ...run, note: notes.join("; ") || undefined }) as Run;
}

const missing = (): never => refuse("", "is missing", undefined, {}, "missing");

/** A kind of measurement and the fields of its outcome: what was read, what it goes with, and its spread. */
const MEASUREMENTS = [
  ["gamma", "gamma", "wanted", "sd"],
  ["density", "density", "wanted", "sd"],
  ["appearance", "appearanceS", "factor", "logSd"],
] as const;

/**
 * The outcome: a failure says so in words; else what was measured; else the judgement in words, in its own
 * column or among the remarks. Words beside a measurement, and a measurement that cannot be read beside
 * words, are kept in the note.
 */
function readResult(cells: Cells, readers: Readers, problems: Problem[]): Outcome | undefined {
  const words = only(cells, "outcome");
  const judged = words && quietly(() => said(words, readers) as Outcome);
  if (words && (judged?.kind === "failed" || judged?.kind === "fogged")) {
    take(cells, words);
    return judged;
  }
  const measurement = MEASUREMENTS.find(([each]) => cells.some(({ field }) => field === each));
  if (measurement) {
    const [kind, field, other, spread] = measurement;
    const pair = [only(cells, kind), only(cells, other)].map(
      (cell) => cell && quietly(() => said(cell, readers)),
    );
    if (pair[0] !== undefined && pair[1] !== undefined) {
      // Both are taken out: they have just been read.
      const outcome = { kind, [field]: beside(cells, kind, readers), [other]: beside(cells, other, readers) };
      if (words) cells.push(...cells.splice(cells.indexOf(words), 1));
      return present({ ...outcome, [spread]: beside(cells, "sd", readers) }) as Outcome;
    }
    if (!judged) {
      for (const each of [kind, other]) {
        const given = cells.some((cell) => cell.field === each);
        main(cells, each, readers, problems);
        if (!given) told(problems, each, each, () => missing());
      }
      return undefined;
    }
  }
  if (cells.some(({ field }) => field === "outcome")) {
    const read = main(cells, "outcome", readers, problems) as Outcome | undefined;
    if (!read) return undefined;
    const plain = read.kind === "thin" || read.kind === "dense";
    return present({ ...read, logSd: plain ? undefined : beside(cells, "sd", readers) }) as Outcome;
  }
  return remarked(cells) ?? told<Outcome>(problems, "outcome", "outcome", missing);
}

/** A judgement among the remarks: a whole remark, or a part of one between commas. */
function remarked(cells: Cells): Outcome | undefined {
  for (const { field, text } of cells)
    if (field === "note")
      for (const part of [text, ...text.split(/[,;.]\s+/)]) {
        const outcome = quietly(() => judgement(withPoint(part.trim())));
        if (outcome) return outcome;
      }
  return undefined;
}

/** What can be read; nothing where it cannot. */
function quietly<T>(read: () => T): T | undefined {
  try {
    return read();
  } catch (error) {
    if (!isInputError(error)) throw error;
    return undefined;
  }
}
