/*
 * Module: core. The one idea of the package: every cause is one term in ln(time), and terms add.
 */
import { isBoolean, isCount, isShortText, notOneOf, plainObject, wrongCount, wrongKind } from "./guards.js";

/** What a {@link FactorRow} rests on. */
export type Basis =
  /** the condition is the baseline's own, the factor is exactly 1 */
  | "unchanged"
  /** a law that the caller handed in */
  | "given"
  /** a published law from this package's handbook */
  | "handbook"
  /** the generic law, because nothing better was given: wide */
  | "default"
  /** a law that the photographer's own runs have moved */
  | "own-runs";

/**
 * One cause of a change of development time: the time is multiplied by `value`, and ln(time) carries the
 * standard deviation `logSd` from this cause (0.10 is about 10 %).
 */
export interface FactorRow<Name extends string = string> {
  /** the cause, pair or mark by its name; `"baseline"` for the known time itself */
  readonly cause: Name;
  /** time today over time as known, from this cause alone */
  readonly value: number;
  /** standard deviation of ln(value) */
  readonly logSd: number;
  /** what it rests on */
  readonly basis: Basis;
  /** where its law comes from */
  readonly sources: readonly string[];
  /**
   * the known side of the change, as it was given; missing for the baseline and for what is said against it
   */
  readonly from?: unknown;
  /** today's side, as it was given */
  readonly to?: unknown;
  /** what the law rested on before own runs moved it */
  readonly before?: Basis | undefined;
  /** how many own runs bear on the law; `basis` names them only where they have moved it */
  readonly runs?: number | undefined;
  /** how the figures of its law were seen, where the law says so */
  readonly seen?: Seen | undefined;
}

/** What a law may rest on. */
export const BASES: readonly Basis[] = ["given", "handbook", "default", "own-runs"];

/** How a published figure was seen: read in print, remembered, or a fact of the trade. */
export type Seen = "read" | "from-memory" | "common-practice";

/** What every law may carry besides its numbers, so that an answer can say where it came from. */
export interface LawOrigin {
  /** where the figures were published, or how they were obtained: up to 50 lines of 2000 characters */
  readonly sources?: readonly string[] | undefined;
  /** the law is a published one from this package's handbook */
  readonly published?: boolean | undefined;
  /** how many own runs it was learned from, to 1e6; 0 for a generic law that no run has taught anything */
  readonly runs?: number | undefined;
  /** what a learned law rested on before the first run */
  readonly before?: Basis | undefined;
  /** false where the runs have hardly moved the law: an answer still rests on what was there before */
  readonly moved?: boolean | undefined;
  /** how the figures were seen: `"read"` in print, `"from-memory"`, or `"common-practice"` */
  readonly seen?: Seen | undefined;
}

/** The fields that any law may have. */
export const ORIGIN_FIELDS = ["sources", "published", "runs", "before", "moved", "seen"] as const;

/** The basis of a law that was handed in: learned, generic, from the handbook, or plainly given. */
export function basisOf(law: LawOrigin): Basis {
  if (law.runs !== undefined) return law.runs === 0 ? "default" : "own-runs";
  return law.published === true || law.seen !== undefined ? "handbook" : "given";
}

/** Whether a law was learned from runs that hardly moved it. */
export function hardlyMoved(law: LawOrigin): boolean {
  return law.moved === false && basisOf(law) === "own-runs";
}

/** What an answer by a law rests on: one that runs have hardly moved rests on what was there before. */
export function restsOn(law: LawOrigin): Basis {
  return hardlyMoved(law) ? (law.before ?? "default") : basisOf(law);
}

/**
 * Where a law comes from goes into the answer as it is, so it has to be what it says. Returns the law, which
 * is an object.
 */
export function checkedOrigin<Law extends LawOrigin>(at: string, law: Law): Law {
  const { sources, runs, published, seen, before, moved } = plainObject(at, law);
  if (sources !== undefined) checkSources(`${at}/sources`, sources);
  if (runs !== undefined) isCount(`${at}/runs`, runs);
  if (published !== undefined) isBoolean(`${at}/published`, published);
  if (moved !== undefined) isBoolean(`${at}/moved`, moved);
  if (seen !== undefined && !SEEN.includes(seen as Seen)) notOneOf(`${at}/seen`, SEEN, seen);
  if (before !== undefined && !BASES.includes(before as Basis)) notOneOf(`${at}/before`, BASES, before);
  return law;
}

/** Sources are lines of text, as many and as long as a document holds. */
function checkSources(at: string, sources: unknown): void {
  if (!Array.isArray(sources)) wrongKind(at, ["array"], sources);
  if (sources.length > 50) wrongCount(at, sources.length, { most: 50 });
  sources.forEach((line, i) => {
    isShortText(`${at}/${i}`, line, 2000);
  });
}

const SEEN: readonly Seen[] = ["read", "from-memory", "common-practice"];

/** The sources of a law and how they came, for another law that is made of it. */
export function sourcesOf({ sources, seen }: LawOrigin): LawOrigin | undefined {
  return sources && (seen === undefined ? { sources } : { sources, seen });
}
