/*
 * What a schema asks for, in words and as data, and what a problem of a document is.
 */
import type { InputErrorCode, InputExpected } from "./errors.js";
import { quantityOf, unitOf } from "./quantity.js";
import type { JsonSchema } from "./schema.js";

/** Something wrong with a document. */
export interface DocumentProblem {
  readonly code: InputErrorCode;
  /** JSON Pointer (RFC 6901) into the document; the empty text is the whole */
  readonly path: string;
  readonly expected: InputExpected;
  /** the value that was found; its kind where it is an object or an array */
  readonly actual: unknown;
  /** what was expected there and what was found, in plain English */
  readonly message: string;
  /**
   * `"shape"`: the JSON Schema refuses it too; `"relation"`: values that do not go together, which no schema
   * can say
   */
  readonly rule: "shape" | "relation";
  /** of text that is no JSON: the line of the first fault, from 1 */
  readonly line?: number;
  /** its place in that line, from 1 */
  readonly column?: number;
}

/** The type of a value in the words of JSON Schema; another word for what JSON does not know. */
export function kindOf(value: unknown): string {
  if (value === null) return "null";
  if (Array.isArray(value)) return "array";
  if (typeof value !== "number") return typeof value;
  return Number.isInteger(value) ? "integer" : Number.isFinite(value) ? "number" : "not finite";
}

/** Whether a value is of the type that a schema asks for. */
export function isOfType({ type }: JsonSchema, value: unknown): boolean {
  if (type === undefined) return true;
  const kind = kindOf(value);
  return kind === type || (type === "number" && kind === "integer");
}

const NAMES: Readonly<Record<string, string>> = {
  object: "an object",
  array: "an array",
  string: "text",
  number: "a number",
  integer: "a whole number",
  boolean: "true or false",
};

/** What a schema asks for, in words; `name` is that of the field, whose unit ends it. */
export function expected(schema: JsonSchema, name = ""): string {
  const {
    type = "",
    required = [],
    minimum,
    maximum,
    exclusiveMinimum,
    minItems = 0,
    maxItems,
    maxLength,
  } = schema;
  if (schema.anyOf !== undefined) return anyOfThem(schema.anyOf);
  let text = NAMES[type] ?? "anything";
  if (schema.const !== undefined) text = JSON.stringify(schema.const);
  if (schema.enum !== undefined) text = oneOf(schema.enum);
  if (required.length > 0) text += ` with ${required.join(", ")}`;
  if (minimum !== undefined)
    text += maximum === undefined ? ` of at least ${minimum}` : ` from ${minimum} to ${maximum}`;
  else if (exclusiveMinimum !== undefined)
    text += ` above ${exclusiveMinimum}${maximum === undefined ? "" : ` and at most ${maximum}`}`;
  else if (maximum !== undefined) text += ` of at most ${maximum}`;
  if (maxItems !== undefined) text += ` of ${minItems} to ${maxItems}`;
  if (maxLength !== undefined) text += ` of at most ${maxLength} characters`;
  if (schema.pattern !== undefined) text += schema.description === undefined ? "" : `: ${schema.description}`;
  return text.replace(/\.$/, "") + (type === "number" ? unitOf(quantityOf(name)) : "");
}

const TYPES: Readonly<Record<string, string>> = { string: "text", integer: "whole number" };

/** What a schema asks for, as data. */
export function expectedData(schema: JsonSchema, name: string): InputExpected {
  const { type, minimum, maximum, exclusiveMinimum, minItems, maxItems, maxLength } = schema;
  const forms = schema.anyOf ?? [schema];
  const types = [
    ...new Set(forms.flatMap((one) => (one.type === undefined ? [] : [TYPES[one.type] ?? one.type]))),
  ];
  const values = forms.flatMap((one) => one.enum ?? (one.const === undefined ? [] : [String(one.const)]));
  const quantity = type === "number" ? quantityOf(name) : undefined;
  return {
    ...(types.length > 0 && { types }),
    ...(values.length > 0 && { values }),
    ...(minimum !== undefined && { min: minimum }),
    ...(exclusiveMinimum !== undefined && { above: exclusiveMinimum }),
    ...(maximum !== undefined && { max: maximum }),
    ...(quantity !== undefined && { quantity }),
    ...(minItems !== undefined && { least: minItems }),
    ...((maxItems ?? maxLength) !== undefined && { most: (maxItems ?? maxLength) as number }),
    ...(schema.pattern !== undefined && { format: name }),
  };
}

/** Which of the codes of an input error says what is wrong with a value. */
export function codeOf(schema: JsonSchema, value: unknown): InputErrorCode {
  if (schema.anyOf !== undefined || !isOfType(schema, value))
    return typeof value === "number" && Number.isNaN(value) ? "not-a-number" : "wrong-type";
  if (schema.const !== undefined || schema.enum !== undefined) return "not-one-of";
  if (typeof value === "string" && schema.pattern !== undefined) return value === "" ? "empty" : "unreadable";
  if (Array.isArray(value) && value.length < (schema.minItems ?? 0))
    return value.length === 0 ? "empty" : "too-few";
  return "out-of-range";
}

/** A few values in words. */
export function oneOf(choices: readonly unknown[]): string {
  const listed = choices.map((choice) => JSON.stringify(choice)).join(", ");
  return choices.length > 1 ? `one of ${listed}` : listed;
}

function anyOfThem(forms: readonly JsonSchema[]): string {
  return forms.map((one) => expected(one)).join(", or ");
}
