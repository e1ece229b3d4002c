/*
 * Room: learning. From the trade's ways of judging a negative to one number: ln of the time that would have
 * been right, and how well that is known.
 */
import { REPEAT_LOG_SD } from "../core/estimate.js";
import { inRange, knownEntry, plainObject, positive } from "../core/guards.js";
import { onlyFields } from "./notebook.js";
import type { Outcome, Run } from "./types.js";

/**
 * What an eye lets pass in a good negative, in ln(time): ten per cent of time is the least change worth
 * making (common practice).
 */
const EYE_LOG_SD = 0.1;

/** A correction by eye is known to about a quarter of itself (common practice). */
const EYE_SHARE = 0.25;

/** The factor on time of one step, N+1 or N−1: time by 1.4 or by 0.7 (common practice). */
const PER_STEP = 1.4;

/**
 * Gradient and the density of a patch grow as about time^0.7 near the wanted gradient: γ∞(1 − e^−kt) has the
 * local exponent kt·e^−kt/(1 − e^−kt), 0.69 at half of γ∞, and 0.83 to 0.46 from 0.3 to 0.75 of it, a fifth
 * either way.
 */
const GROWTH_EXPONENT = 0.7;
const GROWTH_SHARE = 0.2;

/** A time of appearance and its factor are each known to about a tenth (common practice). */
const APPEARANCE_LOG_SD = 0.15;

/**
 * No outcome is read better than this, a hundredth of a per cent of time: what claims to be is taken for it.
 * An assumption of this package, a hundredth of what a careful clock and thermometer leave; much below,
 * copies of a run would cancel to nothing in the sums.
 */
const LEAST_LOG_SD = 1e-4;

/**
 * The standard deviation of ln(right time) that a run counts with: unless outcomes are taken at their word,
 * no run tells more than a development repeats.
 */
export const trusted = (logSd: number, stated: boolean): number =>
  stated ? logSd : Math.max(REPEAT_LOG_SD, logSd);

/** ln of the right time and its standard deviation; or, for a run that says nothing about it, why. */
type Judgement = readonly [logTime: number, logSd: number] | string;

const spread = (at: string, fallback: number, logSd = fallback): number =>
  Math.max(LEAST_LOG_SD, positive(at, logSd, 3, undefined, "/logSd"));

/** Standard deviation of ln(right time) when an eye has to correct the time by e^shift. */
export const eyeLogSd = (shift: number): number => Math.hypot(EYE_LOG_SD, EYE_SHARE * shift);

function byEye(at: string, given: number, shift: number, logSd: number | undefined): Judgement {
  return [given + shift, spread(at, eyeLogSd(shift), logSd)];
}

type Grown = Extract<Outcome, { readonly wanted: number }>;

function byGrowth(at: string, given: number, outcome: Grown): Judgement {
  const { kind, wanted, sd = 0.05, logSd } = outcome;
  const measured = positive(
    at,
    (outcome as Partial<Record<Grown["kind"], number>>)[kind],
    10,
    undefined,
    `.${kind}`,
  );
  const shift = Math.log(positive(at, wanted, 10, undefined, "/wanted") / measured) / GROWTH_EXPONENT;
  const reading = positive(at, sd, 3, undefined, "/sd") / measured / GROWTH_EXPONENT;
  return [given + shift, spread(at, Math.hypot(reading, GROWTH_SHARE * shift), logSd)];
}

/** What each kind of outcome says, `given` being ln of the time given. */
const READ: {
  readonly [Kind in Outcome["kind"]]: (
    outcome: Extract<Outcome, { readonly kind: Kind }>,
    at: string,
    given: number,
  ) => Judgement;
} = {
  good: ({ logSd }, at, given) => byEye(at, given, 0, logSd),
  thin: () => "thin, and no amount is said",
  dense: () => "dense, and no amount is said",
  judged: ({ timeRatio, logSd }, at, given) =>
    byEye(at, given, Math.log(positive(at, timeRatio, 100, undefined, "/timeRatio")), logSd),
  steps: ({ steps, perStep = PER_STEP, logSd }, at, given) =>
    byEye(
      at,
      given,
      -inRange(at, steps, -10, 10, undefined, "/steps") *
        Math.log(inRange(at, perStep, 1, 4, undefined, "/perStep")),
      logSd,
    ),
  gamma: (outcome, at, given) => byGrowth(at, given, outcome),
  density: (outcome, at, given) => byGrowth(at, given, outcome),
  appearance: ({ appearanceS, factor, logSd }, at) => [
    Math.log(
      positive(at, appearanceS, 1e6, "timeS", "/appearanceS") *
        positive(at, factor, 1000, undefined, "/factor"),
    ),
    spread(at, APPEARANCE_LOG_SD, logSd),
  ],
  thin: () => "thin",
  dense: () => "dense",
  failed: () => "failed",
  fogged: () => "fogged",
};

/** The fields of each kind. */
const FIELDS: Readonly<Record<Outcome["kind"], readonly string[]>> = {
  good: ["kind", "logSd"],
  thin: ["kind"],
  dense: ["kind"],
  judged: ["kind", "timeRatio", "logSd"],
  steps: ["kind", "steps", "perStep", "logSd"],
  gamma: ["kind", "gamma", "wanted", "sd", "logSd"],
  density: ["kind", "density", "wanted", "sd", "logSd"],
  appearance: ["kind", "appearanceS", "factor", "logSd"],
  thin: ["kind"],
  dense: ["kind"],
  failed: ["kind", "note"],
  fogged: ["kind", "note"],
};

/** What a run's outcome says. */
export function readOutcome(where: string, run: Run): Judgement {
  const given = Math.log(positive(where, run.timeS, 1e6, "timeS", "/timeS"));
  const at = `${where}/outcome`;
  const kind = plainObject(at, run.outcome)["kind"];
  const read = knownEntry(`${at}/kind`, READ, kind) as (
    outcome: Outcome,
    at: string,
    given: number,
  ) => Judgement;
  onlyFields(at, run.outcome, FIELDS[kind as Outcome["kind"]]);
  return read(run.outcome, at, given);
}
