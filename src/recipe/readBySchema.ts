/*
 * Room: recipe. Reads an unknown value by a JSON Schema: one walk that follows the schema, never the value,
 * so that neither depth nor size of the input matters; it makes a clean copy of what is known and lists what
 * is wrong.
 */

import { show } from "../core/errors.js";
import { pointerTo } from "../core/pointer.js";
import type { RecipeProblem } from "./types.js";

/** The part of JSON Schema (2020-12) that the recipe's schema uses. */
export interface JsonSchema {
  readonly $schema?: string;
  readonly $comment?: string;
  readonly title?: string;
  readonly description?: string;
  readonly type?: "object" | "array" | "string" | "number" | "integer" | "boolean";
  readonly const?: string | number;
  readonly enum?: readonly string[];
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: false;
  readonly items?: JsonSchema;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly maxLength?: number;
  readonly pattern?: string;
  readonly anyOf?: readonly JsonSchema[];
}

/** No more problems than this are listed: a hostile document has any number of them. */
export const MOST_PROBLEMS = 100;

/** Longer names are not repeated in a path, which then points to the object that holds them. */
const LONGEST_NAME = 200;

/** The type of a value in the words of JSON Schema; another word for what JSON does not know. */
function kindOf(value: unknown): string {
  if (value === null) return "null";
  if (Array.isArray(value)) return "array";
  if (typeof value !== "number") return typeof value;
  return Number.isInteger(value) ? "integer" : Number.isFinite(value) ? "number" : "not finite";
}

function isOfType({ type }: JsonSchema, value: unknown): boolean {
  if (type === undefined) return true;
  const kind = kindOf(value);
  return kind === type || (type === "number" && kind === "integer");
}

/** A length in characters, as JSON Schema counts; `most` spares counting what is far too long. */
function longer(text: string, most: number): boolean {
  return text.length > most && (text.length > 2 * most || Array.from(text).length > most);
}

/**
 * Whether a value that is neither object nor array satisfies the schema; of those two, whether their size
 * does.
 */
function satisfies(schema: JsonSchema, value: unknown): boolean {
  if (!isOfType(schema, value)) return false;
  if (schema.const !== undefined && value !== schema.const) return false;
  if (schema.enum !== undefined && !schema.enum.includes(value as string)) return false;
  if (typeof value === "number") {
    const { minimum = -Infinity, maximum = Infinity, exclusiveMinimum = -Infinity } = schema;
    return value >= minimum && value <= maximum && value > exclusiveMinimum;
  }
  if (typeof value === "string")
    return (
      !longer(value, schema.maxLength ?? Infinity) &&
      (schema.pattern === undefined || new RegExp(schema.pattern, "u").test(value))
    );
  return (
    !Array.isArray(value) ||
    (value.length >= (schema.minItems ?? 0) && value.length <= (schema.maxItems ?? Infinity))
  );
}

const NAMES: Readonly<Record<string, string>> = {
  object: "an object",
  array: "an array",
  string: "text",
  number: "a number",
  integer: "a whole number",
  boolean: "true or false",
};

/** What a schema asks for, in words. */
function expected(schema: JsonSchema): string {
  const {
    type = "",
    required = [],
    minimum,
    maximum,
    exclusiveMinimum,
    minItems = 0,
    maxItems,
    maxLength,
    description,
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
  return description === undefined ? text : `${text} (${description})`;
}

function oneOf(choices: readonly unknown[]): string {
  return `${choices.length > 1 ? "one of " : ""}${choices.map((choice) => JSON.stringify(choice)).join(", ")}`;
}

function anyOfThem(forms: readonly JsonSchema[]): string {
  return forms.map(expected).join(", or ");
}

/**
 * Reads `value` by `schema`; adds to `problems` and returns a copy that holds nothing the schema does not
 * name.
 */
export function readBySchema(
  schema: JsonSchema,
  value: unknown,
  path: string,
  problems: RecipeProblem[],
): unknown {
  if (schema.anyOf !== undefined) return readAnyOf(schema.anyOf, value, path, problems);
  if (!satisfies(schema, value)) {
    report(problems, path, `must be ${expected(schema)}, got ${show(value)}`);
    return undefined;
  }
  if (Array.isArray(value)) {
    const { items } = schema;
    return items === undefined
      ? value
      : Array.from(value, (item, i) => readBySchema(items, item, `${path}/${i}`, problems));
  }
  return typeof value === "object" && value !== null
    ? readObject(schema, value as Readonly<Record<string, unknown>>, path, problems)
    : value;
}

function report(problems: RecipeProblem[], path: string, message: string): void {
  if (problems.length < MOST_PROBLEMS) problems.push({ path, message, rule: "shape" });
}

function readObject(
  schema: JsonSchema,
  value: Readonly<Record<string, unknown>>,
  path: string,
  problems: RecipeProblem[],
): unknown {
  const { properties = {}, required = [], additionalProperties } = schema;
  const copy: Record<string, unknown> = {};
  // The schema's own names need no escape in a pointer, and its objects hold nothing but names.
  for (const key in properties) {
    const inner = properties[key] as JsonSchema;
    const part = Object.hasOwn(value, key) ? value[key] : undefined;
    if (part !== undefined) copy[key] = readBySchema(inner, part, `${path}/${key}`, problems);
    else if (required.includes(key)) report(problems, `${path}/${key}`, `is missing: ${expected(inner)}`);
  }
  if (additionalProperties === false)
    for (const key of Object.keys(value)) {
      if (problems.length >= MOST_PROBLEMS) break;
      if (!Object.hasOwn(properties, key))
        report(
          problems,
          key.length > LONGEST_NAME ? path : pointerTo(path, key),
          `${show(key)} is not a field here; known are ${Object.keys(properties).join(", ")}`,
        );
    }
  return copy;
}

/**
 * The field by which one of several forms is told from the others: the first required one, where it has one
 * fixed value.
 */
function tellingField({ properties, required }: JsonSchema): string | undefined {
  const first = required?.[0];
  return first !== undefined && properties?.[first]?.const !== undefined ? first : undefined;
}

function belongs(branch: JsonSchema, value: unknown): boolean {
  if (!isOfType(branch, value)) return false;
  const telling = tellingField(branch);
  return (
    telling === undefined ||
    typeof value !== "object" ||
    ownField(value, telling) === branch.properties?.[telling]?.const
  );
}

function ownField(value: unknown, key: string): unknown {
  return Object.hasOwn(value as object, key) ? (value as Readonly<Record<string, unknown>>)[key] : undefined;
}

/** One of several forms. What is wrong is told by the form that the value means to be, and of no other. */
function readAnyOf(
  branches: readonly JsonSchema[],
  value: unknown,
  path: string,
  problems: RecipeProblem[],
): unknown {
  let nearest: readonly RecipeProblem[] | undefined;
  for (const branch of branches) {
    if (!belongs(branch, value)) continue;
    const found: RecipeProblem[] = [];
    const copy = readBySchema(branch, value, path, found);
    if (found.length === 0) return copy;
    nearest ??= found;
  }
  if (nearest === undefined) {
    const telling =
      kindOf(value) === "object" ? branches.map(tellingField).find((name) => name !== undefined) : undefined;
    if (telling === undefined) report(problems, path, `must be ${anyOfThem(branches)}, got ${show(value)}`);
    else {
      const known = oneOf(branches.map((branch) => branch.properties?.[telling]?.const));
      report(problems, `${path}/${telling}`, `must be ${known}, got ${show(ownField(value, telling))}`);
    }
  } else for (const { path: where, message } of nearest) report(problems, where, message);
  return undefined;
}
