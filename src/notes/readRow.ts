import { inputError, isInputError, type CheckProblem, type InputError } from "../core/errors.js";
import { ambiguous, type TextForm } from "../core/guards.js";
import { present } from "../core/ordered.js";
import { isUnknown } from "../core/unknown.js";
import type { RunOutcome, DevelopmentRun } from "../learning/types.js";
import { PUSHES } from "../push/parseStops.js";
import { judgement, OUTCOMES, saysLengthAlone, tellsFog } from "./judgement.js";
import type { Readers } from "./headings.js";
import { beside, main, only, said, take, textWithUnit, told, type Cell, type Cells } from "./noteCells.js";
import { pushesIn } from "./pushCell.js";
import { missingText } from "./text.js";

/** Reads a row: the run, as far as there are no problems. What is left in `cells` was not read. */
export function readRow(cells: Cells, readers: Readers, problems: CheckProblem[]): DevelopmentRun {
  measuredInWords(cells);
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
    usedCm2PerL: readUse(cells, readers, problems),
    ageH: isUnknown(only(cells, "age")?.text) ? undefined : value("age"),
    pushStops: readPush(cells, readers, problems),
    outcome: readResult(cells, readers, problems),
    id: words("id"),
    date: beside(cells, "date", readers),
    thermometer: words("thermometer"),
    by: words("by"),
    batch: words("batch"),
    printed: beside(cells, "printed", readers),
  };
  const notes = cells.map(({ field, heading, text }) => (field === "note" ? text : `${heading}: ${text}`));
  return present({ ...run, note: notes.join("; ") || undefined }) as DevelopmentRun;
}

/** The stops of a push, in its column and among the remarks; nothing of a film that was not pushed. */
function readPush(cells: Cells, readers: Readers, problems: CheckProblem[]): number | undefined {
  const column = only(cells, "push");
  const value = main(cells, "push", readers, problems) as number | undefined;
  const inColumn = column && value !== undefined ? [{ cell: column, part: column.text, value }] : [];
  const remarked = cells
    .filter(({ field }) => field === "note")
    .flatMap((cell) =>
      (told(problems, cell.heading, cell.heading, () => pushesIn(cell.text)) ?? []).map((push) => ({
        cell,
        ...push,
      })),
    );
  return agreed([...inColumn, ...remarked], PUSHES, problems) || undefined;
}

/** What a part of a cell says. */
interface Statement<T> {
  readonly cell: Cell;
  readonly part: string;
  readonly value: T;
}

/** What all say; two that differ are a problem. */
function agreed<T>(all: readonly Statement<T>[], form: TextForm, problems: CheckProblem[]): T | undefined {
  const [first, ...others] = all;
  if (first === undefined) return undefined;
  const other = others.find(({ value }) => JSON.stringify(value) !== JSON.stringify(first.value));
  if (other === undefined) return first.value;
  const { heading, text } = first.cell;
  return told<T>(problems, heading, heading, () => ambiguous("", form, [first.part, other.part], text));
}

/**
 * Use in cm²/l. An amount of film needs the volume of the bath, which may have a column; without one it is
 * left for the note.
 */
function readUse(cells: Cells, readers: Readers, problems: CheckProblem[]): unknown {
  const cell = only(cells, "used");
  const amount = cell && failure(() => said(cell, readers))?.code === "needs-counterpart";
  if (!amount) return main(cells, "used", readers, problems);
  const volume = only(cells, "volume");
  const ml = volume && quietly(() => said(volume, readers));
  if (ml === undefined) return undefined;
  const text = `${textWithUnit(cell)}/${ml as number} ml`;
  cells.splice(cells.indexOf(cell), 1, { ...cell, text, unit: "" });
  return main(cells, "used", readers, problems);
}

const IN_WORDS = new RegExp(
  String.raw`^(gamma|gradient|\u03b3|ci|density|dichte)\s*[=:]?\s*(\d+(?:[.,]\d+)?)` +
    String.raw`(?:[,;]?\s*(?:wanted|instead of|statt|soll)\s*(\d+(?:[.,]\d+)?))?$`,
  "i",
);

/** "gamma 0.58" among the outcomes is a measurement, as it were in the column of that name. */
function measuredInWords(cells: Cells): void {
  const cell = only(cells, "outcome");
  const [, kind, measured, wanted] = (cell && IN_WORDS.exec(cell.text)) ?? [];
  if (cell === undefined || kind === undefined || measured === undefined) return;
  const field = /^d/i.test(kind) ? "density" : "gamma";
  if (cells.some((each) => each.field === field)) return;
  take(cells, cell);
  cells.push({ ...cell, field, unit: "", text: measured });
  if (wanted !== undefined) cells.push({ ...cell, field: "wanted", unit: "", text: wanted });
}

const missing = (): never => {
  throw inputError(RangeError, "", "missing", {}, undefined, missingText);
};

/** A kind of measurement and the fields of its outcome: what was read, what it goes with, and its spread. */
const MEASUREMENTS = [
  ["gamma", "gamma", "wanted", "sd"],
  ["density", "density", "wanted", "sd"],
  ["appearance", "appearanceS", "factor", "logSd"],
] as const;

/**
 * The outcome: a failure says so in words; else what was measured on the negative; else the judgement in
 * words, in its own column or among the remarks; else the time of appearance, which foretells the time to 10
 * to 15 %, and that of a brew to a factor of three. What is not used is kept in the note.
 */
function readResult(cells: Cells, readers: Readers, problems: CheckProblem[]): RunOutcome | undefined {
  const words = only(cells, "outcome");
  const judged = words && quietly(() => said(words, readers) as RunOutcome);
  if (words && (judged?.kind === "failed" || judged?.kind === "fogged")) {
    take(cells, words);
    return judged;
  }
  const inColumn = cells.some(({ field }) => field === "outcome");
  const remark = cells.find(({ field, text }) => field === "note" && judgedIn(text).length > 0);
  const inWords = judged !== undefined || (remark !== undefined && !inColumn);
  const measurement = MEASUREMENTS.find(([each]) => cells.some(({ field }) => field === each));
  if (measurement && !(inWords && measurement[0] === "appearance")) {
    const [kind, field, other, spread] = measurement;
    const pair = [only(cells, kind), only(cells, other)].map(
      (cell) => cell && quietly(() => said(cell, readers)),
    );
    if (pair[0] !== undefined && pair[1] !== undefined) {
      // Both are taken out: they have just been read.
      const outcome = { kind, [field]: beside(cells, kind, readers), [other]: beside(cells, other, readers) };
      if (words) cells.push(...cells.splice(cells.indexOf(words), 1));
      return present({ ...outcome, [spread]: beside(cells, "sd", readers) }) as RunOutcome;
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
  if (inColumn) {
    const read = main(cells, "outcome", readers, problems) as RunOutcome | undefined;
    if (!read) return undefined;
    // The outcome holds no fog beside another judgement.
    if (words && tellsFog(words.text) && !cells.includes(words)) cells.push(words);
    const plain = read.kind === "thin" || read.kind === "dense";
    return present({ ...read, logSd: plain ? undefined : beside(cells, "sd", readers) }) as RunOutcome;
  }
  if (remark === undefined) return told<RunOutcome>(problems, "outcome", "outcome", missing);
  return agreed(
    judgedIn(remark.text).map((judged) => ({ cell: remark, ...judged })),
    OUTCOMES,
    problems,
  );
}

/** A judgement, and the part of a remark that holds it. */
type Judged = Pick<Statement<RunOutcome>, "part" | "value">;

/** The judgements in a remark: the whole of it, or its parts between commas. */
function judgedIn(text: string): readonly Judged[] {
  const of = (part: string): readonly Judged[] => {
    const value = saysLengthAlone(part) ? undefined : quietly(() => judgement("", part));
    return value ? [{ part, value }] : [];
  };
  const whole = of(text);
  return whole.length > 0 ? whole : text.split(/[,;.]\s+/).flatMap(of);
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

/** Why it cannot be read; nothing where it can. */
function failure(read: () => unknown): InputError | undefined {
  try {
    read();
    return undefined;
  } catch (error) {
    if (!isInputError(error)) throw error;
    return error;
  }
}
