/*
 * Module: brew. A first time for a brew that nobody has timed, as wide as it is unknown.
 */
import { factorOf, logSdOf } from "../core/cause.js";
import { timeEstimate, type TimeEstimate } from "../core/estimate.js";
import type { Basis } from "../core/term.js";
import { genericTemperatureLaw } from "../temperature/genericTemperatureLaw.js";
import { temperatureEffect } from "../temperature/cause.js";
import type { DeveloperBrew } from "./brew.js";
import type { BrewMaterial } from "./brewCapacity.js";
import { brewStrength } from "./brewStrength.js";

/** The starting time of a proposal: a wide estimate, and what it rests on. */
export interface StartingTime extends TimeEstimate {
  /** standard deviation of ln(time) */
  readonly logSd: number;
  /** what it rests on */
  readonly basis: Basis;
  /** where its figures come from */
  readonly sources: readonly string[];
}

/**
 * The brew that the times below belong to, at 20 °C: coffee 40, soda 54, vitamin C 16 g/l (common practice).
 */
const FULL_BREW: DeveloperBrew = {
  volumeMl: 1000,
  temperatureC: 20,
  ingredients: [
    { ingredient: "soda-anhydrous", massG: 54 },
    { ingredient: "instant-coffee", massG: 40 },
    { ingredient: "ascorbic-acid", massG: 16 },
  ],
};

/** Film: common practice; paper: from memory; plate: assumed. */
const TIMES: Readonly<Record<BrewMaterial, { timeS: number; logSd: number; source: string }>> = {
  film: { timeS: 900, logSd: 0.35, source: "common practice: about 15 min for film at 20 °C" },
  plate: { timeS: 630, logSd: 0.6, source: "assumed: about 10 min for a plate at 20 °C" },
  paper: { timeS: 240, logSd: 0.5, source: "from memory: about 4 min for paper at 20 °C" },
};

/** The starting time of a brew at its temperature. */
export function startingTime(brew: DeveloperBrew, material: BrewMaterial): StartingTime {
  const { timeS, logSd, source } = TIMES[material];
  const { temperatureC = 20 } = brew;
  const strength = brewStrength(FULL_BREW, brew, undefined, { sameJar: false });
  const warmth = temperatureEffect(genericTemperatureLaw, 20, temperatureC);
  const spread = Math.hypot(logSd, strength.logSd, logSdOf(warmth));
  const median = timeS * strength.value * factorOf(warmth);
  return { ...timeEstimate(median, spread), logSd: spread, basis: "default", sources: [source] };
}
