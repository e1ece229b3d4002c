import type { Line, NumberOfLaw, NumberRange } from "../core/line.js";
import { slowingRootH, type AgeLaw } from "./ageFactor.js";
import { ageLogSd } from "./ageLogSd.js";

/**
 * ln of the factor of a checked age law, and its slope in the rate: 1/h, or for a slowing one by the root of
 * an hour. A life has no number, and no loss within it.
 */
export function ageLine(law: AgeLaw, ageH: number): Line {
  if (law.kind === "life") return [0, 0];
  if (law.kind === "slowing") return [law.perRootH * slowingRootH(ageH), slowingRootH(ageH)];
  return [(Math.LN2 * ageH) / law.halfLifeH, ageH];
}

/** The rate, 1/h, of the longest half-life that an age law takes, 1e6 h. */
const LEAST_RATE = Math.LN2 / 1e6;

/**
 * The rate of an age law. Its standard deviation is that of the first hour, over which the rate acts once.
 */
export function ageNumber(law: AgeLaw): NumberOfLaw {
  if (law.kind === "life") return [0, 0];
  // As a law that was taught: an untaught one has at every age the spread of no law.
  return [
    law.kind === "slowing" ? law.perRootH : Math.LN2 / law.halfLifeH,
    ageLogSd({ ...law, runs: 1 }, 0, 1),
  ];
}

/**
 * The range in which a rate with this spread can be an age law. The least rate of a half-life is just above a
 * third of its spread: there the half-life is known to a factor of e³, the widest that an age law takes.
 */
export function ageRange(law: AgeLaw, sd: number): NumberRange {
  if (law.kind !== "half-life") return [-1, 1];
  return [Math.max(LEAST_RATE, (sd / 3) * (1 - 1e-9)), Math.max(1e3, ageNumber(law)[0])];
}

/** An age law of the same kind with another rate. A life stays what it was. */
export function withAgeNumber(law: AgeLaw, [value, sd]: NumberOfLaw): AgeLaw {
  if (law.kind === "life") return law;
  if (law.kind === "slowing") return { ...law, perRootH: value, sdPerRootH: sd };
  // To a rate and back, a half-life at the end of its range must not round out of it.
  return {
    ...law,
    halfLifeH: Math.min(1e6, Math.max(1e-30, Math.LN2 / value)),
    sdLog: Math.min(3, sd / value),
  };
}
