/*
 * What runs can teach: the causes and pairs with their learning halves, and the terms of a run that are no
 * cause.
 */
import { causes, learnables } from "../causes.js";
import type { AnyCause, AnyLearnable } from "../core/cause.js";
import type { AnyPair } from "../core/pair.js";
import { pairLearnables, pairs } from "../pairs.js";
import type { RunTerm } from "./runTerms/runTerm.js";
import { runTerms } from "./runTerms/runTerms.js";

/** A cause and its learning half. */
export interface LearnedCause {
  readonly cause: AnyCause;
  readonly learnable: AnyLearnable;
}

/** A pair of causes and its learning half. */
export interface LearnedPair {
  readonly pair: AnyPair;
  readonly learnable: AnyLearnable;
}

/** All that runs can teach. */
export interface Learning {
  readonly causes: readonly LearnedCause[];
  readonly pairs: readonly LearnedPair[];
  readonly terms: readonly RunTerm[];
}

type Halves = Readonly<Record<string, AnyLearnable>>;

/** All that runs can teach in this package. */
export const everything: Learning = {
  causes: causes.flatMap((cause) => {
    const learnable = (learnables as Halves)[cause.name];
    return learnable === undefined ? [] : [{ cause, learnable }];
  }),
  pairs: pairs.map((pair) => ({ pair, learnable: (pairLearnables as Halves)[pair.name] as AnyLearnable })),
  terms: runTerms,
};
