/* The sentence of the caution about use, from its data. */
import type { Caution } from "../core/caution.js";
import { digits } from "../core/digits.js";

/** The sentence of `bath-past-capacity`. */
export function pastCapacityText({ limit, actual }: Pick<Caution, "limit" | "actual">): string {
  return (
    `The bath has developed ${digits(actual, 4)} cm² in each litre; it can do ${digits(limit, 4)}. ` +
    `Mix fresh.`
  );
}
