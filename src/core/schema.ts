/*
 * JSON Schema as data, and the parts that the schemas of conditions, laws, runs and recipes are put together
 * from.
 */
import type { AnyCause } from "./cause.js";
import { LOGARITHMIC } from "./departures.js";
import { LEAST } from "./quantity.js";
import { BASES } from "./term.js";

/** The part of JSON Schema (2020-12) that this package's schemas use. */
export interface JsonSchema {
  /** the dialect */
  readonly $schema?: string;
  /** the name of the schema */
  readonly $id?: string;
  /** a remark to whoever reads the schema */
  readonly $comment?: string;
  /** what the document is */
  readonly title?: string;
  /** what the value is, in a sentence */
  readonly description?: string;
  /** values that satisfy it */
  readonly examples?: readonly unknown[];
  /** the type of the value */
  readonly type?: "object" | "array" | "string" | "number" | "integer" | "boolean";
  /** the only value */
  readonly const?: string | number | boolean;
  /** the values it may have */
  readonly enum?: readonly string[];
  /** the fields of an object */
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  /** the fields whose names match a pattern */
  readonly patternProperties?: Readonly<Record<string, JsonSchema>>;
  /** the fields that may not be left out */
  readonly required?: readonly string[];
  /** whether other fields are allowed */
  readonly additionalProperties?: boolean;
  /** each item of a list */
  readonly items?: JsonSchema;
  /** the fewest items */
  readonly minItems?: number;
  /** the most items */
  readonly maxItems?: number;
  /** the least value */
  readonly minimum?: number;
  /** the largest value */
  readonly maximum?: number;
  /** a value that it must exceed */
  readonly exclusiveMinimum?: number;
  /** the most characters */
  readonly maxLength?: number;
  /** a regular expression that the text must match */
  readonly pattern?: string;
  /** forms of which one must fit */
  readonly anyOf?: readonly JsonSchema[];
}

/**
 * The third export of a cause's folder: the JSON Schema of its condition and of its law, each made when it is
 * asked.
 */
export interface CauseSchema {
  readonly cause: AnyCause;
  /** its field in baseline, conditions and runs */
  readonly condition: () => JsonSchema;
  /** its field in knowledge */
  readonly law: () => JsonSchema;
}

/** Fields by name. */
export type Fields = Readonly<Record<string, JsonSchema>>;

/** The same schema with its sentence. */
export const said = (description: string, schema: JsonSchema): JsonSchema => ({ ...schema, description });

const described = (schema: JsonSchema, description: string | undefined): JsonSchema =>
  description === undefined ? schema : { ...schema, description };

/** A number from `minimum` to `maximum`, both included. */
export const from = (minimum: number, maximum: number, description?: string): JsonSchema =>
  described({ type: "number", minimum, maximum }, description);

/** A number above 0: the guards refuse what lies between 0 and `LEAST` too. */
export const above0 = (maximum: number, description?: string): JsonSchema =>
  described({ type: "number", exclusiveMinimum: LEAST, maximum }, description);

/** A whole number from 0. */
export const count = (maximum: number, description?: string): JsonSchema =>
  described({ type: "integer", minimum: 0, maximum }, description);

/** Text up to a length. */
export const text = (maxLength: number, description?: string): JsonSchema =>
  described({ type: "string", maxLength }, description);

/** One of a few texts. */
export const one = (choices: readonly string[], description?: string): JsonSchema =>
  described({ type: "string", enum: choices }, description);

/** True or false. */
export const yes = (description: string): JsonSchema => ({ type: "boolean", description });

/** An array. */
export const list = (
  items: JsonSchema,
  minItems: number,
  maxItems: number,
  description?: string,
): JsonSchema => described({ type: "array", items, minItems, maxItems }, description);

/** Lines of text. */
export const lines = (description: string): JsonSchema => list(text(2000, "One line."), 0, 50, description);

/** An object with these fields and no others but those of one's own, which begin with "x-". */
export const object = (required: readonly string[], properties: Fields, description?: string): JsonSchema =>
  described(
    {
      type: "object",
      properties,
      patternProperties: { "^x-": {} },
      required,
      additionalProperties: false,
    },
    description,
  );

/** One of several forms; the field `kind` comes first and tells them apart. */
export const form = (
  kind: string,
  description: string,
  required: readonly string[],
  properties: Fields,
): JsonSchema =>
  object(
    ["kind", ...required],
    { kind: { const: kind, description: "Which of the forms this is." }, ...properties },
    description,
  );

/** What was learned of the departures from a law, at places along its axis. */
export const departures = (
  [low, high]: readonly [number, number] = LOGARITHMIC,
  place = "The place along the axis.",
  log = "How far ln(time) departs between the place before and this one.",
): Fields => ({
  departures: list(
    object(
      ["at", "log", "sd"],
      {
        at: from(low, high, place),
        log: from(-10, 10, log),
        sd: from(0, 10, "Its standard deviation."),
      },
      "What was learned at one place.",
    ),
    0,
    1000,
    "How far ln(time) departs from the law, as it was learned from runs.",
  ),
});

/** What every law may say of where it comes from. */
export const origin = (): Fields => ({
  sources: lines("Where the figures were published, or how they were obtained."),
  runs: count(1e6, "How many own runs it was learned from; 0 for a generic law that no run has taught."),
  published: yes("True for a published law of the handbook."),
  before: one(BASES, "What a learned law rested on before its first run."),
  moved: yes("False where the runs have hardly moved a learned law."),
  seen: one(
    ["read", "from-memory", "common-practice"],
    "How the figures were seen: read in print, from memory, or common practice.",
  ),
});
