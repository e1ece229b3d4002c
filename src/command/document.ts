/*
 * A file as data: a recipe or a day.
 */
import { checkRecipe, type Recipe, type RecipeCheck } from "../index.js";
import { firstFault, placeOfPointer, type JsonFault } from "../core/jsonPlaces.js";
import { fault, inPackage, type Fault, type Said } from "./fault.js";
import type { Io } from "./io.js";

/** Text that was read from a file, and what it says. */
export interface Document {
  readonly file: string;
  readonly text: string;
  readonly value: unknown;
  readonly kind: "recipe" | "day";
}

const NOT_ALLOWED = { en: "you are not allowed to read it.", de: "sie darf nicht gelesen werden." };
const REASONS: Readonly<Record<string, Said>> = {
  ENOENT: { en: "there is no such file.", de: "diese Datei gibt es nicht." },
  EISDIR: { en: "this is a folder, not a file.", de: "das ist ein Ordner und keine Datei." },
  EACCES: NOT_ALLOWED,
  EPERM: NOT_ALLOWED,
};

/** Reads a file. A byte order mark is no part of it (RFC 8259, section 8.1). */
export function readDocument(file: string, io: Io): Document {
  const text = textOf(file, io).replace(/^\uFEFF/, "");
  if (text.trim() === "") throw fault({ en: "the file is empty.", de: "die Datei ist leer." });
  const wrong = firstFault(text);
  if (wrong !== undefined) {
    const { line, column } = wrong;
    throw fault(saidOf(wrong), { at: { line, column } });
  }
  const value: unknown = JSON.parse(text);
  return { file, text, value, kind: kindOf(value) };
}

/** What is wrong with JSON text, and for a comma in a number what to write. */
function saidOf({ expected, numbers }: JsonFault): Said {
  const [en, de] = ["this is not valid JSON:", "das ist kein gültiges JSON:"];
  if (numbers === undefined)
    return {
      en: `${en} ${expected} is expected here.`,
      de: `${de} Erwartet wird hier ${germanOf(expected)}.`,
    };
  return {
    en:
      `${en} a number has a point, no comma: ${numbers.join(" or ")}. ` +
      'A day also takes text with a unit, such as "20,5 °C".',
    de:
      `${de} Zahlen haben einen Punkt, kein Komma: ${numbers.join(" oder ")}. ` +
      'Ein Tag nimmt auch Text mit Einheit, wie "20,5 °C".',
  };
}

/** What may be expected, in German. */
const GERMAN: Readonly<Record<string, string>> = {
  "a value": "ein Wert",
  "the end of the file": "das Ende der Datei",
  "a comma or ]": "ein Komma oder ]",
  "a comma or }": "ein Komma oder }",
  "no comma before ]": "kein Komma vor ]",
  "no comma before }": "kein Komma vor }",
  "a name in double quotes": "ein Name in geraden Anführungszeichen",
  "a colon": "ein Doppelpunkt",
  "a closing double quote": "ein schließendes Anführungszeichen",
  "a closing double quote on the same line": "ein schließendes Anführungszeichen in derselben Zeile",
  "an escape such as \\n or \\u00e9": "eine Schreibung wie \\n oder \\u00e9",
};

/** What is expected, in German. */
const germanOf = (expected: string): string => GERMAN[expected] ?? expected;

function textOf(file: string, io: Io): string {
  try {
    return io.read(file);
  } catch (error) {
    const { code = "", message } = error as NodeError;
    const unknown = { en: `it cannot be read: ${message}.`, de: `sie ist nicht zu lesen: ${message}.` };
    throw fault(Object.hasOwn(REASONS, code) ? (REASONS[code] as Said) : unknown);
  }
}

type NodeError = Error & { readonly code?: string };

/** A day has a list of baths, or a time as text; everything else is meant to be a recipe. */
function kindOf(value: unknown): "recipe" | "day" {
  if (typeof value !== "object" || value === null || "schemaVersion" in value) return "recipe";
  const { baths, baseline } = value as Readonly<Record<string, unknown>>;
  const timed = typeof baseline === "object" && baseline !== null && "time" in baseline;
  return Array.isArray(baths) || timed ? "day" : "recipe";
}

/** The place of a fault as people and editors find it: file, line and column where they are known. */
export function placeText(file: string, text: string | undefined, { pointer, at }: Fault): string {
  const place =
    at ?? (pointer === undefined || text === undefined ? undefined : placeOfPointer(text, pointer));
  return place === undefined ? file : `${file}:${place.line}:${place.column}`;
}

/** The recipe of a file; the first of its problems is thrown. */
export function recipeOf(
  document: Document,
): Extract<RecipeCheck, { ok: true }> & { readonly recipe: Recipe } {
  const check = checkRecipe(document.value);
  if (check.ok) return check;
  const [first, ...others] = check.problems;
  const problem = first as (typeof check.problems)[number];
  throw fault(inPackage(problem.message), { pointer: problem.path, problem, others: others.length });
}
