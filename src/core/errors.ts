/*
 * Errors as data. Wrong input throws a TypeError or a RangeError that says what was wrong as own properties;
 * the sentence is made of them here and nowhere else.
 *
 * A place is text: the function that was called and a JSON Pointer to the value, as in
 * "compensate/baseline/timeS".
 */
import type { InputRule, InputRules } from "./errorRules.js";
import type { MeasuredQuantity } from "./quantity.js";

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

/** The kinds of value that an input may be asked for. */
export type InputType =
  | "number"
  | "whole number"
  | "text"
  | "boolean"
  | "object"
  | "array"
  | "function"
  | "log"
  | "drift"
  | "plan with a development"
  | "Float64Array";

/** What a text may be asked to hold. */
export type InputFormat =
  | "time"
  | "temperature"
  | "volume"
  | "spread"
  | "age"
  | "use"
  | "count"
  | "number"
  | "date"
  | "date with its year"
  | "dilution"
  | "agitation"
  | "film format"
  | "push"
  | "outcome"
  | "column with its unit";

/** The figures and names of what an input should have been. Which fields are there depends on the code. */
export interface ExpectedFigures {
  /** the kinds that are taken */
  readonly types?: readonly InputType[] | undefined;
  /** the function that reads text of this kind, where there is one */
  readonly parse?: `parse${"Temperature" | "Time" | "Stops" | "Use" | "Age" | "Agitation"}` | undefined;
  /** the least value that is taken */
  readonly min?: number | undefined;
  /** the value must be above this */
  readonly above?: number | undefined;
  /** the greatest value that is taken */
  readonly max?: number | undefined;
  /** the value must be below this */
  readonly below?: number | undefined;
  /** what `min`, `above`, `max` and `below` measure */
  readonly quantity?: MeasuredQuantity | undefined;
  /** the values that are taken */
  readonly values?: readonly (string | number | boolean)[] | undefined;
  /** what the text should hold */
  readonly format?: InputFormat | undefined;
  /** texts of that format */
  readonly examples?: readonly string[] | undefined;
  /** the unambiguous ways to write what may have been meant */
  readonly readings?: readonly string[] | undefined;
  /** the least number of items */
  readonly least?: number | undefined;
  /** the greatest number of items, or of characters */
  readonly most?: number | undefined;
  /** the fields that an object must have */
  readonly fields?: readonly string[] | undefined;
  /** forms of which one is taken */
  readonly forms?: readonly InputExpected[] | undefined;
  /** the field that has to be given too, or that sets the limit: a JSON Pointer */
  readonly path?: string | undefined;
  /** what the value may be instead: a figure in K, in °F, in per cent; the field that is nearest */
  readonly hint?: string | undefined;
}

/** The same where a rule was broken that the figures do not say: with its name and what it names. */
export type RuleExpected = {
  [Rule in InputRule]: ExpectedFigures & {
    /** the rule */
    readonly must: Rule;
  } & InputRules[Rule];
}[InputRule];

/** What an input should have been, as data. */
export type InputExpected =
  | (ExpectedFigures & {
      /** no rule of its own */
      readonly must?: undefined;
    })
  | RuleExpected;

/** An error about an input: a `TypeError` or a `RangeError` with what was wrong as data. */
export interface InputError extends Error {
  /** what is wrong, stable for programs */
  readonly code: InputErrorCode;
  /** JSON Pointer into what the caller gave, beginning with the name of the argument */
  readonly path: string;
  /** what was expected there, as data */
  readonly expected: InputExpected;
  /** the value that was given */
  readonly actual: unknown;
  /** what is wrong in plain English, without the place: for a form that shows it beside the field */
  readonly sentence: string;
}

/** What is wrong with one value, as plain data: an input error that was caught by a check. */
export interface CheckProblem extends Pick<InputError, "code" | "path" | "expected" | "actual"> {
  /** the whole sentence, with its place */
  readonly message: string;
  /** the same without the place, for a form that shows it beside the field */
  readonly sentence: string;
}

/** Longer texts are cut where a problem tells what was given. */
const LONGEST_ACTUAL = 200;

/** A value as a problem carries it: an object could be a ring, and a text a megabyte. */
function plainActual(actual: unknown): unknown {
  if (typeof actual === "string") return actual.slice(0, LONGEST_ACTUAL);
  if (Array.isArray(actual)) return "array";
  return actual === null || actual === undefined || /^(?:number|boolean)$/.test(typeof actual)
    ? actual
    : typeof actual;
}

/**
 * An input error as plain data: it passes through JSON, storage and the messages of a worker, where an error
 * itself loses its fields.
 *
 * @param error - what {@link isInputError} tells from a bug
 * @returns its fields; of an object, an array or a function that was given only the kind, as text, and of a
 * text the first 200 characters
 * @throws TypeError when it is no input error
 *
 * @example
 * ```ts
 * let caught: unknown;
 * try { parseTime("soon"); } catch (error) { caught = error; }
 * isInputError(caught) && problemOf(caught).code // => "unreadable"
 * ```
 */
export function problemOf(error: InputError): CheckProblem {
  if (!isInputError(error))
    throw inputError(
      TypeError,
      "problemOf/error",
      "wrong-type",
      { types: ["object"] },
      error,
      NO_INPUT_ERROR,
    );
  const { code, path, expected, actual, message, sentence } = error;
  return { code, path, expected, actual: plainActual(actual), message, sentence };
}

const NO_INPUT_ERROR = "must be an input error";

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
  return at
    .replace(/\/(\d+)(?=\/|$)/g, "[$1]")
    .replace(/^([^/[]+)\/?/, "$1: ")
    .replace(/^\//, "")
    .replace(/\//g, ".")
    .replace(/~1/g, "/")
    .replace(/~0/g, "~")
    .trim();
}

/** Shows any value in a sentence: short, and never throwing itself. */
export function show(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(value.slice(0, 60));
  if (Array.isArray(value)) return "an array";
  return (typeof value === "object" && value) || typeof value === "function"
    ? named(typeof value)
    : String(value);
}

/** A noun with its article: a time, an age. */
export const named = (noun: string): string => `${/^[aeio]/.test(noun) ? "an" : "a"} ${noun}`;
