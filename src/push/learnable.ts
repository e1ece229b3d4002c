/*
 * Learning's half of push: the factor of the first stop, and the departures from its law.
 */
import type { Learnable } from "../core/cause.js";
import { learnedDepartures, placedWalk, storable } from "../core/departures.js";
import { joinRows, rowOf } from "../core/row.js";
import { DEPARTURE_LOG_SD, GIVEN_STOP_SD, PER_STOP, type ReadyPushLaw } from "./law.js";

/** Pushes nearer than half a stop share one departure. */
const SPACING = 0.5;

/** The range of ln(perStop). */
const RANGE = [Math.log(PER_STOP[0]), Math.log(PER_STOP[1])] as const;

/** Push as numbers that runs teach. */
export const pushLearnable: Learnable<ReadyPushLaw, number> = {
  place: ({ perStop, sdPerStop: sd = GIVEN_STOP_SD, departures }, sides) => {
    const walk = placedWalk("push", sides, DEPARTURE_LOG_SD, SPACING, departures);
    return {
      parameters: [{ parameter: "push", value: Math.log(perStop), sd, range: RANGE }, ...walk.parameters],
      row: (from, to) => joinRows([rowOf("push", to - from), walk.row(from, to)]),
    };
  },
  law: (law, learned) => {
    const found = learned.get("push");
    if (found === undefined) return law;
    return {
      ...storable(law),
      // Through a logarithm and back, a factor at the end of its range must not round out of it.
      perStop: Math.min(PER_STOP[1], Math.max(PER_STOP[0], Math.exp(found.value))),
      sdPerStop: found.sd,
      ...learnedDepartures(learned),
    };
  },
};
