import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import { inRange, plainObject, positive } from "../core/guards.js";
import { ambientTemperature } from "./ambient.js";
import type { TemperatureForecast } from "./log.js";

/** A bath that drifts toward the air's temperature. */
export interface NewtonDrift {
  /** at clock time 0, °C, 0 to 100 */
  readonly startC: number;
  /** of the air, or of the water jacket, °C, −50 to 100 */
  readonly ambientC: number;
  /** after this time 63 % of the difference is gone, s, above 0 to 1e7 */
  readonly timeConstantS: number;
}

/** Returns a drift when its three figures are in range; throws otherwise. */
export function checkedDrift(where: string, drift: unknown): NewtonDrift {
  const { startC, ambientC, timeConstantS } = plainObject(where, drift);
  return {
    startC: inRange(where, startC, 0, 100, "temperatureC", "/startC"),
    ambientC: ambientTemperature(where, ambientC),
    timeConstantS: positive(where, timeConstantS, LONGEST_CLOCK_S, "timeS", "/timeConstantS"),
  };
}

/** The temperature of a checked drift, °C, at a clock time in s. */
export function driftTemperature({
  startC,
  ambientC,
  timeConstantS,
}: NewtonDrift): (timeS: number) => number {
  // expm1 keeps the start exact, and the first seconds to the last figure.
  return (timeS) => startC + (startC - ambientC) * Math.expm1(-timeS / timeConstantS);
}

/**
 * The temperature of a bath that drifts toward its surroundings, by Newton's law of cooling.
 *
 * @param drift - temperature at clock time 0 and of the surroundings in °C, time constant in s
 * @returns a function from clock time in s (0 to 1e7) to °C
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range; so does the function returned
 *
 * @remarks For charts: functions of this package take the drift itself, as data. T = ambient + (start −
 * ambient) e^(−t/τ). Good for still air and small differences; evaporation from a tray makes τ shorter, and a
 * hand on the tank adds heat that this law does not know of. I. Newton, Scala graduum caloris, Philosophical
 * Transactions 22, 1701, p. 824.
 *
 * @example
 * ```ts
 * newtonDrift({ startC: 24, ambientC: 14, timeConstantS: 3600 })(600) // => 22.46
 * ```
 */
export function newtonDrift(drift: NewtonDrift): TemperatureForecast {
  const temperatureAt = driftTemperature(checkedDrift("newtonDrift/drift", drift));
  return (timeS) => temperatureAt(inRange("newtonDrift/timeS", timeS, 0, LONGEST_CLOCK_S, "timeS"));
}
