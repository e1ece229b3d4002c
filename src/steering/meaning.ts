import { inFahrenheit } from "../core/digits.js";
import { fahrenheitToCelsius } from "../quantities/fahrenheitToCelsius.js";
import { FAHRENHEIT_ABOVE_C } from "../temperature/temperatureCautions.js";
import type { DoubtCode } from "./text.js";

/** What a thermometer gives that failed: a sensor's start value, a broken line, nothing (common practice). */
const FAILURES: readonly number[] = [85, -127, 0];

/** Water in °F is always above this; a bath in °C is below, and so the two units are told apart exactly. */
export const UNITS_PART_C = 32;

/** A stated temperature this near speaks for the reading as it is, °C (assumed). */
const STATED_WITHIN_C = 5;

/** A reading, and what it can mean. */
export interface Meaning {
  /** the bath, °C, if the reading has a meaning at all */
  readonly celsius?: number;
  /** why the reading is in doubt; left out where it is not */
  readonly doubt?: DoubtCode;
}

/**
 * What a reading means by itself. A number from above 0 to 32 is a bath in °C. A greater one may be in °F,
 * and one of 0 or less a value in °C that was converted from °F once too often; each is then given its other
 * meaning.
 */
export function meaningOf(given: unknown, statedC: number | undefined): Meaning {
  if (typeof given !== "number" || !Number.isFinite(given)) return { doubt: "reading-missing" };
  const stated = statedC !== undefined && Math.abs(given - statedC) <= STATED_WITHIN_C;
  if ((given > 0 && given <= UNITS_PART_C) || (stated && given >= 0 && given <= 100))
    return { celsius: given };
  if (FAILURES.includes(given) || given > inFahrenheit(FAHRENHEIT_ABOVE_C))
    return { doubt: "reading-out-of-range" };
  const other = Number((given > 0 ? fahrenheitToCelsius(given) : inFahrenheit(given)).toFixed(10));
  if (!(other > 0)) return { doubt: "reading-out-of-range" };
  return { celsius: other, doubt: given > 0 ? "maybe-fahrenheit" : "maybe-celsius" };
}
