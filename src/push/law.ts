/*
 * What a law of push and pull is.
 */
import { checkedDepartures, readyWalk, type Departure, type ReadyWalk } from "../core/departures.js";
import { frozen } from "../core/frozen.js";
import { inRange } from "../core/guards.js";
import { checkedOrigin, type LawOrigin } from "../core/term.js";

/** How development time grows with a push of s stops: perStop^s, and e^(growth × s²) more for a push. */
export interface PushLaw extends LawOrigin {
  /** the factor on time of the first stop, 1 to 3, but for `growth` */
  readonly perStop: number;
  /** how much each further stop pushed adds to its own step, in ln(time), 0 to 1; 0 when left out */
  readonly growth?: number | undefined;
  /** standard deviation of ln(perStop), 0 to 3; 0.06 when left out */
  readonly sdPerStop?: number | undefined;
  /** what was learned of the departures from the law, along the stops */
  readonly departures?: readonly Departure[] | undefined;
}

/** A law that was checked: what was learned of its departures can be asked. */
export type ReadyPushLaw = PushLaw & { readonly walk?: ReadyWalk };

/** The least and the greatest number of stops, a pull below 0. */
export const STOPS = [-3, 5] as const;

/** The least and the greatest factor of the first stop. */
export const PER_STOP = [1, 3] as const;

/** The spread in ln(perStop) of a law that was given without one: that of {@link genericPushLaw}. */
export const GIVEN_STOP_SD = 0.06;

/**
 * How far ln(time) departs from any law of push: the standard deviation of a random walk over one stop. See
 * {@link genericPushLaw}.
 */
export const DEPARTURE_LOG_SD = 0.067;

/**
 * The law of push and pull in print: ln(factor) = 0.20·s + 0.022·s² for a push of s stops, 0.20·s for a pull.
 *
 * @remarks The middle of the maker's table of one concentrate on seven films (ILFORD ILFOTEC DD-X 1+4,
 * transcribed 2022), whose first step runs from 1.11 to 1.40. One stop over seven films in one developer
 * scatters by 0.085; two stops over several developers run from 1.41 to 2.15. The spread of the law and the
 * walk about it give 0.09 over one stop, 0.15 over two, 0.21 over three. How much of it is the law's and how
 * much the walk's is assumed. So parted, the first steps of a film foretell the next of that table.
 */
export const genericPushLaw: PushLaw = /* @__PURE__ */ frozen({
  perStop: Math.exp(0.2),
  growth: 0.022,
  sdPerStop: GIVEN_STOP_SD,
  sources: ["maker's table of one concentrate on seven films (ILFORD ILFOTEC DD-X 1+4, transcribed 2022)"],
  runs: 0,
});

/** Checks a law of push; its departures come back as a walk. */
export function checkedPushLaw(at: string, given: unknown): ReadyPushLaw {
  const law = checkedOrigin(at, given as PushLaw);
  inRange(at, law.perStop, ...PER_STOP, undefined, "/perStop");
  inRange(at, law.growth ?? 0, 0, 1, undefined, "/growth");
  inRange(at, law.sdPerStop ?? 0, 0, 3, undefined, "/sdPerStop");
  if (law.departures === undefined) return law;
  const departures = checkedDepartures(`${at}/departures`, law.departures, STOPS);
  return { ...law, walk: readyWalk("push", departures, DEPARTURE_LOG_SD) };
}

/** Returns a number of stops from −3 to 5; throws otherwise. */
export function checkedStops(at: string, stops: unknown): number {
  return inRange(at, stops, ...STOPS, "stops");
}
