/*
 * What a person did wrong, in one plain sentence: thrown here and nowhere else in the command.
 */
import { isInputError } from "../index.js";

/** A fault of a file or of the command line. */
export interface Fault extends Error {
  /** JSON Pointer into the file; undefined where the fault is none of its content */
  readonly pointer?: string;
  /** a place in the text, where it is known already */
  readonly at?: { readonly line: number; readonly column: number };
  /** the command line was wrong, not a file */
  readonly use?: true;
}

const FAULT: unique symbol = Symbol("fault");

export function fault(message: string, more: Pick<Fault, "pointer" | "at" | "use"> = {}): Fault {
  return Object.assign(new Error(message), more, { [FAULT]: true as const });
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
    throw fault(error.sentence, { pointer: inFile(error.path, places) });
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

/** A sentence with its full stop. */
export function fullStop(sentence: string): string {
  return /[.?!]$/.test(sentence) ? sentence : `${sentence}.`;
}
