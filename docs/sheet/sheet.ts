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
  formatDilution,
  parseDilution,
  type Agitation,
  type DevelopmentRun,
  type Dilution,
  type Recipe,
} from "darkroom-kinetics";
import { derive, type Answer } from "./answer.js";
import { newBath, type BathState } from "./bath.js";
import { emptyShelf, type ShelfState } from "./shelf.js";
import { wordsOf } from "./words.js";

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
  /** the recipe that was opened, without its runs, or that of the brew that was taken */
  readonly recipe?: Recipe | undefined;
  /** what the blanks said when it was opened: one that still says so means the recipe's own value */
  readonly written?: Partial<Texts> | undefined;
  /** nothing was changed yet: the invented evening */
  readonly invented: boolean;
  /** it began as the invented evening, and nobody said that the rest of it is right */
  readonly began?: "invented" | undefined;
  /** the time of the piece of the test strip that looked right, s */
  readonly ticked?: number | undefined;
  readonly runs: readonly DevelopmentRun[];
  /** the name and the known time that the first of them was made with */
  readonly made?: Pick<Texts, "name" | "time"> | undefined;
  readonly shelf: ShelfState;
  readonly bath?: BathState | undefined;
  /** what the last change took away of one's own */
  readonly before?: Before | undefined;
}

/** Fields as they were; null where there was nothing, which survives JSON. */
export type Before = { readonly [Name in Exclude<keyof Sheet, "before">]?: Sheet[Name] | null };

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
  began: "invented",
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
    began: undefined,
    ticked: undefined,
    bath: undefined,
    recipe: undefined,
    written: undefined,
    made: undefined,
    shelf: { ...emptyShelf, items: [] },
  };
}

/** The blanks of a sheet that began as the invented evening and still hold what was invented. */
export function inventedBlanks({ began, texts, written = {}, language, unit }: Sheet): readonly BlankName[] {
  if (began === undefined) return [];
  const inTongue = { ...inventedSheet, ...inLanguage(inventedSheet, language) };
  const invented = { ...inTongue, ...inUnit(inTongue, unit) }.texts;
  // No push is what most would write.
  return blankNames.filter(
    (name) => name !== "push" && written[name] === undefined && texts[name] === invented[name],
  );
}

/** The texts of a sheet that was stored before there were a name and a push. */
const withLater = (texts: Texts): Texts => ({ ...{ name: "", push: "0" }, ...texts });

/** A sheet that was stored, with all that a sheet has. */
export const storedSheet = (sheet: Sheet): Sheet => ({
  ...{ began: undefined, ticked: undefined, recipe: undefined, written: undefined, made: undefined },
  bath: undefined,
  ...sheet,
  texts: withLater(sheet.texts),
  read: withLater(sheet.read),
});

/** The store: the sheet, what follows from it, and who wants to hear of a change. */
export interface Store {
  readonly sheet: Sheet;
  readonly answer: Answer;
  /** why the last change was refused */
  readonly refused: unknown;
  /** a sheet that was kept and cannot be read; empty once it may go */
  readonly lost: Lost | undefined;
  /**
   * Puts these fields in the place of the old ones, and tells all sections. What leaves nothing that can be worked
   * out is refused, and the sheet stays as it was. Returns whether it was kept.
   */
  readonly change: (part: Partial<Sheet>) => boolean;
  /**
   * The same for what takes something of one's own away: it can be put back. Another known time begins without a
   * negative in the bath; those that wait for their outcome go on waiting.
   */
  readonly replace: (part: Partial<Sheet>) => boolean;
  /** puts back what the last such change took away; what is there now can be put back in turn */
  readonly undo: () => void;
  /** writes into one blank */
  readonly write: (name: BlankName, text: string) => void;
  readonly subscribe: (listener: () => void) => void;
}

/** A sheet that was kept and cannot be read. */
export interface Lost {
  readonly text: string;
  readonly error: unknown;
  /** forgets it; it is not asked for again */
  readonly forget: () => void;
}

/** Whether a sheet holds what somebody would miss. */
const isOwn = ({ runs, bath, invented }: Sheet, { missing }: Answer): boolean =>
  runs.length > 0 || bath?.run !== undefined || !(invented || missing.length > 0);

/** Which known time it is that runs are learned on. */
export function knownKey({ given: { baseline }, untaught: { developer } }: Answer): string {
  const { timeS, temperatureC, dilution, agitation } = baseline;
  const name = developer.kind === "stock" && developer.name;
  // A change of the unit rounds.
  return JSON.stringify([Math.round(timeS), temperatureC.toFixed(1), dilution, agitation, name]);
}

/** What waits on the same known time goes back to the runs that there are now. */
function withRuns({ bath, runs }: Sheet, answer: Answer): BathState | undefined {
  const key = knownKey(answer);
  return (
    bath && {
      ...bath,
      done: bath.done?.map((one) =>
        one.known.key === key ? { ...one, known: { key, sheet: { ...one.known.sheet, runs } } } : one,
      ),
    }
  );
}

/** Makes a store; `keep` is called with each new sheet. */
export function storeOf(first: Sheet, keep: (sheet: Sheet) => void = () => undefined, lost?: Lost): Store {
  let sheet = first;
  let answer = derive(sheet);
  let refused: unknown;
  const listeners: (() => void)[] = [];
  const change = (part: Partial<Sheet>): boolean => {
    try {
      const next = { ...sheet, ...part };
      answer = derive(next, answer);
      const { read } = answer;
      const made = next.runs.length === 0 ? undefined : (next.made ?? { name: read.name, time: read.time });
      sheet = { ...next, read, made, bath: withRuns(next, answer) };
      refused = undefined;
      keep(sheet);
    } catch (error) {
      if (!isInputError(error)) console.error(error);
      refused = error;
    }
    for (const listener of listeners) listener();
    return refused === undefined;
  };
  /** `before` is kept where this takes nothing of one's own away. */
  const swap = (part: Partial<Sheet>, before: Before | undefined): boolean => {
    const { bath } = sheet;
    const waiting = [...(part.bath?.done ?? []), ...(bath?.done ?? [])];
    const all: Partial<Sheet> =
      part.texts === undefined
        ? part
        : {
            ...part,
            bath: {
              ...newBath,
              ...bath,
              run: undefined,
              ...part.bath,
              done: [...new Map(waiting.map((one) => [JSON.stringify(one.run), one])).values()],
            },
          };
    const names = ["language", "unit", ...Object.keys(all)].filter((name) => name !== "before");
    const old = Object.fromEntries(names.map((name) => [name, sheet[name as keyof Before] ?? null]));
    return change({ ...all, before: isOwn(sheet, answer) ? old : (before ?? old) });
  };
  return {
    get sheet() {
      return sheet;
    },
    get answer() {
      return answer;
    },
    get refused() {
      return refused;
    },
    lost,
    change,
    replace: (part) => swap(part, sheet.before),
    undo: () => {
      const { before, language, unit } = sheet;
      if (before === undefined) return;
      const fields = Object.fromEntries(
        Object.entries(before).map(([name, value]) => [name, value ?? undefined]),
      ) as Partial<Sheet>;
      const { texts, bath } = fields;
      swap(
        texts === undefined
          ? { ...fields, language, unit }
          : // What waits now goes on waiting.
            { ...inTongue({ ...sheet, ...fields }, sheet), bath: bath && { ...bath, done: [] } },
        undefined,
      );
    },
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

/** A sheet in the language and the unit of another. */
export function inTongue(sheet: Sheet, { language, unit }: Sheet): Sheet {
  const said = { ...sheet, ...inLanguage(sheet, language) };
  return { ...said, ...inUnit(said, unit) };
}

/** The same sheet in another language: blanks that hold words or decimals are written anew. */
export function inLanguage({ texts, read, written }: Sheet, language: Language): Partial<Sheet> {
  const { none } = wordsOf(language);
  const changes: Partial<Record<BlankName, (text: string) => string>> = {
    name: (text) => text,
    knownDilution: (text) => dilutionAnew(text, language),
    dilution: (text) => dilutionAnew(text, language),
    knownAgitation: (text) => agitationAnew(text, language),
    agitation: (text) => agitationAnew(text, language),
    count: (text) => (readOr(() => parseCount(text), 1) === 0 ? none : inFigures(text, language)),
  };
  const anew = (all: Partial<Texts>): Partial<Texts> =>
    Object.fromEntries(
      (Object.entries(all) as [BlankName, string][]).map(([name, text]) => [
        name,
        (changes[name] ?? ((one: string) => inFigures(one, language)))(text),
      ]),
    );
  return {
    language,
    texts: anew(texts) as Texts,
    read: anew(read) as Texts,
    written: written && anew(written),
  };
}

/** A text with its decimals as the language writes them. */
export const inFigures = (text: string, language: Language): string =>
  text.replace(/(\d)[.,](?=\d)/g, language === "de" ? "$1," : "$1.");

/** A dilution as the language writes it. */
export function dilutionText(dilution: Dilution | string, language: Language): string {
  const text = formatDilution(dilution);
  return text === "stock" ? wordsOf(language).stock : inFigures(text, language);
}

/** A movement as the language writes it; no text where none is known. */
export function movementText(agitation: Agitation | undefined, language: Language): string {
  const { agitations, every } = wordsOf(language);
  if (agitation === undefined) return "";
  return typeof agitation === "string" ? agitations[agitation] : inFigures(every(agitation.everyS), language);
}

/** A dilution that means undiluted is a word; of all others only the decimals change. */
function dilutionAnew(text: string, language: Language): string {
  const dilution = readOr(() => formatDilution(parseDilution(text)), "");
  return dilution === "stock" ? wordsOf(language).stock : inFigures(text, language);
}

const agitationAnew = (text: string, language: Language): string =>
  movementText(
    readOr(() => parseAgitation(text), undefined),
    language,
  ) || text;

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
export function inUnit({ unit: before, language, texts, read, written }: Sheet, unit: Unit): Partial<Sheet> {
  const anew = (text: string): string =>
    readOr(
      () => inFigures(formatTemperature(parseTemperature(text, { unit: before }), { unit }), language),
      text,
    );
  const both = <Some extends Partial<Texts>>(all: Some): Some => ({
    ...all,
    ...(all.knownTemperature === undefined ? {} : { knownTemperature: anew(all.knownTemperature) }),
    ...(all.temperature === undefined ? {} : { temperature: anew(all.temperature) }),
  });
  return { unit, texts: both(texts), read: both(read), written: written && both(written) };
}
