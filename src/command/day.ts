/*
 * A day file: a known time, laws, the baths of a day, and perhaps a brew by the spoon and a published table.
 */
import {
  parseAge,
  parseAgitation,
  parseSpread,
  parseStops,
  parseTemperature,
  parseTime,
  parseUse,
  parseVolume,
  recipeSchema,
  type Baseline,
  type Caution,
  type Conditions,
  type JsonSchema,
  type Knowledge,
  type PlannedDeveloper,
} from "../index.js";
import { makeCaution } from "../core/cautionTexts.js";
import { ownEntry } from "../core/ownEntry.js";
import { unreadFields } from "../core/pointer.js";
import { isUnknown, unknownAgeSentence } from "../core/unknown.js";
import { fault, placed, type Said } from "./fault.js";
import { given, list, object, optionalText, refuseOthers, type Fields, type Sound } from "./fields.js";
import type { Words } from "./words.js";

/** A bath of the day, and where the file has it. */
export interface DayBath {
  readonly name: string;
  readonly conditions: Conditions;
  readonly pointer: string;
}

/** What a bath is, and where the file says it. */
export interface DayDeveloper {
  readonly fields: PlannedDeveloper;
  readonly pointer: string;
}

/** A day as it was read; what the functions of the package check is left to them. */
export interface Day {
  readonly about?: string;
  readonly note?: string;
  readonly baseline: Baseline;
  readonly laws: Knowledge;
  readonly baths: readonly DayBath[];
  /** what the baths of the day are; that of the evening where it alone says it */
  readonly developer?: DayDeveloper;
  /** what the bath of the evening is; that of the day where it says none of its own */
  readonly eveningDeveloper?: DayDeveloper;
  readonly brew?: Fields;
  readonly table?: Fields;
  readonly evening?: Fields;
  /** fields that are not read */
  readonly cautions: readonly Caution[];
}

const FIELDS = ["about", "baseline", "laws", "baths", "developer", "brew", "table", "evening"];

/** The fields of a part of a recipe, which a day has too. */
const fieldsOf = (part: "baseline" | "conditions"): readonly string[] =>
  Object.keys((recipeSchema.properties?.[part] as JsonSchema).properties ?? {});

/** What reads fields that are written as people say them. */
export type Parsers = Readonly<Record<string, (text: string) => unknown>>;

/** Those of conditions: "68 °F", "every 30 s", "2 rolls/l", "3 days". */
const PARSERS: Parsers = {
  temperatureC: (said) => parseTemperature(said),
  agitation: parseAgitation,
  usedCm2PerL: (said) => parseUse(said),
  ageH: (said) => (isUnknown(said) ? undefined : parseAge(said)),
  pushStops: parseStops,
};

/** Those of a brew, and of each of its spoons. */
const BREW_PARSERS: Parsers = {
  ...PARSERS,
  volumeMl: (said) => parseVolume(said),
  spoonMl: (said) => parseVolume(said),
};

/** The fields of a part, those in words read as conditions are; one at fault is left out. */
export function inFigures(pointer: string, part: Fields, sound: Sound, parsers: Parsers = PARSERS): Fields {
  const read = Object.entries(part).map(([name, value]) => {
    const parser = typeof value === "string" ? ownEntry(parsers, name) : undefined;
    if (parser === undefined) return [name, value] as const;
    const places = [["", `${pointer}/${name}`]] as const;
    return [name, sound(() => placed(places, () => parser(value as string)))] as const;
  });
  return Object.fromEntries(read);
}

/**
 * Reads a day; its first fault is thrown. With a `sound` that keeps faults, what is at fault is left out of
 * the day.
 */
export function readDay(value: unknown, words: Words, sound: Sound = (call) => call()): Day {
  const day = object(value, "", { en: "the file", de: "die Datei" });
  const known = sound(() =>
    object(day["baseline"], "/baseline", {
      en: "the known time with its conditions",
      de: "die bekannte Zeit mit ihren Bedingungen",
    }),
  );
  const { note, ...baseline } = known === undefined ? {} : readBaseline(known, sound);
  const baths = sound(() => bathList(day["baths"]))?.flatMap((bath, i) => {
    const one = sound(() => object(bath, `/baths/${i}`, { en: "a bath", de: "ein Bad" }));
    return one === undefined ? [] : [readBath(one, i, words, sound)];
  });
  const laws = sound(() => object(day["laws"] ?? {}, "/laws", { en: "the laws", de: "die Gesetze" }));
  const developer = developerOf(day["developer"], "/developer", sound);
  const brew = part(day, "brew", { en: "the brew", de: "der Ansatz" }, sound);
  const table = part(day, "table", { en: "the table", de: "die Tabelle" }, sound);
  const evening = part(day, "evening", { en: "the evening", de: "der Abend" }, sound);
  const ofEvening = developerOf(evening?.["developer"], "/evening/developer", sound);
  const [ofBaths, eveningDeveloper] = [developer ?? ofEvening, ofEvening ?? developer];
  const about = sound(() => optionalText(day["about"], "/about"));
  return {
    ...(about === undefined ? {} : { about }),
    ...(note === undefined ? {} : { note }),
    baseline: baseline as unknown as Baseline,
    laws: laws ?? {},
    baths: baths ?? [],
    ...(ofBaths === undefined ? {} : { developer: ofBaths }),
    ...(eveningDeveloper === undefined ? {} : { eveningDeveloper }),
    ...(brew === undefined ? {} : { brew }),
    ...(table === undefined ? {} : { table }),
    ...(evening === undefined ? {} : { evening }),
    cautions: [
      ...unreadFields("", day, FIELDS),
      ...unknownAge("/baseline", known),
      ...unknownAge("/brew", brew),
      ...(Array.isArray(day["baths"]) ? day["baths"] : []).flatMap((bath: unknown, i) =>
        unknownAge(`/baths/${i}`, bath),
      ),
    ],
  };
}

/** A bath of which the file says that its age is not known: its time is no more than one without an age. */
function unknownAge(pointer: string, bath: unknown): readonly Caution[] {
  if (!isUnknown((bath as Fields | null | undefined)?.["ageH"])) return [];
  return [makeCaution(unknownAgeSentence, "age-unknown", "warn", { path: `${pointer}/ageH` })];
}

/** The known time and its conditions; without `timeS` where that cannot be read. */
function readBaseline(known: Fields, sound: Sound): Fields & { readonly note?: string } {
  const { time, note, timeS: inSeconds, ...conditions } = known;
  if (inSeconds !== undefined)
    sound(() => {
      throw fault(TIME_AS_TEXT, { pointer: "/baseline/timeS" });
    });
  const own = fieldsOf("baseline").map((field) => (field === "timeS" ? "time" : field));
  refuseOthers("/baseline", conditions, [...own, "note"], sound);
  const timeS =
    inSeconds !== undefined && time === undefined ? undefined : sound(() => timeOf(time, "/baseline/time"));
  const said = sound(() => optionalText(note, "/baseline/note"));
  return {
    ...inFigures("/baseline", conditions, sound, withSpread(PARSERS, timeS)),
    timeS,
    ...(said === undefined ? {} : { note: said }),
  };
}

/** Parsers that read beside the rest how well a time is known; for an unknown time that is left out. */
const withSpread = (parsers: Parsers, timeS: number | undefined): Parsers => ({
  ...parsers,
  logSd: (said) => (timeS === undefined ? undefined : parseSpread(said, timeS)),
});

const TIME_AS_TEXT: Said = {
  en: 'a day has the known time as text: write "time": "9:00".',
  de: 'ein Tag hat die bekannte Zeit als Text: nötig ist "time": "9:00".',
};

export function timeOf(time: unknown, pointer: string): number {
  const there = given(time, pointer, { en: "the known time", de: "die bekannte Zeit" });
  return placed([["/text", pointer]], () => parseTime(there as string));
}

const NO_BATH: Said = {
  en: "the list of baths must hold at least one bath.",
  de: "die Liste der Bäder: nötig ist mindestens ein Bad.",
};

function bathList(baths: unknown): readonly unknown[] {
  if (baths === undefined || baths === null) return [];
  const there = list(baths, "/baths", { en: "the list of baths", de: "die Liste der Bäder" });
  if (there.length === 0) throw fault(NO_BATH, { pointer: "/baths" });
  return there;
}

function readBath(bath: Fields, i: number, words: Words, sound: Sound): DayBath {
  const pointer = `/baths/${i}`;
  const { name, ...conditions } = bath;
  refuseOthers(pointer, conditions, ["name", ...fieldsOf("conditions")], sound);
  const called = sound(() => optionalText(name ?? undefined, `${pointer}/name`));
  return { name: called ?? words.bath(i + 1), conditions: inFigures(pointer, conditions, sound), pointer };
}

const DEVELOPER_FIELDS: readonly string[] = [
  ...["brew", "use", "family", "leastMlPerRoll", "capacityCm2PerL", "dishCm2"],
];

/** Fields of a part of a brew, weighed or counted. */
export const PART_FIELDS: readonly string[] = [
  ...["ingredient", "massG", "lowG", "highG", "spoons", "spoonMl", "heap", "tablets", "labelMg"],
];

/** What a bath is, with its brew in figures. */
function developerOf(value: unknown, pointer: string, sound: Sound): DayDeveloper | undefined {
  if (value === undefined) return undefined;
  return sound(() => {
    const said = object(value, pointer, { en: "the developer", de: "der Entwickler" });
    refuseOthers(pointer, said, DEVELOPER_FIELDS, sound);
    const fields = inFigures(pointer, said, sound);
    const brew = fields["brew"];
    if (brew === undefined) return { fields, pointer };
    const at = `${pointer}/brew`;
    const brewed = object(brew, at, { en: "the brew", de: "der Ansatz" });
    refuseOthers(at, brewed, ["volumeMl", "temperatureC", "ingredients"], sound);
    const ingredients = partsOf(brewed["ingredients"], `${at}/ingredients`, PART_FIELDS, sound);
    return { fields: { ...fields, brew: { ...inBrewFigures(at, brewed, sound), ingredients } }, pointer };
  });
}

/** The fields of a brew in figures; of one with a known time also how well that is known. */
export const inBrewFigures = (pointer: string, brew: Fields, sound: Sound, timeS?: number): Fields =>
  inFigures(pointer, brew, sound, withSpread(BREW_PARSERS, timeS));

/** The parts of a brew in figures, with no other fields than these. */
export function partsOf(
  value: unknown,
  pointer: string,
  fields: readonly string[],
  sound: Sound,
): readonly Fields[] {
  const parts = list(value, pointer, { en: "the list of ingredients", de: "die Liste der Zutaten" });
  return parts.map((part, i) => {
    const at = `${pointer}/${i}`;
    const said = object(part, at, { en: "an ingredient", de: "eine Zutat" });
    refuseOthers(at, said, fields, sound);
    return inBrewFigures(at, said, sound);
  });
}

function part(
  day: Fields,
  field: "brew" | "table" | "evening",
  what: Said,
  sound: Sound,
): Fields | undefined {
  const there = day[field];
  return there === undefined ? undefined : sound(() => object(there, `/${field}`, what));
}
