/*
 * Module: core. The one idea of the package: every cause is one term in ln(time), and terms add.
 */
import { inRange, notOneOf, plainObject, wrongKind } from "./guards.js";

/** What a {@link Factor} rests on. */
export type Basis =
  /** the condition is the baseline's own, the factor is exactly 1 */
  | "unchanged"
  /** a law that the caller handed in */
  | "given"
  /** a published law from this package's handbook */
  | "handbook"
  /** the generic law, because nothing better was given: wide */
  | "default"
  /** a law learned from the photographer's own runs */
  | "own-runs";

/**
 * One cause of a change of development time: the time is multiplied by `value`, and ln(time) carries the
 * standard deviation `logSd` from this cause (0.10 is about 10 %).
 */
export interface Factor {
  readonly cause: string;
  readonly value: number;
  readonly logSd: number;
  readonly basis: Basis;
  readonly sources: readonly string[];
  /**
   * the known side of the change, as it was given; missing for the baseline and for what is said against it
   */
  readonly from?: unknown;
  /** today's side, as it was given */
  readonly to?: unknown;
  /** what the law rested on before own runs moved it */
  readonly before?: Basis;
  /** how many own runs stand behind the law, where it was learned */
  readonly runs?: number;
  /** how the figures of its law were seen, where the law says so */
  readonly seen?: Seen;
}

/** How a published figure was seen: read in print, remembered, or a fact of the trade. */
export type Seen = "read" | "from-memory" | "common-practice";

/** What every law may carry besides its numbers, so that an answer can say where it came from. */
export interface LawOrigin {
  /** where the figures were published, or how they were obtained */
  readonly sources?: readonly string[] | undefined;
  /** the law is a published one from this package's handbook */
  readonly published?: boolean | undefined;
  /** how many own runs the law was learned from; 0 for a generic law that no run has taught anything yet */
  readonly runs?: number | undefined;
  /** what a learned law rested on before the first run that moved it */
  readonly before?: Basis | undefined;
  /** how the figures were seen: `"read"` in print, `"from-memory"`, or `"common-practice"` */
  readonly seen?: Seen | undefined;
}

/** The basis of a law that was handed in: learned, generic, from the handbook, or plainly given. */
export function basisOf(law: LawOrigin): Basis {
  if (law.runs !== undefined) return law.runs === 0 ? "default" : "own-runs";
  return law.published === true || law.seen !== undefined ? "handbook" : "given";
}

/**
 * Where a law comes from goes into the answer as it is, so it has to be what it says. Returns the law, which
 * is an object.
 */
export function checkedOrigin<Law extends LawOrigin>(at: string, law: Law): Law {
  const { sources, runs, published, seen, before } = plainObject(at, law);
  if (sources !== undefined && !Array.isArray(sources)) wrongKind(`${at}/sources`, "an array", sources);
  if (runs !== undefined) inRange(at, runs, 0, 1e9, undefined, "/runs");
  if (published !== undefined && typeof published !== "boolean")
    wrongKind(`${at}/published`, "true or false", published);
  if (seen !== undefined && !SEEN.includes(seen as Seen)) notOneOf(`${at}/seen`, SEEN, seen);
  if (before !== undefined && !BASES.includes(before as Basis)) notOneOf(`${at}/before`, BASES, before);
  return law;
}

const BASES: readonly Basis[] = ["given", "handbook", "default", "own-runs"];
const SEEN: readonly Seen[] = ["read", "from-memory", "common-practice"];

/** The sources of a law and how they came, for another law that is made of it. */
export function sourcesOf({ sources, seen }: LawOrigin): LawOrigin | undefined {
  return sources && (seen === undefined ? { sources } : { sources, seen });
}
