/*
 * Parts of a file, each of the kind that it must be.
 */
import { onlyFields } from "../core/onlyFields.js";
import { fault, placed, type Said } from "./fault.js";

/** Fields of an object by their names. */
export type Fields = Readonly<Record<string, unknown>>;

/** Makes a call, and throws its fault or keeps it. */
export type Sound = <T>(call: () => T) => T | undefined;

/** Refuses each field that is not read, as a recipe does: a misspelt one would mean "as in the baseline". */
export function refuseOthers(pointer: string, part: Fields, fields: readonly string[], sound: Sound): void {
  for (const name of Object.keys(part))
    sound(() => placed([], () => onlyFields(`day${pointer}`, { [name]: part[name] }, fields)));
}

export const optionalText = (value: unknown, pointer: string): string | undefined =>
  value === undefined ? undefined : text(value, pointer);

/** A value that must be there. */
export function given(value: unknown, pointer: string, what: Said): unknown {
  if (value === undefined || value === null)
    throw fault({ en: `${what.en} is missing.`, de: `${what.de} fehlt.` }, { pointer });
  return value;
}

export function object(value: unknown, pointer: string, what: Said): Fields {
  const there = given(value, pointer, what);
  if (typeof there !== "object" || Array.isArray(there))
    throw fault(
      { en: `${what.en} must be an object.`, de: `${what.de}: nötig ist ein Objekt.` },
      { pointer },
    );
  return there as Fields;
}

export function list(value: unknown, pointer: string, what: Said): readonly unknown[] {
  const there = given(value, pointer, what);
  if (!Array.isArray(there))
    throw fault({ en: `${what.en} must be a list.`, de: `${what.de}: nötig ist eine Liste.` }, { pointer });
  return there;
}

export function text(value: unknown, pointer: string): string {
  if (typeof value !== "string")
    throw fault({ en: "this must be text.", de: "nötig ist Text." }, { pointer });
  return value;
}
