/*
 * The command: what is asked, file by file, and what comes out of it.
 */
import type { Caution } from "../index.js";
import { besideChart, chartReport, chartText } from "./chart.js";
import { checkLines, checkReport } from "./check.js";
import { placeText, readDocument, type Document } from "./document.js";
import { faultText, isFault, type Fault } from "./fault.js";
import { HELP } from "./help.js";
import { EXIT, type Io } from "./io.js";
import { timeLines } from "./lines.js";
import { notesLines, readNotes, type Notes } from "./notes.js";
import { languageOf, readOptions, type Asked } from "./options.js";
import { pictureReport } from "./picture.js";
import { planCautions, planLines, planReport } from "./plan.js";
import { shelfCautions, shelfLines, shelfReport } from "./shelf.js";
import { timeReport } from "./time.js";
import { wordsOf, type Words } from "./words.js";

/** What one file gave: its data, its text, and the cautions that --strict minds. */
interface Outcome {
  readonly data: object;
  readonly text: string;
  /** what goes beside the text, where the text is for a program or a printer */
  readonly beside?: string;
  readonly cautions: readonly Pick<Caution, "severity">[];
  readonly ok: boolean;
}

/** Longer work says how far it is, ms. */
const PATIENCE_MS = 1000;

/**
 * Runs the command.
 *
 * @param words - the command line behind the program's name
 * @param io - files, streams and clock
 * @returns the exit code
 */
export function run(words: readonly string[], io: Io): number {
  if (words.includes("--help") || words.includes("-h")) return say(io, HELP);
  if (words.includes("--version")) return say(io, `${io.version}\n`);
  try {
    return overFiles(readOptions(words), io);
  } catch (error) {
    if (!isFault(error)) throw error;
    const spoken = wordsOf({ lang: languageOf(words), unit: "C" });
    io.err(`darkroom-kinetics: ${faultText(error, spoken)}\n`);
    return EXIT.wrongUse;
  }
}

function say(io: Io, text: string): number {
  io.out(text);
  return EXIT.fine;
}

function overFiles(asked: Asked, io: Io): number {
  const { files, form, strict } = asked;
  const startMs = io.nowMs();
  const data: object[] = [];
  let worst: number = EXIT.fine;
  const worsen = (code: number): void => {
    worst = Math.max(worst, code);
  };
  files.forEach((file, i) => {
    const outcome = outcomeOf(file, asked, io);
    if ("fault" in outcome) {
      data.push({ file, ...outcome.fault });
      worsen(EXIT.wrongFile);
    } else {
      const { cautions, ok, beside = "" } = outcome;
      data.push(outcome.data);
      if (form !== "json") io.out(`${files.length > 1 && i > 0 ? "\n" : ""}${outcome.text}`);
      io.err(beside);
      if (!ok) worsen(EXIT.wrongFile);
      else if (strict && cautions.some(({ severity }) => severity !== "note")) worsen(EXIT.unwise);
    }
    const left = files.length - i - 1;
    if (io.watched && left > 0 && io.nowMs() - startMs > PATIENCE_MS)
      io.err(`${i + 1} of ${files.length} files\n`);
  });
  if (form === "json") io.out(`${JSON.stringify({ files: data }, undefined, 2)}\n`);
  return worst;
}

/** What a file gives; a fault is told at once, in one sentence. */
function outcomeOf(file: string, asked: Asked, io: Io): Outcome | { readonly fault: object } {
  if (asked.command === "check") {
    const report = checkReport(file, io, asked);
    return {
      data: report,
      text: joined(checkLines(report, wordsOf(asked))),
      cautions: report.cautions,
      ok: report.ok,
    };
  }
  let document: Document | undefined;
  try {
    document = readDocument(file, io);
    if (asked.notes === undefined) return { ok: true, ...answerOf(document, asked) };
    const notes = readNotes(asked.notes, asked.only, io);
    return { ok: true, ...withNotes(answerOf({ ...document, notes }, asked), notes, asked) };
  } catch (error) {
    if (!isFault(error) || error.use === true) throw error;
    io.err(`${placeText(file, document?.text, error)}: ${sentenceOf(error, wordsOf(asked))}\n`);
    const { pointer } = error;
    const message = faultText(error, wordsOf(asked));
    return { fault: { error: { message, ...(pointer === undefined ? {} : { path: pointer }) } } };
  }
}

function sentenceOf(error: Fault, words: Words): string {
  const full = faultText(error, words);
  return error.pointer === undefined || error.pointer === "" ? full : `${error.pointer} ${full}`;
}

function answerOf(document: Document, asked: Asked): Omit<Outcome, "ok"> {
  if (asked.command === "plan") {
    const report = planReport(document, asked);
    return {
      data: report,
      text: joined(planLines(report, wordsOf(asked))),
      cautions: planCautions(report),
    };
  }
  if (asked.command === "brew") {
    const report = shelfReport(document, asked);
    return {
      data: report,
      text: joined(shelfLines(report, wordsOf(asked))),
      cautions: shelfCautions(report),
    };
  }
  if (asked.command === "chart") {
    if (asked.form === "svg") return pictureReport(document, asked);
    const report = chartReport(document, asked);
    const cautions = [...report.cautions, ...report.chart.rows.flatMap(({ cautions: own = [] }) => own)];
    const words = wordsOf(asked);
    const beside = besideChart(report, asked.form, words);
    return { data: report, text: chartText(report, asked.form, words), beside, cautions };
  }
  const report = timeReport(document, asked);
  const brewed = report.brew?.answer.cautions ?? [];
  const cautions = [...report.cautions, ...report.answers.flatMap(({ cautions: own }) => own), ...brewed];
  return { data: report, text: joined(timeLines(report, wordsOf(asked))), cautions };
}

/** An answer with what was read of its notes: above it, or beside what is for a program or a printer. */
function withNotes(answer: Omit<Outcome, "ok">, notes: Notes, asked: Asked): Omit<Outcome, "ok"> {
  const { data, text, beside = "", cautions } = answer;
  const said = joined(notesLines(notes, wordsOf(asked)));
  const above = asked.form === "text";
  // A row that was not read is as unwise as any caution.
  const unread = notes.rejected.map(() => ({ severity: "warn" as const }));
  return {
    data: { ...data, notes },
    text: above ? `${said}\n${text}` : text,
    beside: above ? beside : said + beside,
    cautions: [...notes.cautions, ...unread, ...cautions],
  };
}

function joined(lines: readonly string[]): string {
  return `${lines.join("\n")}\n`;
}
