import type { AgeLaw } from "../age/law.js";
import { livesUntil } from "../age/livesUntil.js";
import { lifeOf, type LifeLaw } from "../age/ownAge.js";
import type { DeveloperBrew } from "../brew/brew.js";
import { brewLife } from "../brew/brewLife.js";
import type { Caution } from "../core/caution.js";
import { isInputError } from "../core/errors.js";
import type { TimeEstimate } from "../core/estimate.js";

/**
 * The law of age that a brew brings along: it lives as long as its make-up lets expect.
 *
 * @param brew - left out for a bath of another kind
 * @param knownAgeH - the age that a known time is for, h: one from a bath older than the life contradicts it,
 * and no law is taken
 */
export function lifeOfBrew(brew: DeveloperBrew | undefined, knownAgeH: unknown = 0): LifeLaw | undefined {
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

/** What today's bath is asked about its life. */
interface LivedIn {
  /** left out for a bath of another kind */
  readonly brew: DeveloperBrew | undefined;
  /** the law of age that the time was found by */
  readonly age: AgeLaw | undefined;
  readonly ageH: number;
}

/** The cautions of a bath's life that a time does not have yet. They have no path. */
export function lifeCautions(
  { timeS, highS, cautions }: TimeEstimate & { readonly cautions: readonly Caution[] },
  { brew, age, ageH }: LivedIn,
): readonly Caution[] {
  const life = lifeOf(age, lifeOfBrew(brew));
  if (life === undefined) return [];
  return livesUntil({ ...life, ageH, timeS, highS }).filter(
    ({ code }) => !cautions.some((one) => one.code === code),
  );
}
