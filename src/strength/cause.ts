/*
 * The strength of a brew as a cause: today's brew against the one the time is known for, as `brewStrength`
 * gives it.
 */
import type { Caution } from "../core/caution.js";
import type { Cause, Effect, Rests } from "../core/cause.js";
import { frozen } from "../core/frozen.js";
import { arrayOf, inRange, notOneOf, plainObject, positive } from "../core/guards.js";
import { BASES, checkedOrigin, hardlyMoved, type Basis, type LawOrigin } from "../core/term.js";

/**
 * The strength of today's brew against the known one, as a factor on time; what `brewStrength` returns is
 * one.
 */
export interface Strength extends LawOrigin {
  /** `"strength"`, as in the row of an answer */
  readonly cause?: string | undefined;
  /** the factor on time, above 0 to 1e6 */
  readonly value: number;
  /** standard deviation of its logarithm, 0 to 10 */
  readonly logSd: number;
  /**
   * the part of `logSd` that all strengths share, since one law of amounts gave them: positive where a
   * stronger law makes this time longer, −10 to 10; when left out ln(value), and at most half of the variance
   */
  readonly slope?: number | undefined;
  /** what it rests on */
  readonly basis: Basis;
  /** life of today's brew from mixing, 0 to 1e6 h: a bath must live until the pour-out */
  readonly lifeH?: number | undefined;
  /** age from which today's brew may fail, h, 0 to `lifeH`: past it a warning; `lifeH` when left out */
  readonly lifeLowH?: number | undefined;
  /** what a litre of today's brew develops, above 0 to 1e6 cm²: past it a used bath has a warning */
  readonly capacityCm2PerL?: number | undefined;
  /** what was unwise about the brews; passed on */
  readonly cautions?: readonly Caution[] | undefined;
}

/** What own runs say of one brew beyond the law of amounts. */
export interface LearnedBrew {
  /** `value` of its strength */
  readonly value: number;
  /** `logSd` of its strength */
  readonly logSd: number;
  /** `slope` of its strength */
  readonly slope: number;
  /** how far ln(time) lies from what the law says of it, −10 to 10 */
  readonly log: number;
  /** its standard deviation, 0 to 10 */
  readonly sd: number;
}

/**
 * What own runs say of strengths: by how many of its standard deviations the law is off that gave them. A law
 * that is too weak makes the time in a weaker brew too short and the time in a stronger one too long.
 */
export interface StrengthCorrection extends LawOrigin {
  /** what they say of single brews beyond that */
  readonly brews?: readonly LearnedBrew[] | undefined;
  /** −1000 to 1000; 0 when nothing is known */
  readonly correction: number;
  /** its standard deviation, 0 to 10; 1 when left out */
  readonly sdCorrection?: number | undefined;
}

/** The law when no run has taught anything: a strength is as given. */
export const genericStrengthCorrection: StrengthCorrection = /* @__PURE__ */ frozen({
  correction: 0,
  sdCorrection: 1,
  runs: 0,
});

/** Strength as a cause. Its parameter is the correction of strengths, in their standard deviations. */
export const strengthCause: Cause<StrengthCorrection, Strength, "strength"> = {
  name: "strength",
  field: "strength",
  law: "strength",
  lawFields: ["correction", "sdCorrection", "brews"],
  generic: genericStrengthCorrection,
  start: { value: 1, logSd: 0, basis: "unchanged" },
  relative: true,
  read: readStrength,
  check: (at, given) => {
    const law = checkedOrigin(at, given as StrengthCorrection);
    inRange(at, law.correction, -1000, 1000, undefined, "/correction");
    inRange(at, law.sdCorrection ?? 0, 0, 10, undefined, "/sdCorrection");
    if (law.brews !== undefined) checkBrews(`${at}/brews`, law.brews);
    return law;
  },
  effect: strengthEffect,
  // Their paths point into the brews: here they are about the strength as a whole.
  cautions: (_law, _from, { cautions = [] }) =>
    cautions.map((one) => ({ ...one, path: "/conditions/strength" })),
  rests: strengthRests,
};

function checkBrews(at: string, brews: unknown): void {
  arrayOf(at, brews, 0).forEach((one, i) => {
    const place = `${at}/${i}`;
    const { value, logSd, slope, log, sd } = plainObject(place, one);
    positive(place, value, 1e6, undefined, "/value");
    inRange(place, logSd, 0, 10, undefined, "/logSd");
    inRange(place, slope, -10, 10, undefined, "/slope");
    inRange(place, log, -10, 10, undefined, "/log");
    inRange(place, sd, 0, 10, undefined, "/sd");
  });
}

function readStrength(at: string, given: unknown): Strength {
  const strength = checkedOrigin(at, given as Strength);
  positive(at, strength.value, 1e6, undefined, "/value");
  inRange(at, strength.logSd, 0, 10, undefined, "/logSd");
  if (strength.slope !== undefined) inRange(at, strength.slope, -10, 10, undefined, "/slope");
  const { basis } = strength;
  if (basis !== "unchanged" && !BASES.includes(basis))
    notOneOf(`${at}/basis`, ["unchanged", ...BASES], basis);
  const { cautions = [], lifeH, lifeLowH, capacityCm2PerL } = strength;
  if (lifeH !== undefined) inRange(at, lifeH, 0, 1e6, "ageH", "/lifeH");
  if (lifeLowH !== undefined) inRange(at, lifeLowH, 0, lifeH ?? 1e6, "ageH", "/lifeLowH");
  if (capacityCm2PerL !== undefined) positive(at, capacityCm2PerL, 1e6, "cm2PerL", "/capacityCm2PerL");
  arrayOf(`${at}/cautions`, cautions, 0).forEach((one, i) => plainObject(`${at}/cautions/${i}`, one));
  return strength;
}

/** What of its spread a strength shares where it does not say so: half of the variance (assumed). */
const SHARED = Math.SQRT1_2;

/** How ln(time) moves when the law that gave a strength is one of its standard deviations stronger. */
export function strengthSlope({ value, logSd, slope }: Strength): number {
  return slope ?? Math.max(-SHARED * logSd, Math.min(SHARED * logSd, Math.log(value)));
}

/** The variance of a strength that its law does not explain. */
export function strengthBeside(strength: Strength): number {
  return Math.max(0, strength.logSd ** 2 - strengthSlope(strength) ** 2);
}

/** The name of the number that one brew has of its own: strengths that say the same are of one brew. */
export function brewName({ value, logSd, slope }: Pick<LearnedBrew, "value" | "logSd" | "slope">): string {
  return `strength ${value} ${logSd} ${slope}`;
}

/** What runs have said of the brew of a strength. */
function learnedBrew({ brews = [] }: StrengthCorrection, of: Strength): LearnedBrew | undefined {
  const slope = strengthSlope(of);
  return brews.find((one) => one.value === of.value && one.logSd === of.logSd && one.slope === slope);
}

/** The effect of going from one strength to another. A baseline has none: its side is the known brew. */
function strengthEffect(law: StrengthCorrection, from: Strength, to: Strength): Effect {
  const { correction, sdCorrection: sd = 1 } = law;
  const slope = strengthSlope(to) - strengthSlope(from);
  const ratio = to.value / from.value;
  const log = Math.log(ratio) + correction * slope;
  const own = learnedBrew(law, to);
  if (own !== undefined) {
    const further = [{ parameter: brewName(own), slope: own.sd }];
    return { log: log + own.log, slope, sd, beside: 0, further };
  }
  const beside = Math.sqrt(Math.abs(strengthBeside(to) - strengthBeside(from)));
  const effect = { log, slope, sd, beside };
  // Without a correction the factor is the strength itself, to the last bit.
  return correction === 0 ? { ...effect, exact: ratio } : effect;
}

/** A strength that no run has corrected rests on what it says itself. */
function strengthRests(law: StrengthCorrection, to: Strength): Rests | undefined {
  if (to.value === 1 && to.logSd === 0) return { basis: "unchanged" };
  const { runs = 0 } = law;
  return runs > 0
    ? { basis: hardlyMoved(law) ? to.basis : "own-runs", sources: to.sources, runs }
    : { basis: to.basis, sources: to.sources, runs: to.runs };
}
