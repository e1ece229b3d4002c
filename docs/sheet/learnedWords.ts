/* What the section of the runs says, in both languages. Reasons and advice come from the package. */
import type { RunOutcome } from "darkroom-kinetics";
import type { Language } from "./sheet.js";

/** How a run can be judged with one press. */
export type Judged = Extract<RunOutcome["kind"], "good" | "thin" | "dense" | "failed">;

const english = {
  heading: "Learned",
  none: "No run yet. One that is finished in the bath waits here, and notes can be pasted.",
  waiting: (name: string, time: string, temperature: string) =>
    `A run waits${name && `: ${name}`}. It did the work of ${time} at ${temperature}.`,
  elsewhere: "Another known time stands above. This run is judged against its own.",
  knownThen: (known: string) => `Put back ${known}`,
  awayAsked: "Throw this run away?",
  ask: "How did it come out?",
  outcomes: {
    good: "good",
    thin: "too thin",
    dense: "too dense",
    failed: "failed",
  } satisfies Record<Judged, string>,
  other: {
    judged: "judged",
    steps: "by steps",
    gamma: "gradient",
    density: "density",
    appearance: "image",
    fogged: "fogged",
  },
  away: "Throw it away",
  made: (known: string) => `These runs were made with ${known}.`,
  foreign: (count: number, time: string) =>
    `Runs of another known time came with the file, ${time}: ${count}. They count for all but the known time.`,
  takeForeign: "Learn the known time from them too",
  columns: {
    date: "Date",
    time: "Time",
    temperature: "Temperature",
    dilution: "Dilution",
    outcome: "Outcome",
    remove: "Take out",
  },
  field: (column: string, run: number) => `${column} of run ${run}`,
  removeRun: (run: number) => `Take out run ${run}`,
  band: "How the band narrowed",
  before: "before any run",
  after: (run: number) => `after run ${run}`,
  between: (low: string, high: string) => `${low} to ${high}`,
  test: "The test that would help most",
  candidates: {
    today: "today’s bath as it is",
    temperature: (temperature: string) => `today’s bath, but at ${temperature}`,
    dilution: (dilution: string) => `today’s bath, but diluted ${dilution}`,
    fresh: "today’s bath, but fresh",
  },
  worth: (what: string, time: string, spread: string) =>
    `A scrap in ${what}, for ${time}. Today’s time is then known to about ${spread}.`,
  paste: "Notes from a spreadsheet, with their headings",
  pasteHint: "Time, Temp, Dilution and Outcome are enough, a Date is better.",
  read: "Read the notes",
  readRuns: (count: number) => `${count} ${count === 1 ? "run was" : "runs were"} read.`,
  knownRuns: (count: number) =>
    count === 1
      ? "One run is here already, equal in every field. It counts once."
      : `${count} runs are here already, equal in every field. They count once.`,
  rejected: (row: number, reason: string) => `Row ${row} below the headings: ${reason}`,
  unreadColumn: (heading: string) => `The column “${heading}” is not known. It goes with the runs as a note.`,
  unreadCell: (row: number, heading: string, text: string) =>
    `Row ${row} below the headings: ${heading} “${text}” was not read. It goes with the run as a note.`,
};

export type LearnedWords = typeof english;

const german: LearnedWords = {
  heading: "Gelernt",
  none: "Noch keine Entwicklung. Was im Bad fertig wurde, wartet hier. Notizen lassen sich einfügen.",
  waiting: (name, time, temperature) =>
    `Ein Lauf wartet${name && `: ${name}`}. Er wirkte wie ${time} bei ${temperature}.`,
  elsewhere: "Oben steht eine andere bekannte Zeit. Dieser Lauf wird an seiner eigenen beurteilt.",
  knownThen: (known) => `${known} zurückholen`,
  awayAsked: "Diesen Lauf verwerfen?",
  ask: "Wie ist es geworden?",
  outcomes: { good: "gut", thin: "zu dünn", dense: "zu dicht", failed: "misslungen" },
  other: {
    judged: "beurteilt",
    steps: "nach Stufen",
    gamma: "Gradation",
    density: "Dichte",
    appearance: "Bild",
    fogged: "verschleiert",
  },
  away: "Verwerfen",
  made: (known) => `Diese Läufe entstanden mit ${known}.`,
  foreign: (count, time) =>
    `Mit der Datei kamen Läufe zu einer anderen bekannten Zeit, ${time}: ${count}. ` +
    "Sie zählen für alles außer der bekannten Zeit.",
  takeForeign: "Auch die bekannte Zeit aus ihnen lernen",
  columns: {
    date: "Tag",
    time: "Zeit",
    temperature: "Temperatur",
    dilution: "Verdünnung",
    outcome: "Ergebnis",
    remove: "Streichen",
  },
  field: (column, run) => `${column} von Lauf ${run}`,
  removeRun: (run) => `Lauf ${run} streichen`,
  band: "Wie das Band schmaler wurde",
  before: "vor jedem Lauf",
  after: (run) => `nach Lauf ${run}`,
  between: (low, high) => `${low} bis ${high}`,
  test: "Der Versuch, der am meisten hilft",
  candidates: {
    today: "im Bad von heute",
    temperature: (temperature) => `im Bad von heute, aber bei ${temperature}`,
    dilution: (dilution) => `im Bad von heute, aber ${dilution} verdünnt`,
    fresh: "im Bad von heute, aber frisch",
  },
  worth: (what, time, spread) =>
    `Ein Probestück ${what}, ${time} lang. Die Zeit von heute ist dann auf etwa ${spread} bekannt.`,
  paste: "Notizen aus einer Tabelle, mit ihren Überschriften",
  pasteHint: "Zeit, Temperatur, Verdünnung und Ergebnis genügen, am besten mit Datum.",
  read: "Notizen lesen",
  readRuns: (count) => `${count} ${count === 1 ? "Lauf" : "Läufe"} gelesen.`,
  knownRuns: (count) =>
    count === 1
      ? "Ein Lauf steht hier schon, in allem gleich. Er zählt einmal."
      : `${count} Läufe stehen hier schon, in allem gleich. Sie zählen einmal.`,
  rejected: (row, reason) => `Zeile ${row} unter den Überschriften: ${reason}`,
  unreadColumn: (heading) => `Die Spalte „${heading}“ ist nicht bekannt. Sie geht als Notiz mit den Läufen.`,
  unreadCell: (row, heading, text) =>
    `Zeile ${row} unter den Überschriften: ${heading} „${text}“ wurde nicht gelesen. Es geht als Notiz mit dem Lauf.`,
};

export const learnedWordsOf = (language: Language): LearnedWords => (language === "de" ? german : english);
