import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import type { Caution } from "../core/caution.js";
import { inRange, knownEntry, plainObject, positive } from "../core/guards.js";
import { ambientTemperature } from "../drift/ambient.js";
import { handbookVessels } from "../handbook/vessels.js";
import { fahrenheitToCelsius } from "../quantities/fahrenheitToCelsius.js";
import { FAHRENHEIT_ABOVE_C, fahrenheitCautions } from "../temperature/temperatureCautions.js";
import type { SteeringSurroundings } from "./types.js";

/** How well one reading is known, °C: a scale read to half a degree, 0.5/√12, rounded up (assumed). */
const READING_SD_C = 0.15;

/** What is known of vessel, air and thermometer, checked. */
export interface Surroundings {
  readonly ambientC: number | undefined;
  readonly vessel: { readonly timeConstantS: number; readonly logSd: number } | undefined;
  readonly readingSdC: number;
}

/** The fields of what is known of the surroundings. */
export const SURROUNDINGS_FIELDS: readonly string[] = ["ambientC", "vessel", "readingSdC"];

/** Asks whether the surroundings that were told are in °F; `path` is where they were. */
export const airDoubts = (ambientC: number | undefined, path: string): readonly Caution[] =>
  ambientC === undefined ? [] : fahrenheitCautions(ambientC, path);

/** A temperature that was told, °C; what is probably in °F serves in that unit. */
export const asMeant = (toldC: number | undefined): number | undefined =>
  toldC !== undefined && toldC > FAHRENHEIT_ABOVE_C ? fahrenheitToCelsius(toldC) : toldC;

/**
 * Checks what is known of the surroundings. What is probably in °F serves in that unit, as a reading does;
 * who asks has to tell the doubt.
 */
export function surroundingsOf(where: string, given: SteeringSurroundings): Surroundings {
  const { ambientC, vessel, readingSdC = READING_SD_C } = given;
  if (ambientC !== undefined) ambientTemperature(where, ambientC);
  inRange(where, readingSdC, 0.001, 5, "temperatureDifferenceC", "/readingSdC");
  return { ambientC: asMeant(ambientC), vessel: vesselOf(`${where}/vessel`, vessel), readingSdC };
}

function vesselOf(where: string, vessel: SteeringSurroundings["vessel"]): Surroundings["vessel"] {
  if (vessel === undefined) return undefined;
  if (typeof vessel === "string") return knownEntry(where, handbookVessels, vessel);
  const { timeConstantS, logSd } = plainObject(where, vessel);
  return {
    timeConstantS: positive(where, timeConstantS, LONGEST_CLOCK_S, "timeS", "/timeConstantS"),
    logSd: inRange(where, logSd, 0, 3, undefined, "/logSd"),
  };
}

/**
 * Air and water jackets that are not told: a small bath in a room of 5 to 35 °C, and a tempered jacket up to
 * 4 °C away (assumed).
 */
const AIR = { timeConstantS: 1000, coldestC: 5, warmestC: 35 };
const JACKET = { timeConstantS: 105, awayC: 4 };

/** How far the surroundings that were told may be off, °C (assumed). */
const AMBIENT_WITHIN_C = 2;

/**
 * How far a bath can drift from one reading to the next, °C: |T − surroundings|(1 − e^(−Δt/τ)), with the
 * fastest vessel and the farthest surroundings that what is known allows.
 *
 * @param asTold - whether surroundings that were told are taken at their word, as for a reading that was
 * converted from the other unit: it has to fit better than one that was given in °C
 */
export function farthestDrift(
  { ambientC, vessel }: Surroundings,
  fromC: number,
  overS: number,
  asTold = false,
): number {
  const toldC = ambientC === undefined ? undefined : Math.abs(fromC - ambientC);
  const awayC =
    toldC === undefined
      ? Math.max(fromC - AIR.coldestC, AIR.warmestC - fromC)
      : toldC + (asTold ? 0 : AMBIENT_WITHIN_C);
  const jacketC = asTold ? (toldC ?? JACKET.awayC) : JACKET.awayC;
  const gone = (timeConstantS: number): number => -Math.expm1(-overS / timeConstantS);
  return vessel === undefined
    ? Math.max(awayC * gone(AIR.timeConstantS), jacketC * gone(JACKET.timeConstantS))
    : awayC * gone(vessel.timeConstantS * Math.exp(-2 * vessel.logSd));
}

/**
 * How far a bath must have drifted at least, °C, where vessel and surroundings are both told: the slowest
 * vessel and the nearest surroundings. `undefined` where they are not: a still reading may be a tempered
 * bath.
 */
export function leastDrift(
  { ambientC, vessel }: Surroundings,
  fromC: number,
  overS: number,
): number | undefined {
  if (ambientC === undefined || vessel === undefined) return undefined;
  const awayC = Math.max(0, Math.abs(fromC - ambientC) - AMBIENT_WITHIN_C);
  return awayC * -Math.expm1(-overS / (vessel.timeConstantS * Math.exp(2 * vessel.logSd)));
}

/**
 * By how much two readings of one bath can differ, °C: four standard deviations, at least half a degree. With
 * three, one sound run in some 200 has a reading in doubt.
 */
export function readingReach({ readingSdC }: Surroundings): number {
  return Math.max(0.5, 4 * Math.SQRT2 * readingSdC);
}
