import type { InputExpected } from "./errors.js";
import { mustBe, wantedText } from "./errorText.js";
import { firstFault, repeatedName } from "./jsonPlaces.js";
import { LONGEST_NAME } from "./onlyFields.js";
import { readBySchema } from "./readBySchema.js";
import type { DocumentProblem } from "./schemaWords.js";
import type { JsonSchema } from "./schema.js";
import { jsonText, newerText, onceText, plainText } from "./text.js";

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
  const whole = (wanted: string, expected: InputExpected, more: Partial<DocumentProblem> = {}): void => {
    problems.push({
      code: "unreadable",
      path: "",
      expected,
      actual: undefined,
      message: `must be ${wanted}`,
      rule: "shape",
      ...more,
    });
  };
  if (typeof input === "string" && input.length > LONGEST_TEXT) {
    const { length } = input;
    const expected: InputExpected = { types: ["text"], most: LONGEST_TEXT };
    whole(wantedText(expected), expected, {
      code: "out-of-range",
      actual: length,
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
      const { line, column } = firstFault(text) ?? { line: 1, column: 1 };
      const fault = { line, column };
      whole(jsonText(fault, ""), { ...fault, must: "json" }, fault);
      return undefined;
    }
    const repeated = repeatedName(text);
    if (repeated !== undefined) {
      const { path, name, ...place } = repeated;
      const actual = name.slice(0, LONGEST_NAME);
      const wanted = onceText(place, actual);
      const message = mustBe(wanted, actual);
      const more = { code: "ambiguous", path, actual, message, ...place } as const;
      whole(wanted, { ...place, must: "once" }, more);
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
    whole(plainText({}, undefined), { must: "plain-data" }, { code: "wrong-type" });
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
    expected: { must: "known-version", max: newest },
    actual: version,
    message: mustBe(newerText({ max: newest }, version), version),
    rule: "shape",
  });
}

function ownField(value: unknown, field: string): unknown {
  return typeof value === "object" && value !== null && Object.hasOwn(value, field)
    ? (value as Readonly<Record<string, unknown>>)[field]
    : undefined;
}
