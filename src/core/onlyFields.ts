import { plainObject, refuse } from "./guards.js";
import { nearestName } from "./nearestName.js";
import { pointerTo } from "./pointer.js";
import { knownFieldText } from "./text.js";
import { isOwnField } from "./ownFields.js";

/** Longer names are not repeated in a path, which then points to the object that holds them. */
export const LONGEST_NAME = 200;

/** A field that is not read: its place below `at`, its name, and what may have been meant. */
export interface UnknownField {
  readonly at: string;
  readonly actual: string;
  readonly expected: { readonly values: readonly string[]; readonly hint?: string };
}

/** The place of a field below `at`. */
export const fieldPlace = (at: string, name: string): string =>
  name.length > LONGEST_NAME ? at : pointerTo(at, name);

/** What is said of a field that is not one of `values`. */
export function unknownField(at: string, name: string, values: readonly string[]): UnknownField {
  const hint = nearestName(name, values);
  return {
    at: fieldPlace(at, name),
    actual: name.slice(0, LONGEST_NAME),
    expected: { values, ...(hint !== undefined && { hint }) },
  };
}

/** Refuses a field that is not one of `values`. */
export function refuseField(where: string, name: string, values: readonly string[]): never {
  const { at, actual, expected } = unknownField(where, name, values);
  refuse(at, "known-field", knownFieldText, expected, actual, "not-one-of");
}

/**
 * Returns an object that has no other fields than these and the caller's own, which begin with "x-": one that
 * is misspelt would be taken for one left out.
 */
export function onlyFields(at: string, given: unknown, fields: readonly string[]): Record<string, unknown> {
  const object = plainObject(at, given);
  for (const name in object) if (!fields.includes(name) && !isOwnField(name)) refuseField(at, name, fields);
  return object;
}
