import type { AgeLaw } from "../age/law.js";
import type { DeveloperBrew } from "../brew/brew.js";
import { brewLife } from "../brew/brewLife.js";
import { isInputError } from "../core/errors.js";

/**
 * The law of age that a brew brings along: it lives as long as its make-up lets expect.
 *
 * @param brew - left out for a bath of another kind
 * @param knownAgeH - the age that a known time is for, h: one from a bath older than the life contradicts it,
 * and no law is taken
 */
export function lifeOfBrew(brew: DeveloperBrew | undefined, knownAgeH: unknown = 0): AgeLaw | undefined {
  if (brew === undefined) return undefined;
  try {
    const { lifeH, lowH, sources } = brewLife(brew);
    // An age that is no number is told where the known time is checked.
    return typeof knownAgeH === "number" && lifeH > knownAgeH
      ? { kind: "life", lifeH, lowH, sources, runs: 0 }
      : undefined;
  } catch (error) {
    // What is wrong with a brew is told where the brew is checked.
    if (isInputError(error)) return undefined;
    throw error;
  }
}

/** A law of age that says something of this bath: one that no run has taught says nothing. */
export const ownAge = (age: AgeLaw | undefined): AgeLaw | undefined => (age?.runs === 0 ? undefined : age);
