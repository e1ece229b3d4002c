/*
 * Module: process. The lengths of the steps, rounded once and before they are laid end to end, so that the
 * headline, the plan and its sum agree.
 */
import { isPast, type Caution } from "../core/caution.js";
import { SHOWS } from "../core/estimate.js";
import { roundTime } from "../quantities/roundTime.js";
import { caution } from "./caution.js";

/** A length to the nearest step, like the headline, but never to nothing; itself without a step. */
export function toNearest(lengthS: number, stepS: number | undefined): number {
  return stepS === undefined ? lengthS : Math.max(stepS, roundTime(lengthS, stepS));
}

/** A rounding that moves the development by this share of it or more makes another development (assumed). */
const SPOILS = 0.25;

/** What to say where a step moves a development by more than shows. */
export function movedByStep(timeS: number, stepS: number | undefined): readonly Caution[] {
  const actual = toNearest(timeS, stepS);
  const share = Math.abs(actual / timeS - 1);
  if (!isPast(share, SHOWS - 1)) return [];
  const severity = isPast(SPOILS, share) ? "warn" : "stop";
  return [
    caution("development-rounded", severity, { path: "/stepS", quantity: "timeS", limit: timeS, actual }),
  ];
}

/** What nobody times closer (assumed): 5 s up to ten minutes, a minute up to an hour, then five minutes. */
const usualStepS = (lengthS: number): number => (lengthS <= 600 ? 5 : lengthS <= 3600 ? 60 : 300);

/** A length of the handbook, rounded up to the step of the input, or by its own length. */
export const upByLength = (lengthS: number, stepS: number | undefined): number =>
  toUpper(lengthS, stepS ?? usualStepS(lengthS));

/** A length rounded up to a step, where too short would do harm; itself without a step. */
export function toUpper(lengthS: number, stepS: number | undefined): number {
  if (stepS === undefined) return lengthS;
  const roundedS = toNearest(lengthS, stepS);
  // What a product loses to rounding is no reason for another step: 3 × 20.1 s are 60.300000000000004.
  return roundedS < lengthS * (1 - 1e-12) ? roundTime(roundedS + stepS, stepS) : roundedS;
}
