import { causes } from "../causes.js";
import type { Knowledge } from "../compensate/types.js";
import { pairs } from "../pairs.js";
import { derived } from "./stored.js";
import type { LearnedKnowledge } from "./types.js";

/**
 * The laws that learned knowledge holds, without its runs: for a recipe, or for `compensate`.
 *
 * @param knowledge - from `startKnowledge` or `learn`
 * @returns the laws, and the correlations of what was learned together
 * @throws TypeError or RangeError as {@link predict} does for its knowledge
 *
 * @remarks The knowledge is worked out anew from its prior and its runs. With `knowledge.baseline` the
 * answers of `compensate` are those of `predict`.
 *
 * @example
 * ```ts
 * const known = learn(startKnowledge({ timeS: 510, temperatureC: 20 }), []);
 * lawsOf(known).temperature?.runs // => 0
 * ```
 */
export function lawsOf(knowledge: LearnedKnowledge): Knowledge {
  const { now } = derived("lawsOf/knowledge", knowledge);
  const names = [...[...causes, ...pairs].map(({ law }): string => law), "batchLogSd", "joint"];
  return Object.fromEntries(Object.entries(now).filter(([name]) => names.includes(name)));
}
