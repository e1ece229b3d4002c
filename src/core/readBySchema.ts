/*
 * Reads an unknown value by a JSON Schema: one walk that follows the schema, never the value, so that neither
 * depth nor size of the input matters; it makes a clean copy of what is known and lists what is wrong.
 */
import { isInputError } from "./errors.js";
import { mustBe, valuesText, wantedText } from "./errorText.js";
import { longer } from "./longer.js";
import { fieldPlace, unknownField, type UnknownField } from "./onlyFields.js";
import { plainCopy } from "./plainCopy.js";
import type { JsonSchema } from "./schema.js";
import { knownFieldText, plainText } from "./text.js";
import { codeOf, expectedData, isOfType, kindOf, type DocumentProblem } from "./schemaWords.js";
import { isOwnField } from "./ownFields.js";

/** No more problems than this are listed: a hostile document has any number of them. */
export const MOST_PROBLEMS = 100;

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

/** A value as a problem carries it: an object or an array could be of any size, or a ring. */
const shown = (value: unknown): unknown =>
  typeof value === "object" && value !== null ? kindOf(value) : value;

/**
 * Reads `value` by `schema`; adds to `problems` and returns a copy that holds nothing the schema does not
 * name, but for fields of one's own, which begin with "x-".
 */
export function readBySchema(
  schema: JsonSchema,
  value: unknown,
  path: string,
  problems: DocumentProblem[],
): unknown {
  if (schema.anyOf !== undefined) return readAnyOf(schema, value, path, problems);
  if (!satisfies(schema, value)) {
    refuse(problems, path, schema, value);
    return undefined;
  }
  if (Array.isArray(value)) {
    const { items } = schema;
    return items === undefined
      ? ownData(value, path, problems)
      : Array.from(value, (item, i) => readBySchema(items, item, `${path}/${i}`, problems));
  }
  if (typeof value !== "object" || value === null) return value;
  return schema.properties === undefined &&
    schema.required === undefined &&
    schema.additionalProperties !== false
    ? ownData(value, path, problems)
    : readObject(schema, value as Readonly<Record<string, unknown>>, path, problems);
}

/** Data of which the schema says nothing, copied when they are plain. */
function ownData(value: unknown, path: string, problems: DocumentProblem[]): unknown {
  return plainCopy(value, ({ path: inside, actual }) => {
    report(problems, {
      code: "wrong-type",
      path: path + inside,
      expected: { must: "plain-data" },
      actual: shown(actual),
      message: mustBe(plainText({}, actual), actual),
      rule: "relation",
    });
  });
}

function report(problems: DocumentProblem[], problem: DocumentProblem): void {
  if (problems.length < MOST_PROBLEMS) problems.push(problem);
}

/** Reports a value that does not satisfy a schema. */
function refuse(
  problems: DocumentProblem[],
  path: string,
  schema: JsonSchema,
  value: unknown,
  code = codeOf(schema, value),
): void {
  const expected = expectedData(schema, path.slice(path.lastIndexOf("/") + 1));
  // Of an array where one is wanted, the length is wrong.
  const actual = schema.type === "array" && Array.isArray(value) ? value.length : value;
  report(problems, {
    code,
    path,
    expected,
    actual: shown(actual),
    message: mustBe(wantedText(expected), actual),
    rule: "shape",
  });
}

function readObject(
  schema: JsonSchema,
  value: Readonly<Record<string, unknown>>,
  path: string,
  problems: DocumentProblem[],
): unknown {
  const { properties = {}, required = [], additionalProperties, patternProperties } = schema;
  const copy: Record<string, unknown> = {};
  // The schema's own names need no escape in a pointer, and its objects hold nothing but names.
  for (const key in properties) {
    const inner = properties[key] as JsonSchema;
    const part = Object.hasOwn(value, key) ? value[key] : undefined;
    if (part !== undefined) copy[key] = readBySchema(inner, part, `${path}/${key}`, problems);
    else if (required.includes(key)) {
      const expected = expectedData(inner, key);
      const message = `is missing: ${wantedText(expected)}`;
      report(problems, {
        code: "missing",
        path: `${path}/${key}`,
        expected,
        actual: undefined,
        message,
        rule: "shape",
      });
    }
  }
  if (additionalProperties !== undefined)
    for (const key of Object.keys(value)) {
      if (problems.length >= MOST_PROBLEMS) break;
      if (Object.hasOwn(properties, key)) continue;
      if (additionalProperties || (patternProperties !== undefined && isOwnField(key))) {
        if (value[key] !== undefined) copy[key] = ownData(value[key], fieldPlace(path, key), problems);
      } else reportField(problems, unknownField(path, key, Object.keys(properties)));
    }
  return copy;
}

function reportField(problems: DocumentProblem[], { at, actual, expected }: UnknownField): void {
  report(problems, {
    code: "not-one-of",
    path: at,
    expected: { ...expected, must: "known-field" },
    actual,
    message: mustBe(knownFieldText(expected, actual), actual),
    rule: "shape",
  });
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
function readAnyOf(schema: JsonSchema, value: unknown, path: string, problems: DocumentProblem[]): unknown {
  const branches = schema.anyOf as readonly JsonSchema[];
  let nearest: readonly DocumentProblem[] | undefined;
  for (const branch of branches) {
    if (!belongs(branch, value)) continue;
    const found: DocumentProblem[] = [];
    const copy = readBySchema(branch, value, path, found);
    if (found.length === 0) return copy;
    nearest ??= found;
  }
  if (nearest !== undefined) {
    const [first] = nearest;
    // One of a few texts is wanted, or another form: both are said.
    if (first?.code === "not-one-of" && first.path === path)
      refuse(problems, path, schema, value, first.code);
    else for (const each of nearest) report(problems, each);
    return undefined;
  }
  const telling =
    kindOf(value) === "object" ? branches.map(tellingField).find((name) => name !== undefined) : undefined;
  if (telling === undefined) refuse(problems, path, schema, value);
  else {
    const forms = branches.map((branch) => branch.properties?.[telling] ?? {});
    const given = ownField(value, telling);
    const values = forms.map((one) => one.const).filter((name) => name !== undefined);
    report(problems, {
      code: given === undefined ? "missing" : "not-one-of",
      path: `${path}/${telling}`,
      expected: { values },
      actual: shown(given),
      message: mustBe(valuesText(values), given),
      rule: "shape",
    });
  }
  return undefined;
}

/**
 * Asks a module and turns its refusal into a problem at `path`, or at the field below it that the refusal
 * names.
 */
export function problemAt<T>(problems: DocumentProblem[], path: string, call: () => T): T | undefined {
  try {
    return call();
  } catch (error) {
    if (!isInputError(error)) throw error;
    const { code, expected, actual, sentence } = error;
    // The first name in its path is that of the argument, which is at `path` here.
    const field = error.path
      .split("/")
      .slice(2)
      .map((key) => `/${key}`)
      .join("");
    problems.push({
      code,
      path: path + field,
      expected,
      actual: shown(actual),
      message: sentence,
      rule: "relation",
    });
    return undefined;
  }
}
