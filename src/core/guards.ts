/*
 * Room: core. Guards that every public function uses to refuse wrong input with one clear text:
 * function, field, unit, allowed range, value. Written as `!(x >= min)` so that NaN is refused too.
 */

/** Shows any value in an error text: short, and never throwing itself. */
export function show(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(value.slice(0, 60));
  if (Array.isArray(value)) return "an array";
  if (typeof value === "object" && value) return "an object";
  return typeof value === "function" ? "a function" : String(value);
}

/** Refuses with a `TypeError`: the value is of the wrong kind. */
export function wrongKind(where: string, expected: string, value: unknown): never {
  throw new TypeError(`${where} must be ${expected}, got ${show(value)}`);
}

/** Refuses with a `RangeError`: the kind is right, the value is not. */
export function wrongValue(where: string, expected: string, value: unknown): never {
  throw new RangeError(`${where} must be ${expected}, got ${show(value)}`);
}

/**
 * Returns `value` when it is a number from `min` to `max`, both included; throws otherwise.
 *
 * @param where - function and field, for example `"temperatureFactor: fromC"`
 * @param unit - the unit for the text, for example `" °C"`, or `""`
 * @param field - the rest of `where`, apart so that a hot path joins no text unless it throws
 */
export function inRange(
  where: string,
  value: unknown,
  min: number,
  max: number,
  unit: string,
  field = "",
): number {
  if (typeof value !== "number") wrongKind(where + field, "a number", value);
  if (!(value >= min && value <= max)) wrongValue(where + field, `from ${min} to ${max}${unit}`, value);
  return value;
}

/**
 * Returns `value` when it is a number greater than zero and at most `max`; throws otherwise. What lies
 * between 0 and 1e-30 measures nothing, and what is divided by it is no number any more: it is refused too.
 */
export function positive(where: string, value: unknown, max: number, unit: string, field = ""): number {
  if (typeof value !== "number") wrongKind(where + field, "a number", value);
  if (!(value >= 1e-30 && value <= max))
    wrongValue(
      where + field,
      `above ${value > 0 && value < 1e-30 ? 1e-30 : 0} and at most ${max}${unit}`,
      value,
    );
  return value;
}

/** Returns `value` when it is a plain object (not null, not an array); throws a `TypeError` otherwise. */
export function plainObject(where: string, value: unknown, field = ""): Record<string, unknown> {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    wrongKind(where + field, "an object", value);
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
export function arrayOf(where: string, value: unknown, least: number): readonly unknown[] {
  return [...longEnough(where, value, least)];
}

/**
 * Returns `value` itself when it is an array of at least `least` items, holes and all, for a hot path that
 * reads each item once.
 */
export function longEnough(where: string, value: unknown, least: number): readonly unknown[] {
  if (!Array.isArray(value)) wrongKind(where, "an array", value);
  if (value.length < least) throw new RangeError(`${where} must hold at least ${least}, got ${value.length}`);
  if (value.length > MOST_ITEMS)
    throw new RangeError(`${where} must hold at most ${MOST_ITEMS}, got ${value.length}`);
  return value as unknown[];
}

/**
 * Returns the entry of a table of published figures; throws when `key` is not text, or not one of the
 * table's, which it lists.
 */
export function knownEntry<K extends string, V>(
  where: string,
  table: Readonly<Partial<Record<K, V>>>,
  key: unknown,
): V {
  if (typeof key !== "string") wrongKind(where, "text", key);
  if (!Object.hasOwn(table, key)) wrongValue(where, `one of ${Object.keys(table).join(", ")}`, key);
  return table[key as K] as V;
}
