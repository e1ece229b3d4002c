/*
 * A file as data: a recipe or a day.
 */
import { checkRecipe, learnRecipe, type Recipe } from "../index.js";
import { firstFault, placeOfPointer, repeatedName, type JsonFault } from "../core/jsonPlaces.js";
import { fault, inPackage, placed, type Fault, type Said } from "./fault.js";
import { textOf } from "./fileText.js";
import type { Io } from "./io.js";
import { inNotes, type Notes } from "./notes.js";

/** Text that was read from a file, and what it says. */
export interface Document {
  readonly file: string;
  readonly text: string;
  readonly value: unknown;
  readonly kind: "recipe" | "day";
  /** notes beside it, from which it learns */
  readonly notes?: Notes;
}

/** Reads a file. */
export function readDocument(file: string, io: Io): Document {
  const text = textOf(file, io);
  if (text.trim() === "") throw fault({ en: "the file is empty.", de: "die Datei ist leer." });
  const wrong = firstFault(text);
  if (wrong !== undefined) {
    const { line, column } = wrong;
    throw fault(saidOf(wrong), { at: { line, column } });
  }
  const twice = repeatedName(text);
  if (twice !== undefined) {
    const { path, name, line, column } = twice;
    throw fault(saidTwice(name), { pointer: path, at: { line, column } });
  }
  const value: unknown = JSON.parse(text);
  return { file, text, value, kind: kindOf(value) };
}

const saidTwice = (name: string): Said => ({
  en: `stands twice: only one ${JSON.stringify(name)} may be here.`,
  de: `steht zweimal da: ${JSON.stringify(name)} darf hier nur einmal stehen.`,
});

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

/** A day has a list of baths, or a time as text; everything else is meant to be a recipe. */
function kindOf(value: unknown): "recipe" | "day" {
  if (typeof value !== "object" || value === null || "schemaVersion" in value) return "recipe";
  const { baths, baseline } = value as Readonly<Record<string, unknown>>;
  const timed = typeof baseline === "object" && baseline !== null && "time" in baseline;
  return Array.isArray(baths) || timed ? "day" : "recipe";
}

/** The place of a fault as people and editors find it: file, line and column where they are known. */
export function placeText(
  file: string,
  text: string | undefined,
  { file: other, pointer, at }: Fault,
): string {
  if (other !== undefined) return other;
  const place =
    at ?? (pointer === undefined || text === undefined ? undefined : placeOfPointer(text, pointer));
  return place === undefined ? file : `${file}:${place.line}:${place.column}`;
}

/** The recipe of a file, with what its notes teach; the first of its problems is thrown. */
export function recipeOf({ value, notes }: Document): Recipe {
  const check = checkRecipe(value);
  if (check.ok) return notes === undefined ? check.recipe : learnedRecipe(check.recipe, notes);
  const [first, ...others] = check.problems;
  const problem = first as (typeof check.problems)[number];
  throw fault(inPackage(problem.message), { pointer: problem.path, problem, others: others.length });
}

const learnedRecipe = (recipe: Recipe, { file, runs }: Notes): Recipe =>
  inNotes(file, () => placed([], () => learnRecipe(recipe, runs)));
