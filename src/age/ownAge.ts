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
