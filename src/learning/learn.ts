import { plainObject } from "../core/guards.js";
import { fitKnowledge } from "./fit.js";
import { entryReader } from "./fitNotebook.js";
import { entriesOf, inOrder, refuseFuture } from "./notebook.js";
import { noted, ownFields, storedEntries } from "./stored.js";
import type { LearnedKnowledge, DevelopmentRun } from "./types.js";

/** What {@link learn} may be told besides the runs. */
export interface LearnOptions {
  /** today's ISO date: runs dated later are refused */
  readonly today?: string | undefined;
}

/**
 * Learns from runs: a new object, with the runs in it.
 *
 * @param knowledge - from {@link startKnowledge}, from an earlier `learn`, or read back from storage
 * @param runs - what was done and how it came out; failed and fogged runs are kept and not fitted
 * @param options - `today`, to refuse runs dated later
 * @returns knowledge in which each number has its value, its spread and the runs behind it; the runs that
 * were set aside or count for less, by name; and advice
 * @throws TypeError when an argument or a field is of the wrong kind, or a run names what the baseline lacks
 * @throws RangeError when a value is out of range, a field is not one of a run, two different runs have one
 * id, a date is after `today`, or the knowledge was written by a newer version
 *
 * @remarks A Bayesian linear regression of ln(right time) on eight numbers: base time, activation energy,
 * dilution exponent, loss under agitation, increase by use, ageing, strength, push. The laws are the prior.
 * All runs are fitted anew, in one fixed order, so that neither the order nor the number of calls matters. A
 * run that comes again under its id counts once, with the own fields of both; where two have one name, the
 * first stays. What was learned of agitation and use scales ln(factor) of the prior law. A run z standard
 * deviations off weighs 2/z beyond 2; the scatter is estimated with a prior of four runs. A run tells its
 * time to 4 % at best, since a development repeats no better (common practice); with noise stated, to 0.001.
 * A run of which the laws give ln(time) with a spread beyond 100, or more than 100 from the baseline's, is
 * set aside.
 * Not covered: contrast wanted other than the baseline's, bath temperatures that drift (use the mean), stand
 * runs under a baseline that does not stand.
 *
 * Sources: C. M. Bishop, Pattern Recognition and Machine Learning, New York, 2006, sec. 3.3; P. J. Huber,
 * Ann. Math. Statist. 35, 1964, p. 73.
 *
 * @example
 * ```ts
 * const start = startKnowledge({ timeS: 510, temperatureC: 20 });
 * const known = learn(start, [
 *   { timeS: 600, temperatureC: 20, outcome: { kind: "good" } },
 *   { timeS: 900, temperatureC: 14, outcome: { kind: "judged", timeRatio: 1.1 } },
 * ]);
 * known.temperature?.runs // => 1
 * known.baseline.timeS // => 572.9
 * ```
 */
export function learn(
  knowledge: LearnedKnowledge,
  runs: readonly DevelopmentRun[],
  options: LearnOptions = {},
): LearnedKnowledge {
  const stored = storedEntries("learn/knowledge", knowledge);
  const { today } = plainObject("learn/options", options) as LearnOptions;
  const added = entriesOf("learn/runs", runs);
  refuseFuture("learn/options/today", today, added);
  const at = "learn/knowledge/prior";
  const { prior } = knowledge;
  const entries = inOrder([...stored, ...added], entryReader(at, prior));
  return noted(fitKnowledge(at, prior, entries, ownFields("learn/knowledge", knowledge)));
}
