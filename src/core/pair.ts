/*
 * A pair of causes whose effects do not simply add: what is left when both have changed is a term of its own.
 */
import type { Cause, Effect } from "./cause.js";
import type { LawOrigin } from "./term.js";

/** One side of a change of two conditions, each as its cause reads it. */
export type PairSide<A = unknown, B = unknown> = readonly [A, B];

/** What each of the two causes alone does to ln(time) between the same sides. */
export type AloneLogs = readonly [a: number, b: number];

/** What two causes do together beside what each does alone: nothing while one of them has not changed. */
export interface Pair<
  Law extends LawOrigin = LawOrigin,
  A = unknown,
  B = unknown,
  Name extends string = string,
> {
  readonly name: Name;
  /** its law's field in knowledge */
  readonly law: string;
  /** the fields of its law, beside where it comes from */
  readonly lawFields: readonly string[];
  // eslint-disable-next-line @typescript-eslint/no-explicit-any -- any two causes
  readonly causes: readonly [Cause<any, A>, Cause<any, B>];
  /** the law that is used when none is given */
  readonly generic: Law;
  /** checks a law once; throws an input error at `at` */
  check(at: string, law: unknown): Law;
  /** the `log` of its effect as a function of today's two sides, to the last bit */
  logAt(law: Law, from: PairSide<A, B>): (a: A, b: B, aloneA: number, aloneB: number) => number;
  /**
   * the effect of going from one pair of sides to another; `alone` bounds it by what each cause does alone,
   * where that is known
   */
  effect(law: Law, from: PairSide<A, B>, to: PairSide<A, B>, alone?: AloneLogs): Effect;
}

/** Any pair, for a list of them. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any -- as for causes
export type AnyPair = Pair<any, any, any>;
