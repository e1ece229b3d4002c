/*
 * A day file: a known time, laws, the baths of a day, and perhaps a brew by the spoon and a published table.
 */
import { parseTime, type Baseline, type Caution, type Conditions, type Knowledge } from "../index.js";
import { unreadFields } from "../core/pointer.js";
import { fault, placed, type Said } from "./fault.js";

/** Fields of an object by their names. */
export type Fields = Readonly<Record<string, unknown>>;

/** A bath of the day, and where the file has it. */
export interface DayBath {
  readonly name: string;
  readonly conditions: Conditions;
  readonly pointer: string;
}

/** A day as it was read; what the functions of the package check is left to them. */
export interface Day {
  readonly about?: string;
  readonly note?: string;
  readonly baseline: Baseline;
  readonly laws: Knowledge;
  readonly baths: readonly DayBath[];
  readonly brew?: Fields;
  readonly table?: Fields;
  /** fields that are not read */
  readonly cautions: readonly Caution[];
}

const FIELDS = ["about", "baseline", "laws", "baths", "brew", "table"];

export function readDay(value: unknown): Day {
  const day = object(value, "", { en: "the file", de: "die Datei" });
  const { time, note, ...known } = object(day["baseline"], "/baseline", {
    en: "the known time with its conditions",
    de: "die bekannte Zeit mit ihren Bedingungen",
  });
  const timeS = placed([["/text", "/baseline/time"]], () =>
    parseTime(given(time, "/baseline/time", { en: "the known time", de: "die bekannte Zeit" }) as string),
  );
  const baths = list(day["baths"] ?? [], "/baths", {
    en: "the list of baths",
    de: "die Liste der Bäder",
  }).map((bath, i) => {
    const pointer = `/baths/${i}`;
    const { name, ...conditions } = object(bath, pointer, { en: "a bath", de: "ein Bad" });
    return { name: text(name ?? `Bath ${i + 1}`, `${pointer}/name`), conditions, pointer };
  });
  const laws = object(day["laws"] ?? {}, "/laws", { en: "the laws", de: "die Gesetze" });
  const brew = day["brew"];
  const table = day["table"];
  return {
    ...(day["about"] === undefined ? {} : { about: text(day["about"], "/about") }),
    ...(note === undefined ? {} : { note: text(note, "/baseline/note") }),
    baseline: { ...known, timeS } as unknown as Baseline,
    laws,
    baths,
    ...(brew === undefined ? {} : { brew: object(brew, "/brew", { en: "the brew", de: "der Ansatz" }) }),
    ...(table === undefined
      ? {}
      : { table: object(table, "/table", { en: "the table", de: "die Tabelle" }) }),
    cautions: unreadFields("", day, FIELDS),
  };
}

/** A value that must be there. */
export function given(value: unknown, pointer: string, what: Said): unknown {
  if (value === undefined || value === null)
    throw fault({ en: `${what.en} is missing.`, de: `${what.de} fehlt.` }, { pointer });
  return value;
}

export function object(value: unknown, pointer: string, what: Said): Fields {
  const there = given(value, pointer, what);
  if (typeof there !== "object" || Array.isArray(there))
    throw fault(
      { en: `${what.en} must be an object.`, de: `${what.de}: nötig ist ein Objekt.` },
      { pointer },
    );
  return there as Fields;
}

export function list(value: unknown, pointer: string, what: Said): readonly unknown[] {
  const there = given(value, pointer, what);
  if (!Array.isArray(there))
    throw fault({ en: `${what.en} must be a list.`, de: `${what.de}: nötig ist eine Liste.` }, { pointer });
  return there;
}

export function text(value: unknown, pointer: string): string {
  if (typeof value !== "string")
    throw fault({ en: "this must be text.", de: "nötig ist Text." }, { pointer });
  return value;
}
