/*
 * What tests of every module share: a way around the types, the error that a call throws, and whether files are
 * written anew.
 */
import type { Caution } from "../src/index.js";

/** Names as an error lists them: "a", "b" or "c". */
export const quoted = (names: readonly string[]): string =>
  names
    .map((name) => JSON.stringify(name))
    .join(", ")
    .replace(/, ([^,]*)$/, " or $1");

/** An argument that the types forbid. */
export const anyOf = (value: unknown): any => value;

/** The error that a call throws, as `name: message`. */
export function thrown(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    return `${(error as Error).name}: ${(error as Error).message}`;
  }
  return "nothing thrown";
}

/** The error itself, with its own fields. */
export function caught(call: () => unknown): any {
  try {
    call();
  } catch (error) {
    return error;
  }
  throw new Error("nothing was thrown");
}

/** Whether the files that tests compare are written anew: `vitest --mode write`. */
export const writing: boolean = (import.meta as { env?: { MODE?: string } }).env?.MODE === "write";

/** What a caution names besides, whatever its code. */
export const dataOf = (caution: Caution | undefined): Readonly<Record<string, unknown>> | undefined =>
  caution?.data;
