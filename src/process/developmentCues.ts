/*
 * Module: process. What is done, and when, while the material is in the developer.
 */
import { agitationInterval } from "../agitation/agitation.js";
import type { Caution } from "../core/caution.js";
import { refuse } from "../core/guards.js";
import { handbookHabits, KEEP_MOVING } from "../handbook/process.js";
import { caution } from "./caution.js";
import type { CueDraft } from "./layOut.js";
import type { Handling } from "./types.js";
import { agitationsText } from "./text.js";

/**
 * From this interval on the first agitation is the long one; makers who agitate more often begin with a short
 * one.
 */
const LONG_START_FROM_S = 60;

/** More cues are not followed by a person, and a plan that comes back in takes about as many. */
const MOST_AGITATIONS = 9e4;

/**
 * The cues of a development that is poured out from `pourAtS` on; `where` is the function and the agitation's
 * field. Agitation falls on a fixed grid from the start, so that a development that is made longer or shorter
 * keeps its beat; one that pouring out would cut short is left out.
 */
export function developmentCues(
  where: string,
  { vessel, movement, agitation, drainS }: Handling,
  pourAtS: number,
): readonly CueDraft[] {
  const { initialS, burstS } = handbookHabits[vessel];
  const everyS = agitationInterval(where, agitation);
  const cues: CueDraft[] = [{ atS: 0, do: "pour-in" }];
  const agitate = (atS: number, durationS: number): void => {
    if (durationS > 0) cues.push({ atS, durationS, do: "agitate", movement });
  };
  if (everyS !== undefined && everyS <= burstS) agitate(0, pourAtS);
  else {
    const firstS = Math.min(everyS === undefined || everyS >= LONG_START_FROM_S ? initialS : burstS, pourAtS);
    agitate(0, firstS);
    if (everyS === undefined) {
      if (pourAtS > firstS) cues.push({ atS: firstS, durationS: pourAtS - firstS, do: "stand" });
    } else {
      if (pourAtS / everyS > MOST_AGITATIONS)
        refuse(
          `${where}/everyS`,
          "agitations-at-most",
          agitationsText,
          { most: MOST_AGITATIONS, timeS: pourAtS },
          everyS,
        );
      // One that ends with the pouring out fits, however the product rounds.
      for (let i = 1; i * everyS + burstS <= pourAtS + 1e-9; i++) agitate(i * everyS, burstS);
    }
  }
  cues.push(pourOut(pourAtS, drainS));
  return cues;
}

/** Pouring out or lifting out, with the draining as its length. */
export function pourOut(atS: number, drainS: number): CueDraft {
  return drainS > 0 ? { atS, durationS: drainS, do: "pour-out" } : { atS, do: "pour-out" };
}

/** Agitation of a bath that is only to be kept moving: at the start, then a short one each minute. */
export function keptMoving(
  handling: Pick<Handling, "vessel" | "movement">,
  lengthS: number,
): readonly CueDraft[] {
  const { vessel, movement } = handling;
  const { burstS } = handbookHabits[vessel];
  const { initialS, everyS } = KEEP_MOVING;
  const cues: CueDraft[] = [{ atS: 0, durationS: Math.min(initialS, lengthS), do: "agitate", movement }];
  for (let atS = everyS; atS + burstS <= lengthS; atS += everyS)
    cues.push({ atS, durationS: burstS, do: "agitate", movement });
  return cues;
}

/** The caution on a development shorter than its draining. */
export function drainTooLong(timeS: number, drainS: number): Caution {
  return caution("drain-too-long", "stop", { quantity: "timeS", limit: timeS, actual: drainS });
}
