import { notOneOf, refuse, wrongKind } from "./guards.js";
import { newerText } from "./text.js";

/**
 * Checks the version that stored data carry: one that is newer than this package reads is refused by name.
 */
export function checkedVersion(at: string, version: unknown, newest: number): void {
  if (typeof version !== "number") wrongKind(at, ["number"], version);
  if (version > newest) refuse(at, "known-version", newerText, { max: newest }, version);
  if (version !== newest) notOneOf(at, [newest], version);
}
