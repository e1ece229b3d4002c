/*
 * JSON Pointer: P. Bryan, K. Zyp, M. Nottingham, RFC 6901, 2013. Fields that are not read are told by it.
 */
import type { Caution } from "./caution.js";
import { makeCaution } from "./cautionTexts.js";
import { nearestName } from "./nearestName.js";
import { unknownFieldSentence } from "./text.js";
import { isOwnField } from "./ownFields.js";

/**
 * The pointer to a member of what `parent` points to: `~` is written `~0` and `/` is written `~1` (RFC 6901,
 * section 3).
 */
export function pointerTo(parent: string, key: string | number): string {
  return `${parent}/${String(key).replaceAll("~", "~0").replaceAll("/", "~1")}`;
}

/** More fields than so many are not named. */
const MOST_NAMED = 50;

/**
 * A caution for each field that is not read, up to fifty: one that is misspelt or in another unit would
 * otherwise pass in silence. Fields that begin with "x-" are the caller's own; one that is undefined is left
 * out.
 */
export function unreadFields(path: string, given: object, known: readonly string[]): readonly Caution[] {
  const fields = given as Readonly<Record<string, unknown>>;
  return Object.keys(given)
    .filter((field) => !known.includes(field) && !isOwnField(field) && fields[field] !== undefined)
    .slice(0, MOST_NAMED)
    .map((field) => {
      const nearest = nearestName(field, known);
      const data = nearest === undefined ? { field } : { field, nearest };
      return makeCaution(unknownFieldSentence, "unknown-field", "warn", {
        path: pointerTo(path, field),
        data,
      });
    });
}
