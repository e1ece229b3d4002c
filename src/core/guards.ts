/*
 * Guards that every public function uses to refuse wrong input. A guard takes the place of the value, such as
 * "compensate/baseline/timeS", and throws an input error there. Written as `!(x >= min)` so that NaN is
 * refused too.
 */
import {
  inputError,
  type ExpectedFigures,
  type InputErrorCode,
  type InputExpected,
  type InputFormat,
  type InputType,
} from "./errors.js";
import type { InputRule, InputRules, InputWanted } from "./errorRules.js";
import {
  aboveTo,
  formatText,
  itemsText,
  mustBe,
  fromTo,
  sideText,
  typesText,
  valuesText,
  wantedText,
} from "./errorText.js";
import { longer } from "./longer.js";
import { LEAST, unitOf, type MeasuredQuantity } from "./quantity.js";

/** Refuses with a `TypeError`: the value is of none of these kinds. */
export function wrongKind(at: string, types: readonly InputType[], value: unknown): never {
  const readable = typeof value === "string" && types.includes("number");
  const parse = readable ? parserFor(at) : undefined;
  const expected = { types, ...(parse && { parse }) };
  throw inputError(TypeError, at, kindCode(value), expected, value, mustBe(typesText(types), value));
}

/** The function that reads text for a field of that name: most end in their unit. */
const parserFor = (at: string): ExpectedFigures["parse"] =>
  /C$/.test(at)
    ? "parseTemperature"
    : /Stops$/.test(at)
      ? "parseStops"
      : /S$/.test(at)
        ? "parseTime"
        : /PerL$/.test(at)
          ? "parseUse"
          : /eH$/.test(at)
            ? "parseAge"
            : undefined;

const kindCode = (value: unknown): InputErrorCode =>
  value === undefined || value === null ? "missing" : value === "" ? "empty" : "wrong-type";

/** Refuses with a `RangeError`: the kind is right, the value is not; `wanted` says what it must be. */
function wrongValue(
  at: string,
  wanted: string,
  value: unknown,
  expected: InputExpected,
  code: InputErrorCode | undefined = "out-of-range",
): never {
  throw inputError(RangeError, at, code, expected, value, mustBe(wanted, value));
}

/** Refuses with a `RangeError` by a rule of its own; `wanted` says in words what it wants. */
export function refuse<Rule extends InputRule>(
  at: string,
  must: Rule,
  wanted: InputWanted<Rule>,
  expected: InputRules[Rule] & ExpectedFigures,
  actual: unknown,
  code: InputErrorCode = "out-of-range",
): never {
  const sentence =
    actual === undefined ? `must be ${wanted(expected, actual)}` : mustBe(wanted(expected, actual), actual);
  throw inputError(RangeError, at, code, { ...expected, must } as InputExpected, actual, sentence);
}

/** A format of text, with examples. */
export interface TextForm {
  readonly format: InputFormat;
  readonly examples: readonly string[];
}

/** Refuses what is no text of a format. */
export function unreadable(at: string, { format, examples }: TextForm, value: unknown): never {
  const text = typeof value === "string";
  throw inputError(
    text ? RangeError : TypeError,
    at,
    !text ? kindCode(value) : value.trim() === "" ? "empty" : "unreadable",
    { ...(!text && { types: ["text"] }), format, examples },
    value,
    mustBe(formatText(format, examples), value),
  );
}

/** Refuses text that fits no form that is taken. */
export function noForm(at: string, expected: ExpectedFigures, value: string): never {
  return wrongValue(at, wantedText(expected), value, expected, value === "" ? "empty" : "unreadable");
}

/** Refuses text that may mean several things. */
export function ambiguous(at: string, form: TextForm, readings: readonly string[], text: string): never {
  return wrongValue(at, valuesText(readings), text, { ...form, readings }, "ambiguous");
}

/** Refuses a value that is not one of a few. */
export function notOneOf(at: string, values: readonly (string | number | boolean)[], value: unknown): never {
  return wrongValue(at, valuesText(values), value, { values }, "not-one-of");
}

/** Refuses a number that lies on the wrong side of another field, or of two. */
export function wrongSide(at: string, value: unknown, expected: ExpectedFigures): never {
  return wrongValue(at, sideText(expected), value, expected);
}

/** Refuses a count of items. */
export function wrongCount(at: string, count: number, expected: ExpectedFigures): never {
  const few = count < (expected.least ?? 0);
  const code = few ? (count === 0 ? "empty" : "too-few") : "out-of-range";
  throw inputError(RangeError, at, code, expected, count, itemsText(expected, count, at));
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
  quantity?: MeasuredQuantity,
  field = "",
): number {
  if (typeof value !== "number") wrongKind(at + field, ["number"], value);
  if (!(value >= min && value <= max))
    outOfRange(at + field, fromTo(min, max), value, { min, max }, quantity);
  return value;
}

/**
 * Returns `value` when it is a number greater than zero and at most `max`; throws otherwise. What lies
 * between 0 and `LEAST` is refused too, as what is not above 0.
 */
export function positive(
  at: string,
  value: unknown,
  max: number,
  quantity?: MeasuredQuantity,
  field = "",
): number {
  if (typeof value !== "number") wrongKind(at + field, ["number"], value);
  if (!(value >= LEAST && value <= max))
    outOfRange(at + field, aboveTo(0, max), value, { above: 0, max }, quantity);
  return value;
}

/** The least that an answer holds. */
const LEAST_ANSWER = 1e-100;

/** The same for what another function answered, which may be smaller than anything that is given. */
export function aboveZero(
  at: string,
  value: unknown,
  max: number,
  quantity?: MeasuredQuantity,
  field = "",
): number {
  return typeof value === "number" && value >= LEAST_ANSWER && value <= max
    ? value
    : positive(at, value, max, quantity, field);
}

function outOfRange(
  at: string,
  wanted: string,
  value: number,
  range: ExpectedFigures,
  quantity: MeasuredQuantity | undefined,
): never {
  // What the figure may be instead: kelvin for °C, per cent for a share.
  const hint =
    value > 250 && value < 400 && /C$/.test(at)
      ? "kelvin"
      : value > 1 && /ogSd$/.test(at)
        ? "percent"
        : undefined;
  return wrongValue(
    at,
    wanted + unitOf(quantity),
    value,
    { ...range, ...(quantity && { quantity }), ...(hint && { hint }) },
    Number.isNaN(value) ? "not-a-number" : undefined,
  );
}

/** Throws a `TypeError` unless `value` is text. */
export function isText(at: string, value: unknown): asserts value is string {
  if (typeof value !== "string") wrongKind(at, ["text"], value);
}

/** Throws unless `value` is text of at most so many characters: what is stored has no longer ones. */
export function isShortText(at: string, value: unknown, most: number): asserts value is string {
  isText(at, value);
  if (!longer(value, most)) return;
  const expected: ExpectedFigures = { types: ["text"], most };
  wrongValue(at, wantedText(expected), value, expected);
}

/** Throws unless `value` is a whole number from 0 to 1e6: so many runs, where it is given. */
export function isCount(at: string, value: unknown): void {
  if (!Number.isInteger(inRange(at, value, 0, 1e6))) wrongKind(at, ["whole number"], value);
}

/** Throws a `TypeError` unless `value` is true or false. */
export function isBoolean(at: string, value: unknown): asserts value is boolean {
  if (typeof value !== "boolean") wrongKind(at, ["boolean"], value);
}

/** Returns `value` when it is a plain object (not null, not an array); throws a `TypeError` otherwise. */
export function plainObject(at: string, value: unknown, field = ""): Record<string, unknown> {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    wrongKind(at + field, ["object"], value);
  return value as Record<string, unknown>;
}

/**
 * The most items of an array: a reading every second for a day. Beyond that an array is a mistake, or made to
 * hang whoever walks it.
 */
export const MOST_ITEMS = 1e5;

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
  if (!Array.isArray(value)) wrongKind(at, ["array"], value);
  const { length } = value;
  // What was wrong is the length: an error does not carry the array itself.
  if (length < least) wrongCount(at, length, { least });
  if (length > MOST_ITEMS) wrongCount(at, length, { most: MOST_ITEMS });
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
  isText(at, key);
  if (!Object.hasOwn(table, key)) notOneOf(at, Object.keys(table), key);
  return table[key as K] as V;
}
