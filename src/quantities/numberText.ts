/*
 * Numbers in text, as people write them, and as they are written out.
 */
import { unreadable } from "../core/guards.js";

/**
 * Decimal commas as points: one or two figures after the comma, or any number after a 0. Three figures after
 * another number could be thousands.
 */
export function withPoint(text: string): string {
  return text.replace(/(?<![\d.,])(?:0,\d+|\d+,\d{1,2})(?![\d,])/g, (number) => number.replace(",", "."));
}

const PARTS: Readonly<Record<string, string>> = {
  "1/2": ".5",
  "1/3": ".33333333333333333333",
  "2/3": ".66666666666666666667",
  "1/4": ".25",
  "3/4": ".75",
  "\u00bd": ".5",
  "\u2153": ".33333333333333333333",
  "\u2154": ".66666666666666666667",
  "\u00bc": ".25",
  "\u00be": ".75",
};

const fraction = (slashed: string, signs: string): RegExp =>
  new RegExp(String.raw`(?:(?<![\d/.,])(\d+)\s+|(?<![\d/.,]))(${slashed})(?![\d/])|(\d*)\s*([${signs}])`);
const QUARTERS = /* @__PURE__ */ fraction("1/2|1/4|3/4", "\u00bc-\u00be");
const THIRDS = /* @__PURE__ */ fraction("1/3|2/3", "\u2153\u2154");

const withParts = (text: string, parts: RegExp): string =>
  text.replace(
    parts,
    (_, whole: string | undefined, slashed: string | undefined, before: string | undefined, sign: string) =>
      `${whole ?? (before || "0")}${PARTS[slashed ?? sign] as string}`,
  );

/** Halves and quarters as decimals: "8 1/2 min" and "8½ min" are "8.5 min", "1/2 h" is "0.5 h". */
export const withFraction = (text: string): string => withParts(text, QUARTERS);

/** Thirds as decimals, where cameras count in them; of an agitation "1/3 min" could be once in three. */
export const withThirds = (text: string): string => withParts(text, THIRDS);

/** The longest text that holds a figure; a long run of blanks would be searched in every way. */
export const LONGEST_TEXT = 1000;

const ROUGHLY_WORDS =
  "ca\\.?|circa|zirka|about|around|roughly|approx\\.?|approximately|etwa|rund|ungef\u00e4hr";
const ROUGHLY = new RegExp(String.raw`^\s*(?:[~\u2248]|(?:${ROUGHLY_WORDS})(?=[\s\d]))\s*`, "i");

/** Whether text says its figure roughly: "ca. 20 min", "~18 \u00b0C", "etwa 3 Tage". */
export const isRough = (text: string): boolean => ROUGHLY.test(text);

/** Text without the word before it that says its figure is a rough one. */
export const withoutRoughly = (text: string): string => text.replace(ROUGHLY, "");

/**
 * Text with a number in it, ready to be read: trimmed, without "about" or "ca.", its halves, quarters and
 * decimal commas as points.
 */
export function plainFigures(text: string): string {
  return text.length > LONGEST_TEXT ? "" : withPoint(withFraction(withoutRoughly(text).trim()));
}

const ONE = "(?:an?|one|ein(?:e[nmrs]?)?)";
const HALF = String.raw`(?:${ONE}\s+)?(?:half|halbe[nmrs]?)(?:\s+an?)?`;
/** Behind them a unit; a single letter would be none. */
const HALF_OF = new RegExp(String.raw`^${HALF}\s+(?=\p{L}{2})`, "iu");
const ONE_OF = new RegExp(String.raw`^${ONE}\s+(?=\p{L}{2})`, "iu");

/** An amount, ready to be read: one or a half may be words, "a week", "half an hour", "eine halbe Stunde". */
export function plainAmount(text: string): string {
  return plainFigures(text).replace(HALF_OF, "0.5 ").replace(ONE_OF, "1 ");
}

/**
 * What a number of up to three figures, a point or comma, three figures and a unit may mean: "1.500 ml" is
 * 1.5 ml or 1500 ml. A decimal that needs its three figures is written with a fourth. Behind a comma they are
 * asked about in every unit, `form`; behind a point only in those so small that a thousand of them are
 * common, `small`.
 */
export function groupReadings(
  plain: string,
  form: RegExp,
  small: RegExp,
): readonly [decimal: string, thousands: string] | undefined {
  const [, whole, mark, rest, unit] = /^([1-9]\d{0,2})([.,])(\d{3})(\s*[^\d\s].*)$/.exec(plain) ?? [];
  if (whole === undefined || rest === undefined || unit === undefined) return undefined;
  const decimal = (rest.endsWith("0") ? String(Number(`${whole}.${rest}`)) : `${whole}.${rest}0`) + unit;
  return (mark === "," ? form : small).test(decimal) ? [decimal, whole + rest + unit] : undefined;
}

/** A number above 0 or 0 without an exponent: 1e-7 is "0.0000001". */
export function plainNumber(value: number): string {
  const text = String(value);
  if (!text.includes("e-")) return text;
  const [mantissa, exponent] = text.split("e-") as [string, string];
  return `0.${"0".repeat(Number(exponent) - 1)}${mantissa.replace(".", "")}`;
}

/**
 * Text that is a bare number, or a word and one ("every 30"), with a unit after it; other text as it is. A
 * clock keeps to itself under a unit with as many parts ("mm:ss"), and with two parts under minutes or
 * seconds. Beside any other unit it says two things: it gets it too, and that cannot be read.
 */
export function withUnit(text: string, unit: string): string {
  const parts = /^\d+:\d+(?::\d+)?$/.test(text) ? text.split(":").length : 0;
  const clock = unit.includes(":") ? unit.split(":").length : /^[ms]/i.test(unit) ? 2 : 0;
  // A comma that is left before three figures may part thousands: which, its unit lets the reader ask.
  const bare = parts ? parts !== clock : /^(?:[a-z]+\s+)?[-+]?\.?\d+(?:\.\d+|,\d{3})?$/i.test(text);
  return bare && unit !== "" ? `${text} ${unit}` : text;
}

/** A number from text; throws when the text holds no number. `where` is what the error calls it. */
export function numberFromText(text: string, where: string): number {
  if (!/^[-+]?(?:\d+(?:\.\d+)?|\.\d+)$/.test(text))
    unreadable(`/${where}`, { format: "number", examples: ["0.6"] }, text);
  return Number(text);
}
