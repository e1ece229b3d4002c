import { problemAt } from "../core/readBySchema.js";
import type { DocumentProblem } from "../core/schemaWords.js";
import { dilutionFromText } from "./dilution.js";

/**
 * A problem of a document as it is, but for a dilution that may mean two things: its code is "ambiguous" and
 * its readings are those of `parseDilution`. No pattern can say so.
 */
export function askedDilution(problem: DocumentProblem): DocumentProblem {
  const { actual, expected, path, rule } = problem;
  if (expected.format !== "dilution" || typeof actual !== "string") return problem;
  const asked: DocumentProblem[] = [];
  problemAt(asked, path, () => dilutionFromText("/dilution", actual));
  const [one] = asked;
  return one?.code === "ambiguous" ? { ...one, rule } : problem;
}
