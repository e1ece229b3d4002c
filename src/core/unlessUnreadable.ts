import { isInputError, type CheckProblem } from "./errors.js";
import { plainText } from "./text.js";

/** Deeper, or in more values, nothing is looked for. */
const DEEPEST = 20;
const MOST_LOOKS = 1_000_000;

/**
 * What a check says of documents that refuse to be read: a getter that throws, a proxy that is revoked. Any
 * other error of the check is a fault of this package, and goes on.
 *
 * @param documents - what is checked
 * @param check - reads them
 * @param refused - the answer to one that refuses, from its problem
 */
export function unlessUnreadable<T>(
  documents: readonly unknown[],
  check: () => T,
  refused: (problem: CheckProblem) => T,
): T {
  try {
    return check();
  } catch (error) {
    if (isInputError(error) || documents.every(isReadable)) throw error;
    const sentence = `must be ${plainText({}, undefined)}`;
    return refused({
      code: "wrong-type",
      path: "",
      expected: { must: "plain-data" },
      actual: undefined,
      message: sentence,
      sentence,
    });
  }
}

/** Whether every value of a document can be looked at. */
function isReadable(document: unknown): boolean {
  let left = MOST_LOOKS;
  const look = (value: unknown, depth: number): void => {
    if (typeof value !== "object" || value === null || depth > DEEPEST) return;
    for (const key of Object.keys(value)) {
      left -= 1;
      if (left < 0) return;
      look((value as Readonly<Record<string, unknown>>)[key], depth + 1);
    }
  };
  try {
    look(document, 0);
    return true;
  } catch {
    return false;
  }
}
