/*
 * Guards that every public function uses to refuse wrong input. A guard takes the place of the value, such as
 * "compensate/baseline/timeS", and throws an input error there. Written as `!(x >= min)` so that NaN is
 * refused too.
 */
import { inputError, show, type InputErrorCode, type InputExpected } from "./errors.js";
import { unitOf, type Quantity } from "./quantity.js";

/** Refuses with a `TypeError`: the value is of the wrong kind. `must` says in words what was expected. */
export function wrongKind(at: string, must: string, value: unknown, expected: InputExpected = {}): never {
  const code = value === undefined || value === null ? "missing" : value === "" ? "empty" : "wrong-type";
  // "a number" is of the type "number".
  const types = expected.types ?? [must === "true or false" ? "boolean" : must.replace(/^an? (\w+)$/, "$1")];
  // The function that reads text for a field of that name.
  const parse = /S$/.test(at) ? "parseTime" : /C$/.test(at) ? "parseTemperature" : "number";
  const readable = typeof value === "string" && types.includes("number");
  throw inputError(
    TypeError,
    at,
    code,
    { ...expected, types, ...(readable && { parse }) },
    value,
    `must be ${must}, got ${show(value)}`,
  );
}

/**
 * Refuses with a `RangeError`: the kind is right, the value is not. `must` says in words what was expected.
 */
export function wrongValue(
  at: string,
  must: string,
  value: unknown,
  expected: InputExpected = { must },
  code: InputErrorCode = "out-of-range",
): never {
  throw inputError(RangeError, at, code, expected, value, `must be ${must}, got ${show(value)}`);
}

/** Refuses with a `RangeError` whose sentence says itself what was got. */
export function refuse(
  at: string,
  sentence: string,
  actual: unknown,
  expected: InputExpected = { must: sentence },
  code: InputErrorCode = "out-of-range",
): never {
  throw inputError(RangeError, at, code, expected, actual, sentence);
}

/** Refuses text that is not of a format; `must` says in words what it should be. */
export function unreadable(
  at: string,
  format: string,
  examples: readonly string[],
  must: string,
  text: unknown,
): never {
  return wrongValue(at, must, text, { format, examples }, text === "" ? "empty" : "unreadable");
}

/** Refuses a value that is not one of a few. */
export function notOneOf(at: string, values: readonly string[], value: unknown, must?: string): never {
  const all = must ?? (values.length > 6 ? `one of ${values.join(", ")}` : orText(values));
  return wrongValue(at, all, value, { values }, "not-one-of");
}

/** A few values in words: "a", "b" or "c". */
function orText(values: readonly string[]): string {
  const shown = values.map((value) => JSON.stringify(value));
  const last = shown.pop();
  return shown.length > 0 ? `${shown.join(", ")} or ${last}` : (last as string);
}

/**
 * Returns `value` when it is a number from `min` to `max`, both included; throws otherwise.
 *
 * @param at - the place of the value
 * @param quantity - what it measures, for the unit in the sentence
 * @param field - the rest of the place, apart so that a hot path joins no text unless it throws
 */
export function inRange(
  at: string,
  value: unknown,
  min: number,
  max: number,
  quantity?: Quantity,
  field = "",
): number {
  if (typeof value !== "number") wrongKind(at + field, "a number", value);
  if (!(value >= min && value <= max))
    outOfRange(at + field, `from ${min} to ${max}`, value, { min, max }, quantity);
  return value;
}

/**
 * Returns `value` when it is a number greater than zero and at most `max`; throws otherwise. What lies
 * between 0 and 1e-30 measures nothing, and what is divided by it is no number any more: it is refused too.
 */
export function positive(at: string, value: unknown, max: number, quantity?: Quantity, field = ""): number {
  if (typeof value !== "number") wrongKind(at + field, "a number", value);
  if (!(value >= 1e-30 && value <= max)) {
    const above = value > 0 && value < 1e-30 ? 1e-30 : 0;
    outOfRange(at + field, `above ${above} and at most ${max}`, value, { above, max }, quantity);
  }
  return value;
}

function outOfRange(
  at: string,
  must: string,
  value: number,
  range: InputExpected,
  quantity: Quantity | undefined,
): never {
  // What the figure may be instead: kelvin for °C, per cent for a share.
  const hint =
    /C$/.test(at) && value > 250 && value < 400
      ? "kelvin"
      : /ogSd$/.test(at) && value > 1
        ? "percent"
        : undefined;
  return wrongValue(
    at,
    must + unitOf(quantity),
    value,
    { ...range, ...(quantity && { quantity }), ...(hint && { hint }) },
    Number.isNaN(value) ? "not-a-number" : "out-of-range",
  );
}

/** Returns `value` when it is a plain object (not null, not an array); throws a `TypeError` otherwise. */
export function plainObject(at: string, value: unknown, field = ""): Record<string, unknown> {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    wrongKind(at + field, "an object", value);
  return value as Record<string, unknown>;
}

/**
 * The most items of an array: a reading every second for a day. Beyond that an array is a mistake, or made to
 * hang whoever walks it.
 */
const MOST_ITEMS = 1e5;

/**
 * Returns a copy of `value`, without holes, when it is an array of at least `least` items; throws otherwise.
 */
export function arrayOf(at: string, value: unknown, least: number): readonly unknown[] {
  return [...longEnough(at, value, least)];
}

/**
 * Returns `value` itself when it is an array of at least `least` items, holes and all, for a hot path that
 * reads each item once.
 */
export function longEnough(at: string, value: unknown, least: number): readonly unknown[] {
  if (!Array.isArray(value)) wrongKind(at, "an array", value);
  const { length } = value;
  // What was wrong is the length: an error does not carry the array itself.
  if (length < least) {
    const code = length === 0 ? "empty" : "too-few";
    refuse(at, `must hold at least ${least}, got ${length}`, length, { least }, code);
  }
  if (length > MOST_ITEMS)
    refuse(at, `must hold at most ${MOST_ITEMS}, got ${length}`, length, { most: MOST_ITEMS });
  return value as unknown[];
}

/**
 * Returns the entry of a table of published figures; throws when `key` is not text, or not one of the
 * table's.
 */
export function knownEntry<K extends string, V>(
  at: string,
  table: Readonly<Partial<Record<K, V>>>,
  key: unknown,
): V {
  if (typeof key !== "string") wrongKind(at, "text", key);
  if (!Object.hasOwn(table, key)) {
    const values = Object.keys(table);
    notOneOf(at, values, key, `one of ${values.join(", ")}`);
  }
  return table[key as K] as V;
}
