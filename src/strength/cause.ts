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
   * the part of `logSd` that all strengths share, since one law of amounts gave them: positive where the law's
   * being stronger makes this time longer, −10 to 10; when left out all of it, with the sign of ln(value)
   */
  readonly slope?: number | undefined;
  /** what it rests on */
  readonly basis: Basis;
  /** life of today's brew from mixing, 0 to 1e6 h: a bath must live until the pour-out */
  readonly lifeH?: number | undefined;
  /** what a litre of today's brew develops, above 0 to 1e6 cm²: past it a used bath has a warning */
  readonly capacityCm2PerL?: number | undefined;
  /** what was unwise about the brews; passed on */
  readonly cautions?: readonly Caution[] | undefined;
}

/**
 * What own runs say of strengths: by how many of its standard deviations the law is off that gave them. A law
 * that is too weak makes the time in a weaker brew too short and the time in a stronger one too long.
 */
export interface StrengthCorrection extends LawOrigin {
  /** −1000 to 1000; 0 when nothing is known */
  readonly correction: number;
  /** its standard deviation, 0 to 10; 1 when left out */
  readonly sdCorrection?: number | undefined;
}

/** The law when no run has taught anything: a strength is as given. */
export const genericStrengthCorrection: StrengthCorrection = /* @__PURE__ */ frozen({
  correction: 0,
  sdCorrection: 1,
});

/** Strength as a cause. Its parameter is the correction of strengths, in their standard deviations. */
export const strengthCause: Cause<StrengthCorrection, Strength, "strength"> = {
  name: "strength",
  field: "strength",
  law: "strength",
  lawFields: ["correction", "sdCorrection"],
  generic: genericStrengthCorrection,
  start: { value: 1, logSd: 0, basis: "unchanged" },
  relative: true,
  read: readStrength,
  check: (at, given) => {
    const law = checkedOrigin(at, given as StrengthCorrection);
    inRange(at, law.correction, -1000, 1000, undefined, "/correction");
    inRange(at, law.sdCorrection ?? 0, 0, 10, undefined, "/sdCorrection");
    return law;
  },
  effect: strengthEffect,
  // Their paths point into the brews: here they are about the strength as a whole.
  cautions: (_law, _from, { cautions = [] }) =>
    cautions.map((one) => ({ ...one, path: "/conditions/strength" })),
  rests: strengthRests,
};

function readStrength(at: string, given: unknown): Strength {
  const strength = checkedOrigin(at, given as Strength);
  positive(at, strength.value, 1e6, undefined, "/value");
  inRange(at, strength.logSd, 0, 10, undefined, "/logSd");
  if (strength.slope !== undefined) inRange(at, strength.slope, -10, 10, undefined, "/slope");
  const { basis } = strength;
  if (basis !== "unchanged" && !BASES.includes(basis))
    notOneOf(`${at}/basis`, ["unchanged", ...BASES], basis);
  const { cautions = [], lifeH, capacityCm2PerL } = strength;
  if (lifeH !== undefined) inRange(at, lifeH, 0, 1e6, "ageH", "/lifeH");
  if (capacityCm2PerL !== undefined) positive(at, capacityCm2PerL, 1e6, "cm2PerL", "/capacityCm2PerL");
  arrayOf(`${at}/cautions`, cautions, 0).forEach((one, i) => plainObject(`${at}/cautions/${i}`, one));
  return strength;
}

/** How ln(time) moves when the law that gave a strength is one of its standard deviations stronger. */
export function strengthSlope({
  value,
  logSd,
  slope = Math.sign(Math.log(value)) * logSd,
}: Strength): number {
  return slope;
}

/** The variance of a strength that its law does not explain. */
export function strengthBeside(strength: Strength): number {
  return Math.max(0, strength.logSd ** 2 - strengthSlope(strength) ** 2);
}

/** The effect of a strength. It is said against the known brew, so there is no other side. */
function strengthEffect(law: StrengthCorrection, _from: Strength, to: Strength): Effect {
  const { correction, sdCorrection = 1 } = law;
  const slope = strengthSlope(to);
  const log = Math.log(to.value);
  const shared = { slope, sd: sdCorrection, beside: Math.sqrt(strengthBeside(to)) };
  // Without a correction the factor is the strength itself, to the last bit.
  if (correction === 0) return { log, exact: to.value, ...shared };
  return { log: log + correction * slope, ...shared };
}

/** A strength that no run has corrected rests on what it says itself. */
function strengthRests(law: StrengthCorrection, to: Strength): Rests | undefined {
  if (to.value === 1 && to.logSd === 0) return { basis: "unchanged" };
  const { runs = 0 } = law;
  return runs > 0
    ? { basis: hardlyMoved(law) ? to.basis : "own-runs", sources: to.sources, runs }
    : { basis: to.basis, sources: to.sources, runs: to.runs };
}
