/*
 * Module: compensate. Which cautions of an answer are meant, once the material and the bath are known.
 */
import type { Caution } from "../core/caution.js";

/** What is known beside the known time, today's conditions and the laws. */
export interface BathFacts {
  /** `"paper"` where it is that */
  readonly material?: string | undefined;
  /** whether the bath is judged by a capacity of its own, from its volume, its make-up or a stated figure */
  readonly capacityKnown: boolean;
  /** whether it is judged by how long it keeps */
  readonly keepingKnown: boolean;
}

/**
 * The cautions that are meant. Papers are developed in one to three minutes (common practice): what is short
 * for film is usual for them. Practice with film says nothing of paper, nor of a bath whose capacity is
 * known. A keeping limit says what no law of age does.
 */
export function meantCautions(
  cautions: readonly Caution[],
  { material, capacityKnown, keepingKnown }: BathFacts,
): readonly Caution[] {
  const paper = material === "paper";
  const idle = [
    paper && "short-time",
    (paper || capacityKnown) && "bath-well-used",
    keepingKnown && "age-unknown",
  ];
  return cautions.filter(({ code }) => !idle.includes(code));
}
