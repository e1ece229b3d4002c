import { inRange } from "../core/guards.js";
import { celsiusToFahrenheit } from "./celsiusToFahrenheit.js";
import { temperatureUnit, type TemperatureUnitOptions } from "./parseTemperature.js";
import { toStep } from "./toStep.js";

/**
 * Writes a temperature to a tenth of a degree.
 *
 * @param c - temperature in °C, from absolute zero (−273.15 °C) to 5500 °C
 * @param options - `unit`: `"C"` or `"F"`; °C when left out
 * @returns `"20 °C"`, `"13.9 °C"`, `"57 °F"`
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when the temperature is out of range or the unit none of the two
 *
 * @remarks Halves are rounded away from 0. A tenth of a degree is as well as a darkroom thermometer is read
 * (common practice). `parseTemperature` reads the text back.
 *
 * @example
 * ```ts
 * formatTemperature(13.89) // => "13.9 °C"
 * formatTemperature(20, { unit: "F" }) // => "68 °F"
 * ```
 */
export function formatTemperature(c: number, options: TemperatureUnitOptions = {}): string {
  const unit = temperatureUnit("formatTemperature/options", options) ?? "C";
  inRange("formatTemperature/c", c, -273.15, 5500, "temperatureC");
  const degrees = unit === "F" ? celsiusToFahrenheit(c) : c;
  const tenths = toStep(Math.abs(degrees), 0.1);
  return `${degrees < 0 && tenths > 0 ? "-" : ""}${tenths} °${unit}`;
}
