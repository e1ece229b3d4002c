/*
 * Room: process. What is done, and when, while the material is in the developer.
 */
import { agitationInterval } from "../agitation/agitation.js";
import type { Caution } from "../core/caution.js";
import { wrongValue } from "../core/guards.js";
import { handbookVessels } from "../handbook/process.js";
import type { Cue, Handling } from "./types.js";

/**
 * From this interval on the first agitation is the long one; makers who agitate more often begin with a short
 * one.
 */
const LONG_START_FROM_S = 60;

/** More cues nobody follows, and a plan that comes back in takes about as many. */
const MOST_AGITATIONS = 9e4;

/**
 * The cues of a development that is poured out from `pourAtS` on; `where` is the function and the agitation's
 * field. Agitation falls on a fixed grid from the start, so that a development that is made longer or shorter
 * keeps its beat; one that pouring out would cut short is left out.
 */
export function developmentCues(
  where: string,
  { vessel, agitation, drainS }: Handling,
  pourAtS: number,
): readonly Cue[] {
  const { move, initialS, burstS } = handbookVessels[vessel];
  const everyS = agitationInterval(where, agitation);
  const cues: Cue[] = [];
  if (everyS !== undefined && everyS <= burstS)
    cues.push({ atS: 0, text: `Pour in, then ${move} without pause.` });
  else {
    const firstS = Math.min(everyS === undefined || everyS >= LONG_START_FROM_S ? initialS : burstS, pourAtS);
    const then = everyS === undefined ? ", then leave it standing" : "";
    cues.push({ atS: 0, text: `Pour in, then ${move} for ${firstS.toFixed(0)} s${then}.` });
    const text = `Agitate: ${move} for ${burstS} s.`;
    if (everyS !== undefined && pourAtS / everyS > MOST_AGITATIONS)
      wrongValue(
        `${where}/everyS`,
        `such that ${pourAtS} s hold at most ${MOST_AGITATIONS} agitations`,
        everyS,
      );
    // One that ends with the pouring out fits, however the product rounds.
    if (everyS !== undefined)
      for (let i = 1; i * everyS + burstS <= pourAtS + 1e-9; i++) cues.push({ atS: i * everyS, text });
  }
  // A length and no clock time: the reader's clock may count from the start of the plan or from pouring in.
  const drained = drainS > 0 ? `, so that it is drained ${Number(drainS.toFixed(1))} s later` : "";
  cues.push({ atS: pourAtS, text: `Begin to pour out or lift out${drained}.` });
  return cues;
}

/** The caution on a development shorter than its draining. */
export function drainTooLong(timeS: number, drainS: number): Caution {
  return {
    code: "drain-too-long",
    severity: "stop",
    message: "Draining takes longer than the development: dilute or cool the bath.",
    limit: timeS,
    actual: drainS,
  };
}
