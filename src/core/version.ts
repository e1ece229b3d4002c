import { inputError } from "./errors.js";
import { wrongKind } from "./guards.js";

/**
 * Checks the version that stored data carry: one that is newer than this package reads is refused by name.
 */
export function checkedVersion(at: string, version: unknown, newest: number): void {
  if (typeof version !== "number") wrongKind(at, "a number", version);
  if (version === newest) return;
  const sentence = version > newest ? newerSentence(version, newest) : `must be ${newest}, got ${version}`;
  throw inputError(RangeError, at, "out-of-range", { min: newest, max: newest }, version, sentence);
}

/** What is said of a version that is newer than this package reads. */
export function newerSentence(version: number, newest: number): string {
  return `is ${version}, newer than version ${newest} that this package reads: update the package to read it`;
}
