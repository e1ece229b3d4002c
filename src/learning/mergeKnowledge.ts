import { refuse } from "../core/guards.js";
import { ordered } from "../core/ordered.js";
import { plainData } from "../core/plainData.js";
import { fitKnowledge } from "./fit.js";
import { entryReader } from "./fitNotebook.js";
import { inOrder, type Entry } from "./notebook.js";
import { noted, ownFields, storedEntries } from "./stored.js";
import type { LearnedKnowledge } from "./types.js";
import { samePriorText } from "./text.js";

/**
 * Knowledge from two notebooks that started alike.
 *
 * @param a - knowledge from `learn`
 * @param b - knowledge from `learn` that started from the same baseline, laws and options
 * @returns what `learn` gives for the runs of both
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when they did not start alike, one was written by a newer version, or one id stands for
 * two different runs
 *
 * @remarks A run that is in both, equal in every field, is taken as the same run: a notebook copied and
 * carried on in two places merges without counting its common past twice. Give each run an id where equal
 * runs in two notebooks are two runs. Of the fields of one's own, which begin with `x-`, both are kept; of
 * two by one name that of `a`.
 *
 * @example
 * ```ts
 * const start = startKnowledge({ timeS: 510, temperatureC: 20 });
 * const mine = learn(start, [{ timeS: 560, temperatureC: 20, outcome: { kind: "good" } }]);
 * const yours = learn(start, [{ timeS: 800, temperatureC: 15, outcome: { kind: "good" } }]);
 * mergeKnowledge(mine, yours).runs.length // => 2
 * mergeKnowledge(mine, mine).runs.length // => 1
 * ```
 */
export function mergeKnowledge(a: LearnedKnowledge, b: LearnedKnowledge): LearnedKnowledge {
  const mine = storedEntries("mergeKnowledge/a", a);
  const yours = storedEntries("mergeKnowledge/b", b);
  if (priorText("mergeKnowledge/a", a) !== priorText("mergeKnowledge/b", b))
    refuse("mergeKnowledge/b", "same-prior", samePriorText, {}, undefined);
  const both = new Map([...numbered(mine), ...numbered(yours)]);
  const at = "mergeKnowledge/a/prior";
  const entries = inOrder([...both.values()], entryReader(at, a.prior));
  const own = { ...ownFields("mergeKnowledge/b", b), ...ownFields("mergeKnowledge/a", a) };
  return noted(fitKnowledge(at, a.prior, entries, own));
}

/** What the knowledge started from, as text in one order. */
function priorText(at: string, { prior }: LearnedKnowledge): string {
  return JSON.stringify(ordered(plainData(`${at}/prior`, prior)));
}

/** Each entry under its text and how often that has come by then. */
function numbered(entries: readonly Entry[]): readonly (readonly [string, Entry])[] {
  const times = new Map<string, number>();
  return entries.map((entry) => {
    const count = (times.get(entry.text) ?? 0) + 1;
    times.set(entry.text, count);
    return [`${entry.text}${count}`, entry];
  });
}
