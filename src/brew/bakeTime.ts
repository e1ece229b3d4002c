import type { Caution } from "../core/caution.js";
import { inRange, plainObject } from "../core/guards.js";
import { handbookBaking, type BakingLaw } from "../handbook/baking.js";
import type { TimeEstimate } from "../core/estimate.js";
import { GAS_CONSTANT_KJ, ZERO_CELSIUS_K } from "../temperature/law.js";
import { say } from "./text.js";

/** What {@link bakeTime} takes. */
export interface BakeTimeInput {
  /** temperature of the powder itself, 80 to 250 °C */
  readonly temperatureC: number;
  /** fraction to be converted, 0.01 to 0.999; 0.99 when left out */
  readonly converted?: number | undefined;
}

/**
 * An estimate of the baking time, with what to mind before the oven is lit. Its ends are no 90 % interval:
 * `lowS` and `highS` are the shortest and the longest of the published laws, and half and twice `timeS` at
 * least; `timeS` is their geometric mean.
 */
export interface BakeTime extends TimeEstimate {
  /** depth of powder that the laws were measured on, mm: thin, each grain at the oven's temperature */
  readonly depthMm: number;
  /** what is unwise about baking it so */
  readonly cautions: readonly Caution[];
}

/** Depth of the measured samples, mm: milligrams in a pan. */
const DEPTH_MM = 1;
/** Where the laws meet they are no surer: a factor of two each way is the least (assumed). */
const LEAST_SPREAD = 2;

function lawTime({ energyKJPerMol, perS, cube }: BakingLaw, temperatureC: number, converted: number): number {
  const rate = perS * Math.exp(-energyKJPerMol / (GAS_CONSTANT_KJ * (temperatureC + ZERO_CELSIUS_K)));
  return (cube ? 1 - Math.cbrt(1 - converted) : -Math.log1p(-converted)) / rate;
}

/**
 * An estimate of how long a thin layer of baking soda takes to turn into washing soda once it has the
 * temperature. The scale decides, not the clock.
 *
 * @param input - the powder's temperature, 80 to 250 °C, and the fraction wanted, 0.01 to 0.999
 * @returns seconds for a layer 1 mm deep that is hot already: the shortest and longest of the published laws
 * that reach there, a factor of two about their geometric mean at least; with cautions, among them that a
 * deep layer takes about an hour
 * @throws TypeError when a figure is not a number
 * @throws RangeError when it is out of range
 *
 * @remarks First order t = −ln(1 − x)/k, or a shrinking cube t = (1 − ∛(1 − x))/k, with k = A exp(−E/RT). The
 * laws were measured on thin powder between 87 and 227 °C: one from 87 to 177 °C, which is used throughout,
 * two below 117 °C, used to 142 °C, one above 167 °C, used from 142 °C. They meet near 143 °C by chance, so a
 * factor of two each way is the least (assumed), and lie up to 80 times apart, at 250 °C. Carbon dioxide
 * slows it and steam speeds it. A layer of 1 to 2 cm needs most of an hour at about 200 °C just to warm
 * through (common practice: one hour, stirred once), which is not in these figures. Sources: Wu and Shih
 * 1993, Ball et al. 1986.
 *
 * @example
 * ```ts
 * bakeTime({ temperatureC: 200 }).highS / 60 // => 4.5
 * ```
 */
export function bakeTime(input: BakeTimeInput): BakeTime {
  const given = plainObject("bakeTime/input", input);
  const temperatureC = inRange("bakeTime/temperatureC", given["temperatureC"], 80, 250, "temperatureC");
  const { converted: share = 0.99 } = given;
  const converted = inRange("bakeTime/converted", share, 0.01, 0.999);
  const times = handbookBaking
    .filter(({ fromC = 0, toC = 1000 }) => fromC <= temperatureC && temperatureC <= toC)
    .map((law) => lawTime(law, temperatureC, converted));
  const meanLog = times.reduce((sum, time) => sum + Math.log(time), 0) / times.length;
  const timeS = Math.exp(meanLog);
  return {
    timeS,
    lowS: Math.min(...times, timeS / LEAST_SPREAD),
    highS: Math.max(...times, timeS * LEAST_SPREAD),
    depthMm: DEPTH_MM,
    cautions: [say("baking-care", "warn"), say("baking-depth", "warn", { data: { depthMm: DEPTH_MM } })],
  };
}
