/*
 * What an agitation and its law are, and the mean rate of development between two agitations.
 */
import { frozen } from "../core/frozen.js";
import type { ExpectedFigures } from "../core/errors.js";
import { inRange, noForm, plainObject, positive, type TextForm } from "../core/guards.js";
import type { Departure } from "../core/departures.js";
import { checkedOrigin, type LawOrigin } from "../core/term.js";

/** How an agitation is written in words, which `parseAgitation` reads. */
export const AGITATION: TextForm = {
  format: "agitation",
  examples: ["every 30 s", "continuous", "stand"],
};

/** How an agitation is given as data: its reader of words is too large for all who compensate. */
const FORMS: ExpectedFigures = {
  forms: [{ values: ["continuous", "stand"] }, { types: ["object"], examples: ['{ "everyS": 30 }'] }],
  parse: "parseAgitation",
};

/** How the bath is moved: without pause, not at all after the start, or every so many seconds. */
export type Agitation =
  | "continuous"
  | "stand"
  | {
      /** seconds from one agitation to the next, above 0 to 3600 */
      readonly everyS: number;
    };

/**
 * Between two agitations the layer at the emulsion goes stale: the rate relaxes from 1 toward 1 − `staleLoss`
 * with the time constant `staleTimeS`. `staleLoss` is from 0 to 0.99, `sdStaleLoss` its standard deviation.
 *
 * A loss that was learned scales ln(rate) along the curve of the law before: `shape`, 0 to 0.99, is the loss
 * that drew this curve, and `staleLoss` may then be up to 10. The mean rate with s stale is (1 −
 * shape·s)^(staleLoss/shape).
 */
export interface AgitationLaw extends LawOrigin {
  /** share of the rate that is lost at most when the bath stands, 0 to 0.99; to 10 with `shape` */
  readonly staleLoss: number;
  /** time in which it loses 63 % of that, s, above 0 to 1e5 */
  readonly staleTimeS: number;
  /** standard deviation of the loss, 0 to 10 */
  readonly sdStaleLoss?: number | undefined;
  /** the loss that bends the curve, 0 to 0.99; `staleLoss` when left out */
  readonly shape?: number | undefined;
  /** what was learned of the departures from the curve, along −ln(rate)/loss */
  readonly departures?: readonly Departure[] | undefined;
}

/**
 * How far ln(time) departs from the curve of any law: the standard deviation of a random walk over one unit
 * of −ln(rate)/loss, an assumption of this package.
 */
export const DEPARTURE_LOG_SD: number = 0.08;

/**
 * The agitation law used when nothing better is known: a = 0.75 ± 0.4, τ = 75 s.
 *
 * @remarks Continuous takes 0.87 of the time at 30 s intervals (0.80 to 0.90 in common practice), 60 s
 * intervals take 1.13 of it (1.1 to 1.27), continuous takes 0.77 of the time at 60 s (0.80 to 0.85 in two
 * makers' notes, from memory). The published ratios, each as a scale along the curve, have the mean 0.73 and
 * the standard deviation 0.41. That is 7 % from 30 to 60 s and 8 % from 30 s to continuous. How it was
 * reckoned: docs/decisions/priors.md.
 */
export const genericAgitationLaw: AgitationLaw = /* @__PURE__ */ frozen({
  staleLoss: 0.75,
  staleTimeS: 75,
  sdStaleLoss: 0.4,
  shape: 0.75,
  seen: "common-practice",
  sources: [
    "continuous, 30 s and 60 s intervals: common practice",
    "tray against tank and rotary: makers' notes (from memory)",
  ],
  runs: 0,
});

/**
 * Relative rate of stand development, against continuous agitation, and its standard deviation in ln(rate).
 * Derived from practice: an hour of stand at twice the dilution replaces 10 to 15 minutes of intermittent
 * agitation (common practice); with n = 0.8 for the dilution that is about 3 times the time at 30 s
 * intervals. Local exhaustion sets the pace, so no law of intervals reaches it.
 */
export const STAND_RATE: number = 0.29;
export const STAND_LOG_SD: number = 0.4;

/** The longest interval that the law of intervals serves, s. */
export const LONGEST_INTERVAL_S: number = 180;

/** The seconds between agitations of a checked agitation: 0 for continuous, `undefined` for stand. */
export function agitationInterval(where: string, agitation: unknown): number | undefined {
  if (agitation === "continuous") return 0;
  if (agitation === "stand") return undefined;
  if (typeof agitation === "string") noForm(where, FORMS, agitation);
  const everyS = plainObject(where, agitation)["everyS"];
  return positive(where, everyS, 3600, "timeS", "/everyS");
}

/**
 * The spread in `staleLoss` of a law that was given without one: about half of the generic law's, 5 % from 30
 * to 60 s; an assumption of this package.
 */
export const GIVEN_LOSS_SD: number = 0.3;

/** Checks a law of agitation and returns it. */
export function checkedAgitationLaw(where: string, given: unknown): AgitationLaw {
  const law = checkedOrigin(where, given as AgitationLaw);
  const { shape = 0 } = law;
  inRange(where, shape, 0, 0.99, undefined, "/shape");
  inRange(where, law.staleLoss, 0, law.shape === undefined ? 0.99 : 10, undefined, "/staleLoss");
  positive(where, law.staleTimeS, 1e5, "timeS", "/staleTimeS");
  inRange(where, law.sdStaleLoss ?? 0, 0, 10, undefined, "/sdStaleLoss");
  return law;
}

/**
 * How −ln(rate) against continuous agitation moves with the law's loss, at an interval in s: −ln(1 − a s)/a.
 */
export function staleSlope(
  intervalS: number,
  { staleLoss, staleTimeS, shape = staleLoss }: AgitationLaw,
): number {
  // A loss of nothing leaves the share itself.
  const curve = Math.max(shape, 1e-20);
  return -Math.log1p(-curve * staleShare(intervalS, staleTimeS)) / curve;
}

/**
 * The share of an interval that counts as stale: 1 − (1 − e^−x)/x with x = interval/τ; 0 for continuous
 * agitation, toward 1 for very long intervals.
 */
export function staleShare(intervalS: number, staleTimeS: number): number {
  const x = intervalS / staleTimeS;
  return x > 0 ? 1 + Math.expm1(-x) / x : 0;
}
