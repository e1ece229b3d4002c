/*
 * What `learn` doubts, for the answers that rest on it.
 */
import type { Caution } from "../core/caution.js";
import type { LearnedKnowledge } from "./types.js";

/** The advice that an answer says again. */
const REPEATED: readonly string[] = [
  "doubted-run",
  "not-fitted",
  "far-from-known",
  "trend",
  "scatter",
  "equal-runs",
];

/** The advice that bears on each answer, with paths from `/knowledge`. A note has been said once. */
export function doubtsOf({ advice }: LearnedKnowledge): readonly Caution[] {
  return advice
    .filter(({ code, severity }) => severity !== "note" && REPEATED.includes(code))
    .map((one) => ({ ...one, path: `/knowledge${one.path ?? ""}` }));
}
