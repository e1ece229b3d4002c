/*
 * From the trade's ways of judging a negative to what it says of ln(right time): a value, or a window.
 */
import { inRange, knownEntry, plainObject, positive } from "../core/guards.js";
import type { Slope } from "../core/row.js";
import type { Knowledge } from "../compensate/types.js";
import { contrastCause, contrastEffect } from "../contrast/cause.js";
import { logTimePerGamma, type GrowthLaw } from "../contrast/growth.js";
import { onlyFields } from "../core/onlyFields.js";
import { LEAST_LOG_SD, type Said, type ValueSaid } from "./reading.js";
import type { RunOutcome } from "./types.js";

/** The factor on time of one step: time by 1.4, or by 0.7 (common practice). */
const PER_STEP = 1.4;

/** A good negative is less than half a step off: 0.845 to 1.18 of the right time. */
export const HALF_STEP: number = Math.log(PER_STEP) / 2;

/** An eye draws the limit of a window anew each time, 7 % in time (an assumption of this package). */
export const EYE_LOG_SD = 0.07;

/**
 * All its limits lie too high or too low by 3 % in time (an assumption of this package): however many
 * negatives it has judged, it is off alike. Where windows overlap, this also keeps runs of one time from
 * telling too much.
 */
export const ONE_EYE: Slope = { parameter: "eye", slope: 0.03 };

/**
 * A correction that is named as a number is known to 10 %, the least change worth making (common practice).
 */
const JUDGED_LOG_SD = 0.1;

/** A correction by eye is known to about a quarter of itself (common practice). */
const EYE_SHARE = 0.25;

/** Where the fit begins to look for a thin or dense negative, in ln(time). */
const FIRST_THIN = 0.25;

/**
 * Gradient and the density of a patch grow as about time^0.7 near the wanted gradient: γ∞(1 − e^−kt) has the
 * local exponent kt·e^−kt/(1 − e^−kt), 0.69 at half of γ∞, and 0.83 to 0.46 from 0.3 to 0.75 of it. So a
 * correction is 0.84 to 1.5 times what 0.7 makes of it: known to a third, its standard deviation.
 */
const GROWTH_EXPONENT = 0.7;
const GROWTH_SHARE = 0.3;

/** A time of appearance is read to about a tenth (common practice). */
const APPEARANCE_LOG_SD = 0.1;
/**
 * A factor of appearance is known to 15 %, as printed lists differ for one agent: all runs that use it are
 * off alike.
 */
const FACTOR_LOG_SD = 0.15;

/** What a run's outcome says of ln(right time); or, for a run that says nothing of it, why. */
export type OutcomeSays = Said | "failed" | "fogged" | "past-growth";

/** Reads one kind of outcome; `given` is ln of the time given. */
type Read<Kind extends RunOutcome["kind"]> = (
  outcome: Extract<RunOutcome, { readonly kind: Kind }>,
  at: string,
  given: number,
  growth: GrowthLaw | undefined,
) => OutcomeSays;

const READ: { readonly [Kind in RunOutcome["kind"]]: Read<Kind> } = {
  good: ({ logSd }, at, given) => stepsOff(at, given, 0, HALF_STEP, logSd),
  judged: ({ timeRatio, logSd }, at, given) => {
    const shift = Math.log(positive(at, timeRatio, 100, "ratio", "/timeRatio"));
    const said = value(at, given + shift, Math.hypot(JUDGED_LOG_SD, EYE_SHARE * shift), logSd);
    return logSd === undefined ? sharing(said, ONE_EYE.parameter, ONE_EYE.slope) : said;
  },
  steps: ({ steps, perStep = PER_STEP, logSd }, at, given) => {
    const step = Math.log(inRange(at, perStep, 1.05, 4, "ratio", "/perStep"));
    const shift = -inRange(at, steps, -10, 10, undefined, "/steps") * step;
    return stepsOff(at, given, shift, shift === 0 ? HALF_STEP : step / 4, logSd);
  },
  thin: (_outcome, _at, given) => beyond(given, 1),
  dense: (_outcome, _at, given) => beyond(given, -1),
  gamma: (outcome, at, given, growth) => byGrowth(at, given, "gamma", outcome.gamma, outcome, growth),
  density: (outcome, at, given) => byGrowth(at, given, "density", outcome.density, outcome),
  appearance: ({ appearanceS, factor, logSd }, at) => {
    const rightS =
      positive(at, appearanceS, 1e6, "timeS", "/appearanceS") *
      positive(at, factor, 1000, "ratio", "/factor");
    const whole = Math.hypot(APPEARANCE_LOG_SD, FACTOR_LOG_SD);
    const said = value(at, Math.log(rightS), whole, logSd);
    return sharing(said, "appearance factor", (said.sd * FACTOR_LOG_SD) / whole);
  },
  failed: () => "failed",
  fogged: () => "fogged",
};

/** The fields of each kind. */
const FIELDS: Readonly<Record<RunOutcome["kind"], readonly string[]>> = {
  good: ["kind", "logSd"],
  judged: ["kind", "timeRatio", "logSd"],
  steps: ["kind", "steps", "perStep", "logSd"],
  thin: ["kind"],
  dense: ["kind"],
  gamma: ["kind", "gamma", "wanted", "sd", "logSd"],
  density: ["kind", "density", "wanted", "sd", "logSd"],
  appearance: ["kind", "appearanceS", "factor", "logSd"],
  failed: ["kind", "note"],
  fogged: ["kind", "note"],
};

/**
 * What a run's outcome says of ln(right time).
 *
 * @param where - the place of the run
 * @param timeS - the time given, s
 * @param outcome - how it came out
 * @param growth - the law of growth of contrast, where one is known, checked
 *
 * @remarks Good, steps, thin and dense are windows: an eye tells only in which of them a negative lies. They
 * overlap on purpose, since each eye draws its limits elsewhere. An outcome with its own `logSd` is a value,
 * and so are a judged time, a gradient, a density and a time of appearance.
 */
export function readOutcome(
  where: string,
  timeS: unknown,
  outcome: unknown,
  growth?: GrowthLaw,
): OutcomeSays {
  const given = Math.log(positive(where, timeS, 1e6, "timeS", "/timeS"));
  const at = `${where}/outcome`;
  const kind = plainObject(at, outcome)["kind"];
  const read = knownEntry(`${at}/kind`, READ, kind) as Read<RunOutcome["kind"]>;
  onlyFields(at, outcome, FIELDS[kind as RunOutcome["kind"]]);
  return read(outcome as RunOutcome, at, given, growth);
}

/** The law of growth of contrast that is known, checked. */
export function growthOf(at: string, { growth }: Knowledge): GrowthLaw | undefined {
  return growth === undefined ? undefined : contrastCause.check(`${at}/laws/growth`, growth);
}

/** A value, with the outcome's own spread where it has one. */
function value(at: string, log: number, sd: number, logSd: number | undefined): ValueSaid {
  const own = logSd === undefined ? sd : positive(at, logSd, 3, undefined, "/logSd");
  return { kind: "value", log, sd: Math.max(LEAST_LOG_SD, own) };
}

/** A value of which a part is wrong alike in all of its kind: `slope` of its whole spread. */
function sharing(said: ValueSaid, parameter: string, slope: number): ValueSaid {
  const part = Math.max(-said.sd, Math.min(said.sd, slope));
  if (part === 0) return said;
  const own = Math.sqrt(said.sd ** 2 - part ** 2);
  return { ...said, sd: Math.max(LEAST_LOG_SD, own), shared: { parameter, slope: part } };
}

/** A window about a correction by eye; a value where the outcome has its own spread. */
function stepsOff(at: string, given: number, shift: number, half: number, logSd: number | undefined): Said {
  const log = given + shift;
  const sd = Math.hypot(EYE_LOG_SD, EYE_SHARE * shift);
  return logSd === undefined
    ? { kind: "window", low: log - half, high: log + half, log, sd, shared: ONE_EYE }
    : value(at, log, sd, logSd);
}

/** Thin (1) or dense (−1): any correction beyond a quarter step. */
function beyond(given: number, sign: number): Said {
  const edge = given + (sign * HALF_STEP) / 2;
  const [low, high] = sign > 0 ? [edge, Infinity] : [-Infinity, edge];
  return { kind: "window", low, high, log: given + sign * FIRST_THIN, sd: EYE_LOG_SD, shared: ONE_EYE };
}

/** The number that gradients and densities share. */
export const GROWTH = "growth";

type Grown = Extract<RunOutcome, { readonly wanted: number }>;

/** What is wanted against what was measured, by the law of growth where it is known and gets there. */
function byGrowth(
  at: string,
  given: number,
  field: string,
  measured: number,
  { wanted, sd = 0.05, logSd }: Grown,
  law?: GrowthLaw,
): Said | "past-growth" {
  const found = positive(at, measured, 10, field === "gamma" ? "gamma" : "density", `/${field}`);
  const aim = positive(at, wanted, 10, undefined, "/wanted");
  const off = positive(at, sd, 3, undefined, "/sd");
  // `alike` is the share of the correction that is wrong alike.
  const said = (shift: number, reading: number, alike: number): ValueSaid => {
    const whole = Math.hypot(reading, alike * shift);
    const read = value(at, given + shift, whole, logSd);
    // A stated spread is shared out alike; one that is held at the least leaves the share as it is.
    const share = alike * Math.min(1, read.sd / whole);
    const shared = { parameter: GROWTH, slope: share * shift };
    return { shared, ...sharing(read, GROWTH, shared.slope), grows: { share, given } };
  };
  if (law === undefined) {
    const shift = Math.log(aim / found) / GROWTH_EXPONENT;
    // By the aim: by the measured one, readings that come out low would count for less.
    return said(shift, off / aim / GROWTH_EXPONENT, GROWTH_SHARE);
  }
  if (Math.max(aim, found) >= law.gammaInfinity) return "past-growth";
  const { log, beside } = contrastEffect(law, found, aim);
  return said(log, off * logTimePerGamma(law, found), beside / Math.max(LEAST_LOG_SD, Math.abs(log)));
}
