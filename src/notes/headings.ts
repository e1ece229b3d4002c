/*
 * Module: notes. Which column a heading means, and the unit that it gives to bare numbers below it.
 */
import { isInputError } from "../core/errors.js";
import { refuse } from "../core/guards.js";
import { nearestName } from "../core/nearestName.js";
import { knownFieldText } from "../core/text.js";

/** Reads a cell; `besides` is what its heading says behind the column, such as "pull". */
export type Reader = (text: string, besides?: string) => unknown;

/** How the cells of each column are read that holds no plain words. */
export type Readers = ReadonlyMap<string, Reader>;

/** The columns, and the words that head them in English and German, without marks on their letters. */
const COLUMNS = {
  time: "zeit dauer entwicklungszeit entwicklung entw",
  temperature: "temp temperatur badtemperatur entwicklertemperatur entwicklertemp",
  dilution: "dil verdunnung verduennung verd",
  agitation: "agit every bewegung kippen kipprhythmus",
  used: "use gebrauch benutzt genutzt",
  age: "alter badalter",
  push: "pushed pushen gepusht",
  outcome: "result verdict judgement judgment ergebnis urteil resultat beurteilung bewertung",
  date: "day datum tag",
  gamma: "gradient",
  density: "dichte",
  wanted: "soll gewunscht",
  appearance: "erscheinen",
  factor: "faktor",
  sd: "streuung",
  printed: "gedruckt",
  volume: "vol volumen",
  id: "run nr lauf",
  thermometer: "thermom",
  by: "who wer von",
  batch: "bottle mixing ansatz flasche charge",
  material: "film plate paper emulsion platte papier",
  developer: "entwickler",
  note: "notes remark remarks comment comments bemerkung bemerkungen notiz notizen anmerkung kommentar",
} as const;

/** The words of headings and the columns that they head. */
const WORDS: ReadonlyMap<string, string> = new Map([
  ...Object.entries(COLUMNS).flatMap(([column, words]) =>
    [column, ...words.split(" ")].map((word): [string, string] => [word, column]),
  ),
  // These say the unit too.
  ...["minutes", "mins", "minuten"].map((word): [string, string] => [word, "time min"]),
  ...["seconds", "secs", "sekunden"].map((word): [string, string] => [word, "time s"]),
  ...["rolls", "rollen"].map((word): [string, string] => [word, "used rolls"]),
  ["rolls/l", "used rolls/l"],
  ...["pull", "pulled", "pullen", "gepullt"].map((word): [string, string] => [word, "push pull"]),
]);

const PUSH_OR_PULL = "(?:push|pull)(?:ed|en)?";
/** Push and pull in one column, by their sign: "Push/Pull", "Push +/-". */
const EITHER_WAY = new RegExp(
  String.raw`^(?:${PUSH_OR_PULL} ?[-/&]? ?${PUSH_OR_PULL}|push(?:en)? ?(?:\+ ?/ ?[-\u2212]|\u00b1))(?= |$)`,
);

/** What may stand before a column: "Bath temp", "Dev. time". */
const OWNERS = /^(developer|development|dev|bath|entwickler|entwicklung|entw|bad)(?: ([^ ]*)|$)/;

/** Development cut short, or as a word: the time, or the developer by its name. */
const BARE_DEVELOPMENT = /^(?:dev(?:elopment)?|entw(?:icklung)?)$/;
/** The same where a unit may follow. */
const DEVELOPMENT = /^(?:dev(?:elopment)?|entw(?:icklung)?)(?= |$)/;

/** What may stand behind a film or a developer without another meaning. */
const OF_NAMES = /^(?:name|type|brand|stock|typ|sorte|marke)$/;

/** The columns that hold names of what a notebook is kept of, one notebook for each. */
export const NAMES = ["material", "developer"] as const;
export const isName = (field: string): field is (typeof NAMES)[number] =>
  (NAMES as readonly string[]).includes(field);

/** The unit of a clock: "mm:ss", "h:mm:ss". */
const CLOCK_UNIT = /^(?:h+ )?(?:m+|min) (?:s+|sec|sek)$/;

/** A column, and what its heading says besides, which has to be the unit of bare numbers in it. */
export interface Column {
  readonly field: string;
  readonly unit: string;
  /** a bracket holds what is no unit of the column */
  readonly refused?: boolean;
}

/** The words of a heading, without marks on their letters. */
function wordsOf(heading: string): string {
  return heading
    .replace(/([a-z\d])([A-Z])/g, "$1 $2")
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/(?<=[a-z.])-(?=[a-z])/g, " ")
    .replace(/[\s_:.?()[\]]+/g, " ")
    .trim()
    .replace(EITHER_WAY, "push")
    .replace(/^(?:film|paper|plate) (?=dev(?:eloper|elopment)?(?: |$))/, "");
}

/** Whether a heading may mean the time as well as the developer: "Dev", "Development". */
export function isBareDevelopment(heading: string): boolean {
  return BARE_DEVELOPMENT.test(wordsOf(heading));
}

/** Reads a heading such as "Time (s)", "temperatureC", "Temp °F", "Dev. time [min]", "Zeit in min". */
export function readHeading(heading: string): Column {
  const words = wordsOf(heading);
  const [, whose, next = ""] = OWNERS.exec(words) ?? [];
  const own =
    whose === undefined
      ? words
      : WORDS.has(next)
        ? words.slice(whose.length + 1)
        : OF_NAMES.test(next)
          ? "developer"
          : words.replace(DEVELOPMENT, "time");
  const [first = "", ...rest] = own.split(" ");
  const [field = first, ...units] = (WORDS.get(first) ?? first).split(" ");
  if (isName(field) && rest.every((word) => OF_NAMES.test(word))) return { field, unit: "" };
  const unit = [...units, ...rest].join(" ").replace(/^in (?=.)/, "");
  return { field, unit: CLOCK_UNIT.test(unit) ? unit.replaceAll(" ", ":") : unit };
}

/** Refuses a heading that is that of no column; the names of the columns are what it may be. */
export function unknownHeading(heading: string): never {
  const values = Object.keys(COLUMNS);
  const words = wordsOf(heading);
  const hint = nearestName(
    words,
    [...WORDS.keys()].filter((word) => mayBe(words, word)),
  );
  return refuse("", "known-field", knownFieldText, { values, ...(hint && { hint }) }, heading, "not-one-of");
}

/** Whether a word may be misspelt as another, or cut short: they begin alike and are about as long. */
function mayBe(misspelt: string, word: string): boolean {
  const [short, long] = misspelt.length < word.length ? [misspelt, word] : [word, misspelt];
  return (
    word[0] === misspelt[0] && (long.startsWith(short) || 3 * (long.length - short.length) <= long.length)
  );
}

/** Whether a column is one of those that are read. */
export function isColumn(field: string): boolean {
  return Object.hasOwn(COLUMNS, field);
}

/** The columns without which a row is no run, or says what it does not know. */
const MAIN: readonly string[] = [
  "time",
  "temperature",
  "dilution",
  "agitation",
  "used",
  "age",
  "push",
  "outcome",
];

/**
 * The column of a heading, if what it holds besides is a unit; a time of day, or of fixing, is a column
 * that is not known.
 */
export function columnOf(heading: string, readers: Readers): Column {
  const column = readHeading(heading);
  const { field, unit } = column;
  if (unit === "" || (field === "time" && unit.includes(":"))) return column;
  const reader = readers.get(field);
  try {
    (reader as Reader)(`1 ${unit}`);
    return column;
  } catch (error) {
    // A unit of the column, though 1 of it is out of range: 1 °F is no bath; or rolls of no volume yet.
    if (isInputError(error) && ["out-of-range", "needs-counterpart"].includes(error.code)) return column;
    // A bracket holds a unit: to pass it over would be to guess.
    const refused = MAIN.includes(field) && /[([]/.test(heading);
    return refused ? { field, unit, refused } : { field: "", unit };
  }
}
