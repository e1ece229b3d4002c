/*
 * Age as a cause: hours since the bath was mixed on each side.
 */
import { isPast } from "../core/caution.js";
import type { Cause, Effect } from "../core/cause.js";
import { orWrongWay } from "../core/orWrongWay.js";
import { genericAgeLaw } from "./genericAgeLaw.js";
import { ageEffect, ageLog, bathAge, checkedAgeLaw, lastAge, notPast, type AgeLaw } from "./law.js";

/**
 * Age as a cause. Its parameter is the rate of ageing: 1/h, for a speeding law 1/day^1.5, for a slowing one
 * 1/√h.
 */
export const ageCause: Cause<AgeLaw, number, "age"> = {
  name: "age",
  field: "ageH",
  law: "age",
  lawFields: {
    "half-life": ["halfLifeH", "sdLog", "sdRatePerH"],
    "life": ["lifeH", "lowH"],
    "slowing": ["perRootH", "sdPerRootH", "coversH"],
    "speeding": ["perDay", "sdPerDay", "coversH"],
  },
  generic: genericAgeLaw,
  start: 0,
  column: { name: "ageH", side: bathAge },
  read: bathAge,
  check: checkedAgeLaw,
  // Today's bath past its limit is a caution (src/bath/judgeBath.ts); a known time cannot have been found in
  // one.
  within: (at, law, ageH, known) => {
    if (known) notPast(at, law, ageH);
  },
  effect: effectWithin,
  cautions: (_law, fromH, toH, effect) => orWrongWay([], "age", fromH - toH, effect),
  logAt: (law, fromH) => {
    const limit = lastAge(law);
    const log = ageLog(law, fromH);
    return (toH) => log(isPast(toH, limit) ? limit : toH);
  },
};

/**
 * The effect between two ages. Past the limit of its law a bath has no time: the effect is that of the limit.
 */
function effectWithin(law: AgeLaw, fromH: number, toH: number): Effect {
  const limit = lastAge(law);
  if (!isPast(toH, limit)) return ageEffect(law, fromH, toH);
  return ageEffect(law, law.kind === "life" ? 0 : fromH, limit);
}
