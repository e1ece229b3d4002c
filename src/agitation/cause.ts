/*
 * Agitation as a cause. A side is the interval between agitations in s: 0 when continuous, Infinity for stand.
 */
import type { Caution } from "../core/caution.js";
import type { Cause, Effect } from "../core/cause.js";
import { inRange } from "../core/guards.js";
import {
  agitationInterval,
  checkedAgitationLaw,
  genericAgitationLaw,
  GIVEN_LOSS_SD,
  LONGEST_INTERVAL_S,
  staleSlope,
  STAND_LOG_SD,
  STAND_RATE,
  type AgitationLaw,
} from "./agitation.js";

/** Agitation as a cause. Its parameter is the loss of rate between two agitations. */
export const agitationCause: Cause<AgitationLaw, number, "agitation"> = {
  name: "agitation",
  field: "agitation",
  law: "agitation",
  generic: genericAgitationLaw,
  column: { name: "everyS", side: (at, everyS) => inRange(at, everyS, 0, 3600, "timeS") },
  read: readInterval,
  check: checkedAgitationLaw,
  effect: agitationEffect,
  logAt: (law, fromS) => {
    const before = logSlowness(law, fromS);
    return (toS) => (fromS === toS ? 0 : logSlowness(law, toS) - before);
  },
  cautions: agitationCautions,
};

/** Reads an agitation as the interval between two of them, s; Infinity for stand. */
export function readInterval(at: string, given: unknown): number {
  return agitationInterval(at, given) ?? Infinity;
}

/** The effect of going from one interval to another. Stand has a rate of its own, which no loss explains. */
export function agitationEffect(law: AgitationLaw, fromS: number, toS: number): Effect {
  return {
    log: fromS === toS ? 0 : logSlowness(law, toS) - logSlowness(law, fromS),
    slope: slopeAt(law, toS) - slopeAt(law, fromS),
    sd: law.sdStaleLoss ?? GIVEN_LOSS_SD,
    beside: (fromS === Infinity) === (toS === Infinity) ? 0 : STAND_LOG_SD,
  };
}

/** How ln(time) moves with the loss at an interval; not at all for stand. */
function slopeAt(law: AgitationLaw, intervalS: number): number {
  return intervalS === Infinity ? 0 : staleSlope(intervalS, law);
}

/** ln of the time against continuous agitation. */
function logSlowness(law: AgitationLaw, intervalS: number): number {
  return intervalS === Infinity ? -Math.log(STAND_RATE) : law.staleLoss * staleSlope(intervalS, law);
}

function agitationCautions(_law: AgitationLaw, fromS: number, toS: number): readonly Caution[] {
  const cautions: Caution[] = [];
  if ((fromS === Infinity) !== (toS === Infinity))
    cautions.push({
      code: "stand",
      severity: "warn",
      message: "Stand development depends on local exhaustion. Treat this time as a rough guide.",
      data: { side: fromS === Infinity ? "baseline" : "conditions" },
    });
  if (toS > LONGEST_INTERVAL_S && toS < Infinity)
    cautions.push({
      code: "long-interval",
      severity: "warn",
      message: "The law of agitation serves intervals up to 3 min.",
      quantity: "timeS",
      limit: LONGEST_INTERVAL_S,
      actual: toS,
    });
  return cautions;
}
