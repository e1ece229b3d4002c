/*
 * Room: core. The one idea of the package: every cause is one term in ln(time), and terms add.
 */
import { inRange, plainObject, wrongKind } from "./guards.js";

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
  | "own runs";

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
  /** how many own runs stand behind the law, where it was learned */
  readonly runs?: number;
}

/** What every law may carry besides its numbers, so that an answer can say where it came from. */
export interface LawOrigin {
  /** where the figures were published, or how they were obtained */
  readonly sources?: readonly string[];
  /** the law is a published one from this package's handbook */
  readonly published?: boolean;
  /** how many own runs the law was learned from; 0 for a generic law that no run has taught anything yet */
  readonly runs?: number;
}

/** The basis of a law that was handed in: learned, generic, from the handbook, or plainly given. */
export function basisOf(law: LawOrigin): Basis {
  if (law.runs !== undefined) return law.runs === 0 ? "default" : "own runs";
  return law.published === true ? "handbook" : "given";
}

/** Where a law comes from goes into the answer as it is, so it has to be what it says. */
export function checkedOrigin<Law extends LawOrigin>(where: string, law: Law, field = ""): Law {
  const { sources, runs } = plainObject(where, law, field);
  if (sources !== undefined && !Array.isArray(sources))
    wrongKind(`${where}${field}/sources`, "an array", sources);
  if (runs !== undefined) inRange(where, runs, 0, 1e9, undefined, `${field}/runs`);
  return law;
}

/** The same, and whether the law is a published one is true or false: for a law that is kept. */
export function checkedLawOrigin(where: string, law: LawOrigin): void {
  const { published = false } = checkedOrigin(where, law, "/law");
  if (typeof published !== "boolean") wrongKind(`${where}/law/published`, "true or false", published);
}

/** The sources of a law, for another law that is made of it. */
export function sourcesOf({ sources }: LawOrigin): LawOrigin | undefined {
  return sources && { sources };
}
