import { ambiguous, positive, type TextForm, unreadable } from "../core/guards.js";
import { groupReadings, plainAmount } from "./numberText.js";

const VOLUMES: TextForm = { format: "volume", examples: ["500 ml", "0.5 l"] };
const UNIT_ML: Readonly<Record<string, number>> = { "m": 1, "c": 10, "d": 100, "": 1000 };

const NUMBER = String.raw`(\d+(?:\.\d+)?)`;
const LITRES = "(m|milli|c|centi|d|deci|)(?:l|lit(?:er|re)s?)";
const CUBIC = "(cc|ccm|cm[3\u00b3])";
const OTHERS = String.raw`(?:fl(?:uid|\.)?\s*)?(oz|ounces?|pints?|pt|quarts?|qt|gallons?|gal)\.?`;
/** Units so small that a point before three figures may part thousands. */
const SMALL = new RegExp(String.raw`^${NUMBER}\s*(?:m(?:illi)?l(?:it(?:er|re)s?)?|${CUBIC})$`);
const VOLUME = new RegExp(String.raw`^${NUMBER}\s*(?:${LITRES}|${CUBIC}|${OTHERS})$`);

/** Ounces, pints, quarts and gallons: ml in the United States and in Britain. */
const TWO_KINDS: Readonly<Record<string, readonly [american: number, imperial: number]>> = {
  o: [29.5735, 28.4131],
  p: [473.176, 568.261],
  q: [946.353, 1136.52],
  g: [3785.41, 4546.09],
};

/**
 * Reads a volume as people write it.
 *
 * @param text - a number and its unit: `"500 ml"`, `"0,5 l"`, `"1.5 litres"`, `"60 cl"`, `"600 cc"`,
 * `"1/2 l"`, `"half a litre"`; in German `"ein halber Liter"`
 * @returns the volume in ml
 * @throws TypeError when `text` is not text
 * @throws RangeError when it is not a volume, has no unit, or is not above 0 and at most 1e6 ml. Ounces,
 * pints, quarts and gallons are of two sizes, and `"1.500 ml"` is 1.5 ml or 1500 ml: code `"ambiguous"`, with
 * both readings
 *
 * @remarks 1 l = 1000 ml = 1000 cm³. United States and imperial measures: NIST Special Publication 811,
 * Gaithersburg, 2008, appendix B.8.
 *
 * @example
 * ```ts
 * parseVolume("0,5 l") // => 500
 * parseVolume("600 cc") // => 600
 * ```
 */
export function parseVolume(text: string): number {
  const at = "parseVolume/text";
  if (typeof text !== "string") unreadable(at, VOLUMES, text);
  const plain = plainAmount(text.toLowerCase());
  const [, number, metric, cubic, other] = VOLUME.exec(plain) ?? [];
  const thousands = groupReadings(plain, VOLUME, SMALL);
  if (thousands) ambiguous(at, VOLUMES, thousands, text);
  if (number === undefined) {
    if (!/^\d+(?:\.\d+)?$/.test(plain)) unreadable(at, VOLUMES, text);
    ambiguous(at, VOLUMES, [`${plain} ml`, `${plain} l`], text);
  }
  if (other !== undefined) {
    const readings = (TWO_KINDS[other.charAt(0)] as readonly number[]).map(
      (ml) => `${Number((Number(number) * ml).toPrecision(4))} ml`,
    );
    ambiguous(at, VOLUMES, readings, text);
  }
  const unitMl = cubic === undefined ? (UNIT_ML[(metric as string).charAt(0)] as number) : 1;
  return positive(at, Number((Number(number) * unitMl).toPrecision(15)), 1e6, "volumeMl");
}
