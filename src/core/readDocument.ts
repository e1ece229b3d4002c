import { jsonFault } from "./jsonFault.js";
import { readBySchema } from "./readBySchema.js";
import type { DocumentProblem } from "./schemaWords.js";
import type { JsonSchema } from "./schema.js";
import { newerSentence } from "./version.js";

/** Longer texts are not read at all: a recipe with two thousand runs has about as many. */
const LONGEST_TEXT = 800_000;

/** Where a document says of which version it is, and the newest that is read. */
export interface DocumentVersion {
  readonly field: string;
  readonly newest: number;
  /** the field of the document whose version it is; the document's own when left out */
  readonly within?: string;
}

/**
 * Reads a document, or JSON text that holds one, by its schema: the copy, or undefined with what is wrong in
 * `problems`. Never throws.
 */
export function readDocument(
  schema: JsonSchema,
  input: unknown,
  versions: readonly DocumentVersion[],
  problems: DocumentProblem[],
): unknown {
  const whole = (message: string, more: Partial<DocumentProblem> = {}): void => {
    problems.push({
      code: "unreadable",
      path: "",
      expected: { format: "json" },
      actual: typeof input === "string" ? "text" : typeof input,
      message,
      rule: "shape",
      ...more,
    });
  };
  if (typeof input === "string" && input.length > LONGEST_TEXT) {
    whole(`must be at most ${LONGEST_TEXT} characters, got ${input.length}`, {
      code: "out-of-range",
      expected: { most: LONGEST_TEXT },
      actual: input.length,
    });
    return undefined;
  }
  let value = input;
  if (typeof input === "string") {
    // Some editors begin a file with a byte order mark, which nobody sees; a reader may pass it over (RFC
    // 8259, section 8.1).
    const text = input.replace(/^\uFEFF/, "");
    try {
      value = JSON.parse(text);
    } catch {
      const fault = jsonFault(text) ?? { line: 1, column: 1 };
      whole(`must be JSON; it breaks at line ${fault.line}, column ${fault.column}`, fault);
      return undefined;
    }
  }
  try {
    for (const version of versions) refuseNewer(version, value, problems);
    if (problems.length > 0) return undefined;
    const copy = readBySchema(schema, value, "", problems);
    return problems.length > 0 ? undefined : copy;
  } catch {
    // An object that refuses to be read.
    problems.length = 0;
    whole("must be plain data that can be read", { code: "wrong-type", expected: { types: ["object"] } });
    return undefined;
  }
}

/** Reports a version that is newer than this package reads; what else is in such a document is not judged. */
function refuseNewer(
  { field, newest, within }: DocumentVersion,
  document: unknown,
  problems: DocumentProblem[],
): void {
  const holder = within === undefined ? document : ownField(document, within);
  const version = ownField(holder, field);
  if (typeof version !== "number" || !(version > newest)) return;
  problems.push({
    code: "out-of-range",
    path: `${within === undefined ? "" : `/${within}`}/${field}`,
    expected: { min: newest, max: newest },
    actual: version,
    message: newerSentence(version, newest),
    rule: "shape",
  });
}

function ownField(value: unknown, field: string): unknown {
  return typeof value === "object" && value !== null && Object.hasOwn(value, field)
    ? (value as Readonly<Record<string, unknown>>)[field]
    : undefined;
}
