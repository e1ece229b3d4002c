/*
 * Module: process. What is done, and when, while the material is in the developer.
 */
import { agitationInterval } from "../agitation/agitation.js";
import type { Caution } from "../core/caution.js";
import { refuse } from "../core/guards.js";
import { handbookHabits, KEEP_MOVING, SHUFFLED, type ProcessVessel } from "../handbook/process.js";
import { caution } from "./caution.js";
import type { CueDraft } from "./layOut.js";
import type { Handling } from "./types.js";
import { agitationsText } from "./text.js";

/**
 * From this interval on the first agitation is the long one; makers who agitate more often begin with a short
 * one.
 */
const LONG_START_FROM_S = 60;

/** In what, and how, a bath is moved. */
type Moved = Pick<Handling, "vessel" | "movement" | "pieces">;

/** More cues are not followed by a person, and a plan that comes back in takes about as many. */
const MOST_AGITATIONS = 9e4;

/** The longest development that is planned, s: that of a known time. */
export const LONGEST_S = 1e6;

/** What is shorter is no agitation and no development, s (assumed). */
export const LEAST_CUE_S = 0.01;

/**
 * The cues of a development that is poured out from `pourAtS` on; `where` is the function and the agitation's
 * field. Agitation falls on a fixed grid from the start, so that a development that is made longer or shorter
 * keeps its beat; one that pouring out would cut short is left out.
 */
export function developmentCues(where: string, handling: Handling, pourAtS: number): readonly CueDraft[] {
  const { vessel, movement, agitation, drainS } = handling;
  const burstS = agitationS(handling);
  const initialS = Math.max(handbookHabits[vessel].initialS, burstS);
  const everyS = agitationInterval(where, agitation);
  const cues: CueDraft[] = [pourIn(handling)];
  const agitate = (atS: number, durationS: number): void => {
    if (durationS >= LEAST_CUE_S) cues.push({ atS, durationS, do: "agitate", movement });
  };
  if (everyS !== undefined && everyS <= burstS) {
    agitate(0, pourAtS);
    cues.push(...tapped(vessel, initialS, pourAtS));
  } else {
    const firstS = Math.min(everyS === undefined || everyS >= LONG_START_FROM_S ? initialS : burstS, pourAtS);
    agitate(0, firstS);
    cues.push(...tapped(vessel, firstS, pourAtS));
    if (everyS === undefined) {
      if (pourAtS - firstS >= LEAST_CUE_S)
        cues.push({ atS: firstS, durationS: pourAtS - firstS, do: "stand" });
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

/** The longest development that a plan holds, s: that of a known time, and not too many agitations. */
export function longestPlannedS(where: string, handling: Handling): number {
  const everyS = agitationInterval(where, handling.agitation);
  const beats = everyS !== undefined && everyS > agitationS(handling);
  return beats ? Math.min(LONGEST_S, MOST_AGITATIONS * everyS) : LONGEST_S;
}

/** How long one agitation takes, s: each of several sheets that are shuffled takes its own time. */
function agitationS({ vessel, movement, pieces = 1 }: Moved): number {
  const { burstS } = handbookHabits[vessel];
  return movement === "shuffle" && pieces > 1 ? Math.max(burstS, SHUFFLED.sheetS * pieces) : burstS;
}

/** Pouring in, or sliding in, one by one where there are several. */
export const pourIn = ({ pieces }: Moved): CueDraft => ({
  atS: 0,
  do: "pour-in",
  ...(pieces !== undefined && { data: { pieces } }),
});

/** Pouring out or lifting out, with the draining as its length. */
export function pourOut(atS: number, drainS: number): CueDraft {
  return drainS > 0 ? { atS, durationS: drainS, do: "pour-out" } : { atS, do: "pour-out" };
}

/** Air bells leave pinholes: the vessel is tapped after the first agitation, where there is time left. */
function tapped(vessel: ProcessVessel, atS: number, pourAtS: number): readonly CueDraft[] {
  return handbookHabits[vessel].tapped && atS < pourAtS ? [{ atS, do: "tap" }] : [];
}

/** For a while without agitation; what lies is turned even then. */
export function leftAlone({ vessel, movement }: Moved, atS: number, durationS: number): CueDraft {
  return handbookHabits[vessel].lies
    ? { atS, durationS, do: "agitate", movement }
    : { atS, durationS, do: "stand" };
}

/**
 * Agitation of a bath that is only to be kept moving: at the start, then a short one each minute; without
 * pause in what lies. `dry` material is tapped free of air.
 */
export function keptMoving(handling: Moved, lengthS: number, dry = false): readonly CueDraft[] {
  const { vessel, movement } = handling;
  const { lies } = handbookHabits[vessel];
  const burstS = agitationS(handling);
  const { initialS, everyS } = KEEP_MOVING;
  // What is moved without pause has no beat.
  const always = lies || burstS >= everyS;
  const firstS = always ? lengthS : Math.min(Math.max(initialS, burstS), lengthS);
  if (firstS < LEAST_CUE_S) return [];
  const cues: CueDraft[] = [{ atS: 0, durationS: firstS, do: "agitate", movement }];
  if (dry) cues.push(...tapped(vessel, firstS, lengthS));
  if (!always)
    for (let atS = everyS; atS + burstS <= lengthS; atS += everyS)
      cues.push({ atS, durationS: burstS, do: "agitate", movement });
  return cues;
}

/** A bath that is poured in and out within its length; `inside` makes the cues until the pouring out. */
export function pouredBath(
  handling: Handling,
  lengthS: number,
  inside: (pourAtS: number) => readonly CueDraft[],
): readonly CueDraft[] {
  const drainingS = Math.min(handling.drainS, lengthS);
  const pourAtS = lengthS - drainingS;
  return [pourIn(handling), ...inside(pourAtS), pourOut(pourAtS, drainingS)];
}

/** The caution on a development shorter than its draining. */
export function drainTooLong(timeS: number, drainS: number): Caution {
  return caution("drain-too-long", "stop", { quantity: "timeS", limit: timeS, actual: drainS });
}
