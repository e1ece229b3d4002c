/*
 * JSON Pointer: P. Bryan, K. Zyp, M. Nottingham, RFC 6901, 2013. Fields that are not read are told by it.
 */
import type { Caution } from "./caution.js";
import { show } from "./errors.js";
import { nearestName } from "./nearestName.js";

/**
 * The pointer to a member of what `parent` points to: `~` is written `~0` and `/` is written `~1` (RFC 6901,
 * section 3).
 */
export function pointerTo(parent: string, key: string | number): string {
  return `${parent}/${String(key).replaceAll("~", "~0").replaceAll("/", "~1")}`;
}

/**
 * A caution for each field that is not read: one that is misspelt or in another unit would otherwise pass in
 * silence. Fields that begin with "x-" are the caller's own.
 */
export function unreadFields(path: string, given: object, known: readonly string[]): readonly Caution[] {
  return Object.keys(given)
    .filter((field) => !known.includes(field) && !field.startsWith("x-"))
    .map((field) => {
      const nearest = nearestName(field, known);
      const meant = nearest === undefined ? "" : ` Is ${nearest} meant?`;
      return {
        code: "unknown-field",
        severity: "warn",
        message: `The field ${show(field)} is not read.${meant}`,
        path: pointerTo(path, field),
        data: nearest === undefined ? { field } : { field, nearest },
      };
    });
}
