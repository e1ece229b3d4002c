import { causeSchemas } from "../causes.js";
import { gravestFirst, type Caution } from "../core/caution.js";
import { problemAt } from "../core/readBySchema.js";
import type { DocumentProblem } from "../core/schemaWords.js";
import { readDocument } from "../core/readDocument.js";
import type { JsonSchema } from "../core/schema.js";
import { askedDilution } from "../dilution/askedDilution.js";
import { learnedSchema } from "./schema.js";
import { unusualLaws } from "../compensate/unusualLaws.js";
import { oddKnowledge } from "./oddKnowledge.js";
import { derived, storedProblems } from "./stored.js";
import { KNOWLEDGE_VERSION, type LearnedKnowledge } from "./types.js";

/** What {@link checkKnowledge} returns. */
export type KnowledgeCheck =
  | {
      readonly ok: true;
      /** the knowledge, worked out from its prior and its runs */
      readonly knowledge: LearnedKnowledge;
      /** what may be in another unit, and where what was stored does not follow from the runs */
      readonly cautions: readonly Caution[];
    }
  | {
      readonly ok: false;
      /** everything that is wrong with its form */
      readonly problems: readonly DocumentProblem[];
    };

const VERSIONS = [{ field: "schema", newest: KNOWLEDGE_VERSION }];
const AT = "checkKnowledge/knowledge";

let schema: JsonSchema | undefined;

/**
 * Checks stored knowledge: every problem of its form at once, or the knowledge, worked out from its prior and
 * its runs.
 *
 * @param input - anything; text is read as JSON first
 * @returns `ok: true` with the knowledge and cautions, or `ok: false` with up to 100 problems, each with a
 * JSON Pointer into the document
 *
 * @remarks Never throws. The form is checked first and nothing else is done with a document whose form is
 * wrong. Stored numbers that do not follow from the prior and the runs are worked out again, with the caution
 * `stored-differs`. A run or starting time that may be in minutes, a temperature that may be in °F, and a law
 * outside what was ever published have a caution with their path, gravest first. A newer version is refused
 * by name.
 *
 * @example
 * ```ts
 * const stored = JSON.stringify(startKnowledge({ timeS: 510, temperatureC: 20 }));
 * const check = checkKnowledge(stored);
 * check.ok && check.knowledge.baseline.logSd // => 0.2
 * const newer = checkKnowledge({ schema: 9 });
 * newer.ok || newer.problems[0]?.path // => "/schema"
 * ```
 */
export function checkKnowledge(input: unknown): KnowledgeCheck {
  schema ??= learnedSchema(causeSchemas);
  const problems: DocumentProblem[] = [];
  const copy = readDocument(schema, input, VERSIONS, problems) as LearnedKnowledge | undefined;
  if (copy === undefined) return { ok: false, problems: problems.map(askedDilution) };
  const found = problemAt(problems, "", () => derived(AT, copy));
  if (found === undefined) return { ok: false, problems: storedProblems(copy, problems) };
  const odd = oddKnowledge(AT, copy);
  const all = gravestFirst([...odd, ...found.cautions, ...unusualLaws(found.now)]);
  const cautions = all.map((one) => ({
    ...one,
    ...(one.path !== undefined && { path: one.path.replace(/^\/knowledge/, "") }),
  }));
  return { ok: true, knowledge: found.now, cautions };
}
