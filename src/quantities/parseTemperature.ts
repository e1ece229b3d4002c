import { inRange, wrongKind, unreadable } from "../core/guards.js";
import { fahrenheitToCelsius } from "./fahrenheitToCelsius.js";

const FORMS = 'a temperature such as "20 °C" or "68F", with its unit';

/**
 * Reads a temperature as people write it.
 *
 * @param text - a number and its unit: `"20 °C"`, `"20C"`, `"68F"`, `"68.5 °F"`, `"20 ℃"`
 * @returns the temperature in °C
 * @throws TypeError when `text` is not text
 * @throws RangeError when it is not a temperature, has no unit (`"68"` could be either), or lies below
 * absolute zero or above 10000
 *
 * @remarks Decimal fractions are exact to the double: `"68.36F"` is 20.2. C = (F − 32)/1.8, as in {@link
 * fahrenheitToCelsius}.
 *
 * @example
 * ```ts
 * parseTemperature("68F") // => 20
 * parseTemperature("20.5 °C") // => 20.5
 * ```
 */
export function parseTemperature(text: string): number {
  if (typeof text !== "string") wrongKind("parseTemperature/text", FORMS, text, { types: ["text"] });
  // A minus sign may be a true one; a degree and its scale one character, ℃ or ℉; and the ring another ring,
  // an ordinal o or a raised nought.
  const plain = text.trim().replace("\u2212", "-").replace("\u2103", "C").replace("\u2109", "F");
  const [, number, scale] =
    /^([-+]?\d+(?:\.\d+)?)\s*(?:[\u00b0\u00ba\u02da\u2070]|deg(?:rees?)?)?\s*(c(?:elsius)?|f(?:ahrenheit)?)$/i.exec(
      plain,
    ) ?? [];
  if (scale === undefined) unreadable("parseTemperature/text", "temperature", ["20 °C", "68F"], FORMS, text);
  const degrees = Number(number);
  if (/^c/i.test(scale)) return inRange("parseTemperature/text", degrees, -273.15, 1e4, "temperatureC");
  return fahrenheitToCelsius(inRange("parseTemperature/text", degrees, -459.67, 1e4, "temperatureF"));
}
