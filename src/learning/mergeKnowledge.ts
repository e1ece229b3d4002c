import { refuse } from "../core/guards.js";
import { ordered } from "../core/ordered.js";
import { plainData } from "../core/plainData.js";
import { fitKnowledge } from "./fit.js";
import { entryReader } from "./fitNotebook.js";
import { byText, inOrder, ownText, withOwnOf, type Entry } from "./notebook.js";
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
 * runs in two notebooks are two runs. Of the fields of one's own, which begin with `x-`, in the knowledge and
 * in each run, both are kept; of two by one name that of `a`.
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
  const at = "mergeKnowledge/a/prior";
  const entries = inOrder(inBoth(mine, yours), entryReader(at, a.prior), ownText);
  const own = { ...ownFields("mergeKnowledge/b", b), ...ownFields("mergeKnowledge/a", a) };
  return noted(fitKnowledge(at, a.prior, entries, own));
}

/** What the knowledge started from, as text in one order. */
function priorText(at: string, { prior }: LearnedKnowledge): string {
  return JSON.stringify(ordered(plainData(`${at}/prior`, prior)));
}

/**
 * The entries of both; what is in both counts once. An entry without an id may come several times: those with
 * equal own fields are paired first, then the others in the order of these fields.
 */
function inBoth(mine: readonly Entry[], yours: readonly Entry[]): readonly Entry[] {
  const [a, b] = [numbered(mine, wholeText), numbered(yours, wholeText)];
  const [c, d] = [numbered(without(a, b), textOf), numbered(without(b, a), textOf)];
  const paired = new Map<Entry, Entry>();
  for (const [key, entry] of c) paired.set(entry, d.get(key) ?? entry);
  return [...mine.map((entry) => withOwnOf(entry, paired.get(entry) ?? entry)), ...without(d, c)];
}

const textOf = ({ text }: Entry): string => text;
const wholeText = (entry: Entry): string => entry.text + ownText(entry);

/** Each entry under its text and how often that has come by then, in the order of their own fields. */
function numbered(entries: readonly Entry[], text: (entry: Entry) => string): ReadonlyMap<string, Entry> {
  const times = new Map<string, number>();
  const own = new Map(entries.map((entry) => [entry, ownText(entry)]));
  const inOwnOrder = [...entries].sort((a, b) => byText(own.get(a), own.get(b)));
  return new Map(
    inOwnOrder.map((entry) => {
      const key = text(entry);
      const count = (times.get(key) ?? 0) + 1;
      times.set(key, count);
      return [`${key}${count}`, entry];
    }),
  );
}

/** The entries of some that the others do not have. */
const without = (some: ReadonlyMap<string, Entry>, others: ReadonlyMap<string, Entry>): readonly Entry[] =>
  [...some].flatMap(([key, entry]) => (others.has(key) ? [] : entry));
