/*
 * Module: core. Plain data for comparing and keeping: without the fields that storage drops, and in one
 * order.
 */

/** The fields that are there, as storage keeps them. */
function givenFields(fields: object): [string, unknown][] {
  return Object.entries(fields).filter(([, value]) => value !== undefined);
}

/** An object without the fields that are not there, so that laid over another it hides nothing of that. */
export function present<Fields extends object>(fields: Fields): Fields {
  return Object.fromEntries(givenFields(fields)) as Fields;
}

/** Data with the fields of each object in one order, without those that storage drops: for comparing. */
export function ordered(value: unknown): unknown {
  // JSON has no text for a bigint: what holds one is refused by name where it is read.
  if (typeof value !== "object" || value === null) return typeof value === "bigint" ? String(value) : value;
  return givenFields(value)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([field, part]) => [field, ordered(part)]);
}
