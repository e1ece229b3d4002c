/*
 * The text of a file; what the system says against it becomes a sentence.
 */
import { fault, type Said } from "./fault.js";
import type { Io } from "./io.js";

const NOT_ALLOWED = { en: "you are not allowed to read it.", de: "sie darf nicht gelesen werden." };
const REASONS: Readonly<Record<string, Said>> = {
  ENOENT: { en: "there is no such file.", de: "diese Datei gibt es nicht." },
  EISDIR: { en: "this is a folder, not a file.", de: "das ist ein Ordner und keine Datei." },
  EACCES: NOT_ALLOWED,
  EPERM: NOT_ALLOWED,
};

/** The text of a file. A byte order mark is no part of it (RFC 8259, section 8.1). */
export function textOf(file: string, io: Io): string {
  try {
    return io.read(file).replace(/^\uFEFF/, "");
  } catch (error) {
    const { code = "", message } = error as NodeError;
    const unknown = { en: `it cannot be read: ${message}.`, de: `sie ist nicht zu lesen: ${message}.` };
    throw fault(Object.hasOwn(REASONS, code) ? (REASONS[code] as Said) : unknown);
  }
}

type NodeError = Error & { readonly code?: string };
