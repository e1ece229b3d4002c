/*
 * The sentences of the limits that `compensate` judges too, apart from the others of the bath, so that an app
 * that only compensates does not carry those.
 */
import type { Caution } from "../core/caution.js";
import { digits } from "../core/digits.js";

/** The sentence of `bath-past-keeping`. */
export function pastKeepingText({ limit }: Pick<Caution, "limit">): string {
  return `The bath is older than it keeps in this storage, ${digits(limit)} h. Mix fresh.`;
}

/** The sentence of `bath-too-slow`. */
export function tooSlowText({ actual }: Pick<Caution, "actual">): string {
  return `The bath needs ${digits(actual, 2)} times the time of a fresh one, more than twice. Mix fresh.`;
}
