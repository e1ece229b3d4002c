/*
 * Knowledge that comes back from storage: checked, and worked out anew from its prior and its runs. All the
 * rest of it is derived from those two.
 */
import type { Caution } from "../core/caution.js";
import type { Knowledge } from "../compensate/types.js";
import { makeCaution } from "../core/cautionTexts.js";
import { arrayOf, plainObject } from "../core/guards.js";
import { isOwnField, type OwnFields } from "../core/ownFields.js";
import { plainData } from "../core/plainData.js";
import { MOST_PROBLEMS, problemAt } from "../core/readBySchema.js";
import type { DocumentProblem } from "../core/schemaWords.js";
import { unreadFields } from "../core/pointer.js";
import { checkedVersion } from "../core/version.js";
import { fitKnowledge } from "./fit.js";
import { entryReader, fitNotebook, runReader, type NotebookFit } from "./fitNotebook.js";
import { everything, type Learning } from "./learning.js";
import { entriesOf, entryOf, runFields, withoutTwins, type Entry } from "./notebook.js";
import { learningSentences } from "./text.js";
import { KNOWLEDGE_VERSION, type LearnedKnowledge } from "./types.js";

/** Checks that stored knowledge is of the version that this package reads, and has a prior and runs. */
export function storedKnowledge(at: string, knowledge: unknown): void {
  const { schema, prior, runs } = plainObject(at, knowledge);
  checkedVersion(`${at}/schema`, schema, KNOWLEDGE_VERSION);
  plainObject(`${at}/prior`, prior);
  arrayOf(`${at}/runs`, runs, 0);
}

/**
 * The entries of stored knowledge, checked: a run with an id that comes twice once; two different runs of one
 * id are refused.
 */
export function storedEntries(
  at: string,
  knowledge: LearnedKnowledge,
  learning: Learning = everything,
): readonly Entry[] {
  storedKnowledge(at, knowledge);
  const entries = entriesOf(`${at}/runs`, knowledge.runs, runFields(learning));
  return withoutTwins(entries, entryReader(`${at}/prior`, knowledge.prior, learning));
}

/** The fields of the owner of knowledge, which begin with "x-", as a copy. */
export function ownFields(at: string, knowledge: Knowledge): OwnFields {
  const own = Object.entries(knowledge).filter(([field, value]) => isOwnField(field) && value !== undefined);
  return Object.fromEntries(own.map(([field, value]) => [field, plainData(`${at}/${field}`, value)]));
}

/** Knowledge that this package worked out: it is frozen, so that it stays true. */
const derivedHere = new WeakSet();

/** Notes that knowledge was worked out here. */
export function noted(knowledge: LearnedKnowledge): LearnedKnowledge {
  derivedHere.add(knowledge);
  return knowledge;
}

/** What the prior and the runs of some knowledge say, and a caution where stored figures say otherwise. */
export interface Derived {
  readonly now: LearnedKnowledge;
  readonly cautions: readonly Caution[];
}

/** The one path from stored knowledge to what it says. */
export function derived(at: string, knowledge: LearnedKnowledge): Derived {
  if (derivedHere.has(knowledge)) return { now: knowledge, cautions: [] };
  const entries = storedEntries(at, knowledge);
  const now = noted(fitKnowledge(`${at}/prior`, knowledge.prior, entries, ownFields(at, knowledge)));
  const cautions: Caution[] = [...unreadFields("/knowledge", knowledge, Object.keys(now))];
  // What was not stored differs from nothing.
  const fields = (Object.keys(now) as (keyof LearnedKnowledge)[]).filter(
    (field) => knowledge[field] !== undefined && !agree(knowledge[field], now[field]),
  );
  if (fields.length > 0)
    cautions.push(
      makeCaution(learningSentences, "stored-differs", "warn", {
        path: `/knowledge/${fields[0] as string}`,
        data: { fields },
      }),
    );
  return { now, cautions };
}

/**
 * What is wrong with knowledge that `derived` refused: its prior, or each of its runs by itself, and an id of
 * two. `first` is what was found, in case that only all of it together is wrong.
 */
export function storedProblems(
  knowledge: LearnedKnowledge,
  first: readonly DocumentProblem[],
  path = "",
): readonly DocumentProblem[] {
  const problems: DocumentProblem[] = [];
  const { prior, runs } = knowledge;
  const reader = problemAt(problems, path, () => runReader("stored/knowledge/prior", everything, prior));
  const entries: Entry[] = [];
  for (let i = 0; i < runs.length && problems.length < MOST_PROBLEMS; i += 1)
    problemAt(problems, path, () => {
      const entry = entryOf(`stored/knowledge/runs/${i}`, runs[i]);
      reader?.run(entry);
      entries.push(entry);
    });
  problemAt(problems, path, () => withoutTwins(entries));
  return problems.length > 0 ? problems : first;
}

/**
 * Whether stored data are what was worked out; numbers to a millionth, since machines round in the last
 * figures.
 */
function agree(stored: unknown, fresh: unknown): boolean {
  if (typeof fresh === "number")
    return typeof stored === "number" && Math.abs(stored - fresh) <= 1e-6 * Math.max(1e-6, Math.abs(fresh));
  if (typeof fresh !== "object" || fresh === null) return stored === fresh;
  if (typeof stored !== "object" || stored === null) return false;
  const [a, b] = [stored as Readonly<Record<string, unknown>>, fresh as Readonly<Record<string, unknown>>];
  const fields = new Set([...Object.keys(a), ...Object.keys(b)]);
  for (const field of fields) if (!agree(a[field], b[field])) return false;
  return true;
}

/** What the prior and the runs of stored knowledge say, with all that is behind it. */
export function storedFit(
  at: string,
  knowledge: LearnedKnowledge,
  others: readonly (readonly [at: string, conditions: object])[] = [],
  learning: Learning = everything,
): NotebookFit {
  const entries = storedEntries(at, knowledge, learning);
  return fitNotebook(`${at}/prior`, learning, knowledge.prior, entries, others);
}
