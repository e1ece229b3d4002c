import { factorOf, logSdOf } from "../core/cause.js";
import { inRange, plainObject } from "../core/guards.js";
import type { Caution } from "../core/caution.js";
import type { FactorRow } from "../core/term.js";
import { genericTemperatureLaw } from "../temperature/genericTemperatureLaw.js";
import { temperatureEffect } from "../temperature/cause.js";
import { brewMaterial, type BrewMaterial } from "./brewCapacity.js";
import { farCaution } from "./brewStrength.js";
import { say } from "./text.js";

/** A scrap of fogged film or paper in a bath, in the light. */
export interface ScrapSeen {
  /** seconds until it is as dark as it gets, 1 to 3600 */
  readonly darkensS: number;
  /** temperature of the bath, 0 to 50 °C; 20 when left out */
  readonly temperatureC?: number | undefined;
}

/** What {@link strengthFromScrap} takes. */
export interface ScrapInput extends ScrapSeen {
  /** the same scrap in the bath whose time is known; none when left out */
  readonly known?: ScrapSeen | undefined;
  /** what the scrap is cut from; `"film"` when left out, heeded without a known bath only */
  readonly material?: BrewMaterial | undefined;
}

/** A strength from a scrap: a term for `compensate`. */
export interface ScrapStrength extends FactorRow<"strength"> {
  /** how far the scrap is from a rule, and what is missing */
  readonly cautions: readonly Caution[];
}

/**
 * Seconds in which a working bath blackens a fogged scrap at 20 °C (from memory): a minute or two for film.
 */
const USUAL_S: Readonly<Record<BrewMaterial, number>> = { film: 90, plate: 90, paper: 45 };
/** Judging when it is black, by eye: ± 20 % (assumed), and the hand on the clock. */
const EYE_LOG_SD = 0.2;
const HAND_S = 2;
/** How far full blackening follows the time of development from one bath to another (assumed). */
const LIKENESS_LOG_SD = 0.25;
/** How unlike films, papers and lights are, without a known bath (assumed: a factor of 3 each way). */
const UNKNOWN_LOG_SD = 0.7;

/**
 * The strength of an unknown bath from a scrap of fogged film or paper: the one test of activity that costs
 * no negative.
 *
 * @param input - seconds until the scrap is black in today's bath, its temperature, and the same in the bath
 * whose time is known
 * @returns a factor of cause `"strength"`, as {@link brewStrength} gives: the time in today's bath over that
 * in the known one, or over that of an ordinary working bath
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range
 *
 * @remarks Common practice (from memory): a bit of film in room light, half dipped, blackens in a minute or
 * two in a bath that works, and paper in half of that. Factor = seconds/seconds of the known bath, both
 * brought to one temperature by the generic law, since warmth is the temperature term's business. The spread
 * holds eye and hand, ± 25 % for how far blackening follows development, and a factor of 3 without a known
 * bath (assumed). Use scraps of one material under one light. A bath that does not blacken a scrap in ten
 * minutes does not work.
 *
 * @example
 * ```ts
 * strengthFromScrap({ darkensS: 120, known: { darkensS: 80 } }).value // => 1.5
 * ```
 */
export function strengthFromScrap(input: ScrapInput): ScrapStrength {
  const where = "strengthFromScrap/input";
  const { known, material: given = "film" } = plainObject(where, input);
  const material = brewMaterial(`${where}/material`, given);
  const today = readScrap(where, input);
  const other =
    known === undefined
      ? { darkensS: USUAL_S[material], temperatureC: 20, logSd: UNKNOWN_LOG_SD }
      : readScrap(`${where}/known`, known);
  const warmth = temperatureEffect(genericTemperatureLaw, other.temperatureC, today.temperatureC);
  const value = today.darkensS / other.darkensS / factorOf(warmth);
  return {
    cause: "strength",
    value,
    logSd: Math.hypot(today.logSd, other.logSd, LIKENESS_LOG_SD, logSdOf(warmth)),
    basis: known === undefined ? "default" : "given",
    sources: ["scrap of fogged material, common practice (from memory)"],
    cautions: [
      ...(known === undefined ? [say("scrap-without-known", "warn")] : []),
      ...farCaution(Math.max(value, 1 / value)),
    ],
  };
}

function readScrap(at: string, value: unknown): { darkensS: number; temperatureC: number; logSd: number } {
  const { darkensS, temperatureC = 20 } = plainObject(at, value);
  const seconds = inRange(`${at}/darkensS`, darkensS, 1, 3600, "timeS");
  return {
    darkensS: seconds,
    temperatureC: inRange(`${at}/temperatureC`, temperatureC, 0, 50, "temperatureC"),
    logSd: Math.hypot(EYE_LOG_SD, HAND_S / seconds),
  };
}
