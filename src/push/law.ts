/*
 * What a law of push and pull is.
 */
import { frozen } from "../core/frozen.js";
import { inRange } from "../core/guards.js";
import { checkedOrigin, type LawOrigin } from "../core/term.js";

/** How development time grows with a push of s stops: perStop^s, and e^(growth × s²) more for a push. */
export interface PushLaw extends LawOrigin {
  /** the factor on time of the first stop, 1 to 3, but for `growth` */
  readonly perStop: number;
  /** how much each further stop pushed adds to its own step, in ln(time), 0 to 1; 0 when left out */
  readonly growth?: number | undefined;
  /** standard deviation of ln(factor) for each stop, 0 to 3; 0.09 when left out */
  readonly sdPerStop?: number | undefined;
}

/**
 * The law of push and pull in print: ln(factor) = 0.20·s + 0.022·s² for a push of s stops, 0.20·s for a pull.
 *
 * @remarks The middle of the maker's table of one concentrate on seven films (ILFORD ILFOTEC DD-X 1+4,
 * transcribed 2022), whose first step runs from 1.11 to 1.40. One stop over seven films in one developer
 * scatters by 0.085; two stops over several developers run from 1.41 to 2.15.
 */
export const genericPushLaw: PushLaw = /* @__PURE__ */ frozen({
  perStop: Math.exp(0.2),
  growth: 0.022,
  sdPerStop: 0.09,
  sources: ["maker's table of one concentrate on seven films (ILFORD ILFOTEC DD-X 1+4, transcribed 2022)"],
  runs: 0,
});

/** Checks a law of push and returns it. */
export function checkedPushLaw(at: string, given: unknown): PushLaw {
  const law = checkedOrigin(at, given as PushLaw);
  inRange(at, law.perStop, 1, 3, undefined, "/perStop");
  inRange(at, law.growth ?? 0, 0, 1, undefined, "/growth");
  inRange(at, law.sdPerStop ?? 0, 0, 3, undefined, "/sdPerStop");
  return law;
}

/** Returns a number of stops from −3 to 5; throws otherwise. */
export function checkedStops(at: string, stops: unknown): number {
  return inRange(at, stops, -3, 5, "stops");
}
