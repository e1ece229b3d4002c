/*
 * Learning's half of agitation: one loss, which scales the curve that the law had, and the departures from
 * it.
 */
import type { Learnable } from "../core/cause.js";
import { learnedDepartures, placedWalk, storable } from "../core/departures.js";
import { joinRows, rowOf } from "../core/row.js";
import { DEPARTURE_LOG_SD, GIVEN_LOSS_SD } from "./agitation.js";
import { agitationEffect, placeOf, type ReadyAgitationLaw } from "./cause.js";

/** Intervals nearer than this along the curve share one departure: 30 and 60 s are about 0.16 apart. */
const SPACING = 0.05;

/** Agitation as numbers that runs teach. */
export const agitationLearnable: Learnable<ReadyAgitationLaw, number> = {
  place: (law, sides) => {
    const { staleLoss: value, sdStaleLoss: sd = GIVEN_LOSS_SD, departures } = law;
    const at = (everyS: number): number => placeOf(everyS, law);
    const walk = placedWalk("agitation", sides.map(at), DEPARTURE_LOG_SD, SPACING, departures);
    return {
      parameters: [{ parameter: "agitation", value, sd, range: [0, 10] }, ...walk.parameters],
      row: (from, to) =>
        joinRows([rowOf("agitation", agitationEffect(law, from, to).slope), walk.row(at(from), at(to))]),
    };
  },
  law: (law, learned) => {
    const found = learned.get("agitation");
    if (found === undefined) return law;
    return {
      ...storable(law),
      shape: law.shape ?? law.staleLoss,
      staleLoss: found.value,
      sdStaleLoss: found.sd,
      ...learnedDepartures(learned),
    };
  },
  unfit: (_law, from, to) => ((from === Infinity) === (to === Infinity) ? undefined : "stand"),
};
