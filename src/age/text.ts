/* The sentences of the cautions about age, each from its data. */
import type { Caution } from "../core/caution.js";
import { digits } from "../core/digits.js";

/** When a bath is past its life: before anything is developed in it, or before that is done. */
export type PastLifeAt = "pour-in" | "pour-out";

/** The sentence of `bath-past-life`. */
export function pastLifeText({
  severity,
  limit,
  actual,
  data,
}: Pick<Caution, "severity" | "limit" | "actual" | "data">): string {
  const life = `${digits(limit)} h`;
  if (data?.["at"] === "pour-in")
    return (
      `The bath is older than its life of ${life}: it fails at once, and no time replaces it. ` + `Mix fresh.`
    );
  return severity === "stop"
    ? `The bath lives ${life} and is ${digits(actual)} h old at the pour-out: it fails before the end. ` +
        `Mix fresh.`
    : `The bath lives ${life}. At the long end of the interval it is ${digits(actual)} h old. ` +
        `Mix just before use.`;
}
