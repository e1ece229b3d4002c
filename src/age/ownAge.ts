import type { AgeLaw } from "./law.js";

/** Whether a law of age says when a bath ends. How its time grows says nothing of that. */
export const saysEnd = (age: AgeLaw | undefined): boolean =>
  age?.kind === "life" || age?.kind === "half-life";

/** A law of age that says something of this bath: how a time grows is unknown until a run has taught it. */
export const ownAge = (age: AgeLaw | undefined): AgeLaw | undefined =>
  age?.runs === 0 && !saysEnd(age) ? undefined : age;
