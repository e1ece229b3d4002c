/*
 * The whole state of the page as one plain JSON object, and the store that keeps it. All else is derived from
 * it in answer.ts.
 */
import {
  formatTemperature,
  isInputError,
  parseAgitation,
  parseCount,
  parseTemperature,
  type HandbookDeveloper,
  type Knowledge,
  type DevelopmentRun,
} from "darkroom-kinetics";
import { derive, type Answer } from "./answer.js";
import type { BathState } from "./bath.js";
import { emptyShelf, type ShelfState } from "./shelf.js";
import { wordsOf, type Words } from "./words.js";

/** The blanks of the two sentences, by name. */
export const blankNames = [
  "name",
  "time",
  "knownTemperature",
  "knownDilution",
  "knownAgitation",
  "spread",
  "temperature",
  "dilution",
  "agitation",
  "count",
  "format",
  "volume",
  "age",
  "push",
] as const;

export type BlankName = (typeof blankNames)[number];
export type Language = "en" | "de";
export type Unit = "C" | "F";
export type Developer = HandbookDeveloper | "brew" | "unknown" | "file";
export type Texts = Readonly<Record<BlankName, string>>;

/** One sheet. It survives JSON. */
export interface Sheet {
  readonly version: 1;
  readonly language: Language;
  readonly unit: Unit;
  /** as written, readable or not */
  readonly texts: Texts;
  /** the last text of each blank that could be read */
  readonly read: Texts;
  readonly developer: Developer;
  /** laws from a file, for the developer "file" */
  readonly laws?: Knowledge | undefined;
  /** nothing was changed yet: the invented evening */
  readonly invented: boolean;
  /** the time of the piece of the test strip that looked right, s */
  readonly ticked?: number | undefined;
  readonly runs: readonly DevelopmentRun[];
  readonly shelf: ShelfState;
  readonly bath?: BathState | undefined;
}

/** What the blanks of the invented evening say. */
export const evening: Texts = {
  name: "Film A",
  time: "8:30",
  knownTemperature: "20 °C",
  knownDilution: "1+9",
  knownAgitation: "every 60 s",
  spread: "10 %",
  temperature: "14 °C",
  dilution: "1+14",
  agitation: "every 60 s",
  count: "3",
  format: "9x12 cm",
  volume: "500 ml",
  age: "3 h",
  push: "0",
};

/** An invented evening: a weekend workshop in a mountain hut, tap water at 14 °C. */
export const inventedSheet: Sheet = {
  version: 1,
  language: "en",
  unit: "C",
  texts: evening,
  read: evening,
  developer: "metol-hydroquinone",
  invented: true,
  runs: [],
  shelf: emptyShelf,
};

/** What most people would write the same. */
function usualTexts(language: Language): Partial<Texts> {
  const { spread, format, volume, push } = evening;
  const { every, none } = wordsOf(language);
  const agitation = every(60);
  return { knownAgitation: agitation, agitation, spread, format, volume, count: none, age: "0 h", push };
}

/**
 * What a blank is taken as when it is empty: dilution and movement as for the known time, of the others what most
 * people would write. Nothing where it must be filled in.
 */
export function emptyAs(
  name: BlankName,
  { knownDilution, knownAgitation }: Texts,
  language: Language,
): string {
  const as: Partial<Texts> = {
    ...usualTexts(language),
    dilution: knownDilution,
    ...(knownAgitation === "" ? {} : { agitation: knownAgitation }),
  };
  return as[name] ?? "";
}

/** A sheet to fill in: what most people would write the same stands in it already. */
export function emptySheet({ language, unit }: Sheet): Sheet {
  const usual = usualTexts(language);
  const texts = {
    ...evening,
    name: "",
    time: "",
    knownTemperature: "",
    knownDilution: "",
    temperature: "",
    dilution: "",
  };
  return {
    ...inventedSheet,
    language,
    unit,
    texts: { ...texts, ...usual },
    read: { ...texts, ...usual },
    developer: "unknown",
    invented: false,
    ticked: undefined,
    bath: undefined,
    laws: undefined,
  };
}

/** The blanks that count only for the invented bath and still hold what was invented. */
export const inventedBlanks = ({ texts }: Sheet): readonly BlankName[] =>
  (["name", "count", "age"] as const).filter((name) => texts[name] === evening[name]);

/** The texts of a sheet that was stored before there were a name and a push. */
const withLater = (texts: Omit<Texts, "name" | "push"> & Partial<Texts>): Texts => ({
  ...texts,
  name: texts.name ?? "",
  push: texts.push ?? "0",
});

/** A sheet that was stored, with all blanks; one without any texts is refused. */
export const storedSheet = (sheet: Sheet): Sheet => ({
  ...sheet,
  texts: withLater(sheet.texts),
  read: withLater(sheet.read),
});

/** The store: the sheet, what follows from it, and who wants to hear of a change. */
export interface Store {
  readonly sheet: Sheet;
  readonly answer: Answer;
  /** puts these fields in the place of the old ones, and tells all sections */
  readonly change: (part: Partial<Sheet>) => void;
  /** writes into one blank */
  readonly write: (name: BlankName, text: string) => void;
  readonly subscribe: (listener: () => void) => void;
}

/** Makes a store; `keep` is called with each new sheet. */
export function storeOf(first: Sheet, keep: (sheet: Sheet) => void = () => undefined): Store {
  let sheet = first;
  let answer = derive(sheet);
  const listeners: (() => void)[] = [];
  const change = (part: Partial<Sheet>): void => {
    sheet = { ...sheet, ...part };
    try {
      answer = derive(sheet, answer);
      sheet = { ...sheet, read: answer.read };
    } catch (error) {
      // Whatever it is, the page stays alive: the last answer stays, and says that it is old.
      console.error(error);
      answer = { ...answer, stale: true };
    }
    keep(sheet);
    for (const listener of listeners) listener();
  };
  return {
    get sheet() {
      return sheet;
    },
    get answer() {
      return answer;
    },
    change,
    write: (name, text) => {
      if (sheet.texts[name] === text) return;
      // A name changes no time: what was ticked stays.
      const ticked = name === "name" ? sheet.ticked : undefined;
      change({ texts: { ...sheet.texts, [name]: text }, invented: false, ticked });
    },
    subscribe: (listener) => {
      listeners.push(listener);
    },
  };
}

/** The same sheet in another language: blanks that hold words are written anew. */
export function inLanguage({ texts, read }: Sheet, language: Language): Partial<Sheet> {
  const words = wordsOf(language);
  const anew = (all: Texts): Texts => ({
    ...all,
    knownAgitation: agitationText(all.knownAgitation, words),
    agitation: agitationText(all.agitation, words),
    count: readOr(() => parseCount(all.count), 1) === 0 ? words.none : all.count,
  });
  return { language, texts: anew(texts), read: anew(read) };
}

function agitationText(text: string, words: Words): string {
  const agitation = readOr(() => parseAgitation(text), undefined);
  if (agitation === undefined) return text;
  return typeof agitation === "string" ? words.agitations[agitation] : words.every(agitation.everyS);
}

/** What was read, or this where it cannot be read. */
function readOr<Value, Other>(read: () => Value, other: Other): Value | Other {
  try {
    return read();
  } catch (error) {
    if (!isInputError(error)) throw error;
    return other;
  }
}

/** The same sheet in the other unit: temperatures that can be read are written anew. */
export function inUnit(
  { unit: before, texts, read }: Sheet,
  unit: Unit,
): Pick<Sheet, "unit" | "texts" | "read"> {
  const written = (text: string): string =>
    readOr(() => formatTemperature(parseTemperature(text, { unit: before }), { unit }), text);
  const anew = (all: Texts): Texts => ({
    ...all,
    knownTemperature: written(all.knownTemperature),
    temperature: written(all.temperature),
  });
  return { unit, texts: anew(texts), read: anew(read) };
}
