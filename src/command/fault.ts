/*
 * What a person did wrong, in one plain sentence: thrown here and nowhere else in the command.
 */
import { describeProblem, isInputError, type InputProblem } from "../index.js";
import type { LanguageName, Words } from "./words.js";

/** A fault of a file or of the command line. */
export interface Fault extends Error {
  /** the sentence in German; `message` is the English one */
  readonly german: string;
  /** the file at fault, where it is not the one that was asked about */
  readonly file?: string;
  /** JSON Pointer into the file; undefined where its content is not at fault */
  readonly pointer?: string;
  /** a place in the text, where it is known already */
  readonly at?: { readonly line: number; readonly column: number };
  /** what the package said of it, to be said in the language that was asked for */
  readonly problem?: InputProblem;
  /** how many more there are */
  readonly others?: number;
  /** the command line was wrong, not a file */
  readonly use?: true;
}

/** One sentence, or the name of a thing, in each language. */
export type Said = Readonly<Record<LanguageName, string>>;

const FAULT: unique symbol = Symbol("fault");

/** A fault that the command found, in each language that it speaks. */
export function fault(
  { en, de }: Said,
  more: Pick<Fault, "file" | "pointer" | "at" | "problem" | "others" | "use"> = {},
): Fault {
  return Object.assign(new Error(en), { german: de }, more, { [FAULT]: true as const });
}

export function isFault(error: unknown): error is Fault {
  return error instanceof Error && FAULT in error;
}

/** The fields of the package's functions, and where a file has them. */
export type Places = readonly (readonly [field: string, place: string])[];

/** Runs a call of the package; an error about its input becomes a fault of the file. */
export function placed<T>(places: Places, call: () => T): T {
  try {
    return call();
  } catch (error) {
    if (!isInputError(error)) throw error;
    throw fault(inPackage(error.sentence), { pointer: inFile(error.path, places), problem: error });
  }
}

/** A path of the package as a path of the file: the longest field that fits decides; "" takes all others. */
export function inFile(path: string, places: Places): string {
  const fit = places
    .filter(([field]) => field === "" || path === field || path.startsWith(`${field}/`))
    .sort(([a], [b]) => b.length - a.length)[0];
  if (fit === undefined) return path;
  return fit[0] === "" ? fit[1] : fit[1] + path.slice(fit[0].length);
}

/** What the package says: its problem is said in the language that was asked for, by its own catalogue. */
export const inPackage = (sentence: string): Said => ({ en: sentence, de: sentence });

/** What a fault says, with its full stop. */
export function faultText({ message, german, problem, others = 0 }: Fault, words: Words): string {
  const own = words.texts === undefined ? message : german;
  const sentence = problem === undefined ? own : problemText(problem, words);
  return fullStop(sentence + (others === 0 ? "" : ` ${words.others(others)}`));
}

/** What the package says of an input. */
export function problemText(problem: InputProblem, { texts, unit }: Words): string {
  return describeProblem(problem, texts?.problems, { unit });
}

/** A sentence with its full stop. */
export function fullStop(sentence: string): string {
  return /[.?!]$/.test(sentence) ? sentence : `${sentence}.`;
}
