/*
 * Agitation as a cause. A side is the interval between agitations in s: 0 when continuous, Infinity for
 * stand.
 */
import type { Caution } from "../core/caution.js";
import type { Cause, Effect } from "../core/cause.js";
import { makeCaution } from "../core/cautionTexts.js";
import { checkedDepartures, readyWalk, type ReadyWalk } from "../core/departures.js";
import { inRange } from "../core/guards.js";
import { orWrongWay } from "../core/orWrongWay.js";
import {
  agitationInterval,
  checkedAgitationLaw,
  DEPARTURE_LOG_SD,
  genericAgitationLaw,
  GIVEN_LOSS_SD,
  LONGEST_INTERVAL_S,
  staleSlope,
  STAND_LOG_SD,
  STAND_RATE,
  type AgitationLaw,
} from "./agitation.js";
import { agitationSentences } from "./text.js";

/** Agitation as a cause. Its parameter is the loss of rate between two agitations. */
export const agitationCause: Cause<ReadyAgitationLaw, number, "agitation"> = {
  name: "agitation",
  field: "agitation",
  law: "agitation",
  lawFields: ["staleLoss", "staleTimeS", "sdStaleLoss", "shape", "departures"],
  generic: genericAgitationLaw,
  column: { name: "everyS", side: (at, everyS) => inRange(at, everyS, 0, 3600, "timeS") },
  read: readInterval,
  check: readyLaw,
  effect: agitationEffect,
  logAt: (law: ReadyAgitationLaw, fromS) => {
    if (law.walk !== undefined) return undefined;
    const before = logSlowness(law, fromS);
    return (toS) => (fromS === toS ? 0 : logSlowness(law, toS) - before);
  },
  cautions: (_law, fromS, toS, effect) =>
    orWrongWay(agitationCautions(fromS, toS), "agitation", fromS - toS, effect),
  knownCautions: (everyS) => (everyS === Infinity ? [stands("baseline")] : []),
};

/** Reads an agitation as the interval between two of them, s; Infinity for stand. */
export function readInterval(at: string, given: unknown): number {
  return agitationInterval(at, given) ?? Infinity;
}

/** A law that was checked: what was learned of its departures can be asked. */
export type ReadyAgitationLaw = AgitationLaw & { readonly walk?: ReadyWalk };

/** Checks a law; its departures come back as a walk. */
function readyLaw(at: string, given: unknown): ReadyAgitationLaw {
  const law = checkedAgitationLaw(at, given);
  if (law.departures === undefined) return law;
  const departures = checkedDepartures(`${at}/departures`, law.departures);
  return { ...law, walk: readyWalk("agitation", departures, DEPARTURE_LOG_SD) };
}

/**
 * Where an interval lies along the curve: −ln(rate)/loss. Stand is set against continuous agitation, at 0.
 */
export function placeOf(everyS: number, law: AgitationLaw): number {
  return everyS === Infinity ? 0 : staleSlope(everyS, law);
}

/** The effect of going from one interval to another. Stand has a rate of its own, which no loss explains. */
export function agitationEffect(law: ReadyAgitationLaw, fromS: number, toS: number): Effect {
  const before = placeOf(fromS, law);
  const after = placeOf(toS, law);
  const slope = after - before;
  const sd = law.sdStaleLoss ?? GIVEN_LOSS_SD;
  if (fromS === toS) return { log: 0, slope, sd, beside: 0 };
  const log = logSlowness(law, toS) - logSlowness(law, fromS);
  const stand = fromS === Infinity || toS === Infinity ? STAND_LOG_SD : 0;
  if (law.walk === undefined)
    return { log, slope, sd, beside: Math.hypot(stand, DEPARTURE_LOG_SD * Math.sqrt(Math.abs(slope))) };
  const departed = law.walk(before, after);
  return { ...departed, log: log + departed.log, slope, sd, beside: Math.hypot(stand, departed.beside) };
}

/** ln of the time against continuous agitation; no interval is slower than stand. */
function logSlowness(law: AgitationLaw, intervalS: number): number {
  const stand = -Math.log(STAND_RATE);
  return intervalS === Infinity ? stand : Math.min(stand, law.staleLoss * placeOf(intervalS, law));
}

/** A stand bath ends by local exhaustion: what temperature and dilution do to it is known roughly only. */
const stands = (side: "baseline" | "conditions"): Caution =>
  makeCaution(agitationSentences, "stand", "warn", { data: { side } });

function agitationCautions(fromS: number, toS: number): readonly Caution[] {
  const cautions: Caution[] = [];
  // A known time that stands is told of whether the conditions name the agitation or not.
  if (toS === Infinity && fromS !== Infinity) cautions.push(stands("conditions"));
  if (toS > LONGEST_INTERVAL_S && toS < Infinity)
    cautions.push(
      makeCaution(agitationSentences, "long-interval", "warn", {
        quantity: "timeS",
        limit: LONGEST_INTERVAL_S,
        actual: toS,
      }),
    );
  return cautions;
}
