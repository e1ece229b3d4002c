/*
 * What a schema asks for, as data, and what a problem of a document is.
 */
import type { ExpectedFigures, InputErrorCode, InputExpected } from "./errors.js";
import { LEAST, quantityOf } from "./quantity.js";
import type { JsonSchema } from "./schema.js";

/** Something wrong with a document. */
export interface DocumentProblem {
  /** what is wrong, stable for programs */
  readonly code: InputErrorCode;
  /** JSON Pointer (RFC 6901) into the document; the empty text is the whole */
  readonly path: string;
  /** what was expected there, as data */
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
  /** of text that is no JSON, or has a name twice: the line of the first fault, from 1 */
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

/** The examples of a schema as JSON in one line. */
function examplesOf({ examples = [] }: JsonSchema): readonly string[] {
  return examples.map((example) => JSON.stringify(example, undefined, 1).replace(/\s+/g, " "));
}

/** What a schema asks for, as data. */
export function expectedData(schema: JsonSchema, name = ""): ExpectedFigures {
  const { type, minimum, maximum, exclusiveMinimum, minItems, maxItems, maxLength, required = [] } = schema;
  const examples = examplesOf(schema);
  // The form that is meant says more than all forms at once.
  if (examples.length > 0) return { types: ["object"], examples };
  if (schema.anyOf !== undefined) return { forms: schema.anyOf.map((form) => expectedData(form)) };
  const values = schema.enum ?? (schema.const === undefined ? [] : [schema.const]);
  const quantity = type === "number" ? quantityOf(name) : undefined;
  return {
    ...(type !== undefined && values.length === 0 && { types: [TYPES[type]] }),
    ...(values.length > 0 && { values }),
    ...(required.length > 0 && { fields: required }),
    ...(minimum !== undefined && { min: minimum }),
    ...(exclusiveMinimum !== undefined && { above: exclusiveMinimum === LEAST ? 0 : exclusiveMinimum }),
    ...(maximum !== undefined && { max: maximum }),
    ...(quantity !== undefined && { quantity }),
    ...(minItems !== undefined && { least: minItems }),
    ...((maxItems ?? maxLength) !== undefined && { most: maxItems ?? maxLength }),
    // The one format of text that the schemas know.
    ...(schema.pattern !== undefined && { format: "dilution" as const, examples: ["1+9", "stock"] }),
  };
}

const TYPES = {
  object: "object",
  array: "array",
  string: "text",
  number: "number",
  integer: "whole number",
  boolean: "boolean",
} as const;

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
