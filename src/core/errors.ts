/*
 * Errors as data. Wrong input throws a TypeError or a RangeError that says what was wrong as own properties;
 * the sentence is made of them here and nowhere else.
 *
 * A place is text: the function that was called and a JSON Pointer to the value, as in
 * "compensate/baseline/timeS".
 */
import type { Quantity } from "./quantity.js";

/** What was wrong with an input. */
export type InputErrorCode =
  | "missing"
  | "wrong-type"
  | "empty"
  | "not-a-number"
  | "out-of-range"
  | "not-one-of"
  | "unreadable"
  | "ambiguous"
  | "too-few"
  | "needs-counterpart";

/** Every code of an input error. */
export const inputErrorCodes: readonly InputErrorCode[] = /* @__PURE__ */ Object.freeze([
  "missing",
  "wrong-type",
  "empty",
  "not-a-number",
  "out-of-range",
  "not-one-of",
  "unreadable",
  "ambiguous",
  "too-few",
  "needs-counterpart",
] as const);

/** What an input should have been, as data. Which fields are there depends on the code. */
export interface InputExpected {
  /**
   * the kinds that are taken: `"number"`, `"text"`, `"object"`, `"array"`, `"boolean"`, and others by name
   */
  readonly types?: readonly string[];
  /** the function that reads text of this kind */
  readonly parse?: string;
  /** the least value that is taken */
  readonly min?: number;
  /** the value must be above this */
  readonly above?: number;
  /** the greatest value that is taken */
  readonly max?: number;
  /** what `min`, `above` and `max` measure */
  readonly quantity?: Quantity;
  /** the values that are taken */
  readonly values?: readonly string[];
  /** what the text should hold: `"dilution"`, `"time"`, `"temperature"`, `"agitation"`, and others by name */
  readonly format?: string;
  /** texts of that format */
  readonly examples?: readonly string[];
  /** the unambiguous ways to write what may have been meant */
  readonly readings?: readonly string[];
  /** the least number of items */
  readonly least?: number;
  /** the greatest number of items */
  readonly most?: number;
  /** the field that has to be given too, as a JSON Pointer */
  readonly path?: string;
  /** what the value may be instead: a figure in K, in per cent */
  readonly hint?: string;
  /** what must hold, in plain English */
  readonly must?: string;
}

/** An error about an input: a `TypeError` or a `RangeError` with what was wrong as data. */
export interface InputError extends Error {
  readonly code: InputErrorCode;
  /** JSON Pointer into what the caller gave, beginning with the name of the argument */
  readonly path: string;
  readonly expected: InputExpected;
  /** the value that was given */
  readonly actual: unknown;
  /** what is wrong in plain English, without the place: for a form that shows it beside the field */
  readonly sentence: string;
}

/**
 * Tells an error about an input from a bug.
 *
 * @param error - anything that was caught
 * @returns true for the errors that this package throws about its inputs
 *
 * @example
 * ```ts
 * let caught: unknown;
 * try { parseTime("soon"); } catch (error) { caught = error; }
 * isInputError(caught) && caught.code // => "unreadable"
 * ```
 */
export function isInputError(error: unknown): error is InputError {
  return (
    error instanceof Error && inputErrorCodes.includes((error as Partial<InputError>).code as InputErrorCode)
  );
}

/** Makes the error: a TypeError for a wrong kind, a RangeError for a wrong value. */
export function inputError(
  kind: TypeErrorConstructor | RangeErrorConstructor,
  at: string,
  code: InputErrorCode,
  expected: InputExpected,
  actual: unknown,
  sentence: string,
): InputError {
  const path = at.replace(/^[^/]*/, "");
  return Object.assign(new kind(`${placeText(at)} ${sentence}`), { code, path, expected, actual, sentence });
}

/** A place in words: "compensate/baseline/timeS" is "compensate: baseline.timeS". */
export function placeText(at: string): string {
  const [name = "", ...keys] = at.split("/");
  const path = keys
    .map((key, i) =>
      /^\d+$/.test(key) ? `[${key}]` : (i > 0 ? "." : "") + key.replaceAll("~1", "/").replaceAll("~0", "~"),
    )
    .join("");
  return [name && `${name}:`, path].filter(Boolean).join(" ");
}

/** Shows any value in a sentence: short, and never throwing itself. */
export function show(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(value.slice(0, 60));
  if (Array.isArray(value)) return "an array";
  if (typeof value === "object" && value) return "an object";
  return typeof value === "function" ? "a function" : String(value);
}
