/*
 * What an age law is, and how ln(time) runs with the age of a bath under each form of it.
 */
import { isPast } from "../core/caution.js";
import type { Effect } from "../core/cause.js";
import { inRange, notOneOf, positive, wrongValue } from "../core/guards.js";
import { checkedOrigin, type LawOrigin } from "../core/term.js";

/**
 * How a bath declines with age: slowly, its rate halving every `halfLifeH` (sulphited baths), or not at all
 * until `lifeH` and then at once (alkaline vitamin C, coffee). `sdLog` is the standard deviation of
 * ln(halfLifeH), 0.3 when left out. `"slowing"` is for a bath of which nothing is printed and own runs are to
 * tell: ln(time) grows by `perRootH` × √ageH, and no further after 25 h; `sdPerRootH` is 0.1 when left out.
 */
export type AgeLaw =
  | ({
      readonly kind: "half-life";
      readonly halfLifeH: number;
      readonly sdLog?: number | undefined;
    } & LawOrigin)
  | ({ readonly kind: "life"; readonly lifeH: number } & LawOrigin)
  | ({
      readonly kind: "slowing";
      readonly perRootH: number;
      readonly sdPerRootH?: number | undefined;
    } & LawOrigin);

/**
 * The age term of a bath that slows with the root of its age, per unit of `perRootH`: √ageH, held after 25 h.
 */
export function slowingRootH(ageH: number): number {
  return Math.min(25, ageH) ** 0.5;
}

/** Returns the age of a bath from 0 to 1e6 h; throws otherwise. */
export function bathAge(at: string, ageH: unknown): number {
  return inRange(at, ageH, 0, 1e6, "ageH");
}

/** Checks an age law and returns it. */
export function checkedAgeLaw(at: string, given: unknown): AgeLaw {
  const law = checkedOrigin(at, given as AgeLaw);
  const { kind } = law;
  if (kind === "half-life") {
    positive(at, law.halfLifeH, 1e6, "ageH", "/halfLifeH");
    inRange(at, law.sdLog ?? 0, 0, 3, undefined, "/sdLog");
  } else if (kind === "slowing") {
    inRange(at, law.perRootH, -1, 1, undefined, "/perRootH");
    inRange(at, law.sdPerRootH ?? 0, 0, 3, undefined, "/sdPerRootH");
  } else if ((kind as unknown) === "life") positive(at, law.lifeH, 1e6, "ageH", "/lifeH");
  else notOneOf(`${at}/kind`, ["half-life", "life", "slowing"], kind);
  return law;
}

/** The age beyond which a law gives no time, h. */
export function lastAge(law: AgeLaw): number {
  return law.kind === "life" ? law.lifeH : law.kind === "half-life" ? 10 * law.halfLifeH : Infinity;
}

/** Refuses an age at which a bath gives no time. */
export function notPast(at: string, law: AgeLaw, ageH: number): void {
  const limit = lastAge(law);
  if (isPast(ageH, limit))
    wrongValue(at, law.kind === "life" ? `within the bath's life of ${limit} h` : "<= 10 half-lives", ageH, {
      min: 0,
      max: limit,
      quantity: "ageH",
    });
}

/** The effect of going from one age to another under a checked law, both within its limits. */
export function ageEffect(law: AgeLaw, fromH: number, toH: number): Effect {
  const differenceH = toH - fromH;
  if (law.kind === "half-life") {
    const rate = Math.LN2 / law.halfLifeH;
    return { log: rate * differenceH, slope: differenceH, sd: (law.sdLog ?? 0.3) * rate, beside: 0 };
  }
  if (law.kind === "slowing") {
    const slope = slowingRootH(toH) - slowingRootH(fromH);
    const log = law.perRootH * slope;
    // A law that no run has taught has the spread of no law at every age.
    if (law.runs === 0) return { log, slope: 0, sd: 0, beside: unknownAgeLogSd(differenceH) };
    return { log, slope, sd: law.sdPerRootH ?? 0.1, beside: 0 };
  }
  return { log: 0, slope: 0, sd: 0, beside: (0.1 * Math.abs(differenceH)) / law.lifeH };
}

/** The spread of an age of which nothing is known: 10 % for the first hour, at most 50 %. */
export function unknownAgeLogSd(differenceH: number): number {
  return Math.min(0.5, 0.1 * Math.sqrt(Math.abs(differenceH)));
}
