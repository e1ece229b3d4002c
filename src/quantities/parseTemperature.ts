import { ambiguous, inRange, notOneOf, plainObject, type TextForm, unreadable } from "../core/guards.js";
import { fahrenheitToCelsius } from "./fahrenheitToCelsius.js";
import { plainFigures } from "./numberText.js";

/** The unit that a temperature is read or written in. */
export interface TemperatureUnitOptions {
  /** `"C"` or `"F"` */
  readonly unit?: "C" | "F" | undefined;
}

const DEGREES: TextForm = { format: "temperature", examples: ["20 °C", "68F"] };

const RING = "(?:[\u00b0\u00ba\u02da\u2070]|deg(?:rees?)?|grad)?";
const SCALE = "(c(?:elsius)?|f(?:ahrenheit)?)?";
const TEMPERATURE = new RegExp(String.raw`^([-+]?\d+(?:\.\d+)?)\s*${RING}\s*${SCALE}$`, "i");

/** Throws when the options hold something else than a unit. */
export function temperatureUnit(at: string, options: unknown): "C" | "F" | undefined {
  const { unit } = plainObject(at, options);
  if (unit !== undefined && unit !== "C" && unit !== "F") notOneOf(`${at}/unit`, ["C", "F"], unit);
  return unit;
}

/** A temperature as it is written: its number, and its scale where there is one. */
interface TemperatureParts {
  readonly number: string;
  readonly degrees: number;
  readonly scale: "C" | "F" | undefined;
}

/** Number and scale of a text; undefined where it is no temperature. */
export function temperatureParts(text: string): TemperatureParts | undefined {
  // A minus sign may be a true one; a degree and its scale one character, ℃ or ℉; and the ring another
  // ring, an ordinal o or a raised nought.
  const plain = plainFigures(text.replace("\u2212", "-").replace("\u2103", "C").replace("\u2109", "F"));
  // Where degrees are Grad they are Celsius.
  const [, number, letter = /grad$/i.test(plain) ? "C" : ""] = TEMPERATURE.exec(plain) ?? [];
  if (number === undefined) return undefined;
  const scale = letter === "" ? undefined : /^c/i.test(letter) ? "C" : "F";
  return { number, degrees: Number(number), scale };
}

/**
 * Reads a temperature as people write it.
 *
 * @param text - a number and its unit: `"20 °C"`, `"20C"`, `"68F"`, `"68.5 °F"`, `"20 ℃"`, `"13,5 °C"`,
 * `"17 1/2 C"`; in German `"20 Grad"`, which are °C; "about", "ca." or "~" may stand before it
 * @param options - `unit`: the unit of a number without one; a unit in the text comes first
 * @returns the temperature in °C
 * @throws TypeError when `text` is not text or `options` not an object
 * @throws RangeError when it is not a temperature, has no unit where `options` names none (`"68"` could be
 * either: code `"ambiguous"`), or lies below absolute zero or above 10000
 *
 * @remarks Decimal fractions are exact to the double: `"68.36F"` is 20.2. C = (F − 32)/1.8, as in {@link
 * fahrenheitToCelsius}.
 *
 * @example
 * ```ts
 * parseTemperature("68F") // => 20
 * parseTemperature("20,5 °C") // => 20.5
 * parseTemperature("68", { unit: "F" }) // => 20
 * ```
 */
export function parseTemperature(text: string, options: TemperatureUnitOptions = {}): number {
  const at = "parseTemperature/text";
  if (typeof text !== "string") unreadable(at, DEGREES, text);
  const unit = temperatureUnit("parseTemperature/options", options);
  const parts = temperatureParts(text);
  if (parts === undefined) unreadable(at, DEGREES, text);
  const { number, degrees, scale = unit } = parts;
  if (scale === undefined) ambiguous(at, DEGREES, [`${number} °C`, `${number} °F`], text);
  if (scale === "C") return inRange(at, degrees, -273.15, 1e4, "temperatureC");
  return fahrenheitToCelsius(inRange(at, degrees, -459.67, 1e4, "temperatureF"));
}
