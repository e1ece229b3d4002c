import { genericAgeLaw } from "./genericAgeLaw.js";
import type { AgeLaw } from "./law.js";

/** A bath that works as when fresh until it dies. */
export type LifeLaw = Extract<AgeLaw, { readonly kind: "life" }>;

/** Whether a law of age says when a bath ends. How its time grows says nothing of that. */
const saysEnd = (age: AgeLaw | undefined): boolean => age?.kind === "life" || age?.kind === "half-life";

/** A law of age that says something of this bath: how a time grows is unknown until a run has taught it. */
export const ownAge = (age: AgeLaw | undefined): AgeLaw | undefined =>
  age?.runs === 0 && !saysEnd(age) ? undefined : age;

/** The life of a bath: its law's, or its make-up's where the law says nothing of the end. */
export const lifeOf = (age: AgeLaw | undefined, made: LifeLaw | undefined): LifeLaw | undefined =>
  age?.kind === "life" ? age : saysEnd(age) ? undefined : made;

/**
 * A law of age that says nothing past a day covers what the developer keeps: up to there it ages as slowly as
 * in a day.
 */
export function covering(age: AgeLaw | undefined, keepingLimitH: number | undefined): AgeLaw | undefined {
  if (keepingLimitH === undefined) return age;
  const law = age ?? genericAgeLaw;
  const open = law.kind === "speeding" || law.kind === "slowing";
  return open && law.coversH === undefined ? { ...law, coversH: keepingLimitH } : age;
}
