import { ownEntry } from "../core/ownEntry.js";
import { ambiguous, refuse, type TextForm, unreadable } from "../core/guards.js";
import { ROLL_CM2 } from "../handbook/roll.js";
import { withPoint } from "./numberText.js";
import { sidesText } from "./text.js";

/** The size of a film, plate or sheet as it was read. */
export interface FilmFormat {
  /** the sensitive area on one side, cm² */
  readonly areaCm2: number;
  /** the size with its unit, `"9x12 cm"`, or the roll */
  readonly name: string;
  /** the text had no unit: the size has the one that the trade means by it */
  readonly unitTaken: boolean;
}

type Unit = "cm" | "in" | "mm";

const FORMATS: TextForm = { format: "film format", examples: ["120", "135-36", "4x5in"] };

const ROLLS: Readonly<Record<string, number>> = {
  "135-36": ROLL_CM2,
  "135-24": (ROLL_CM2 * 24) / 36,
  "135-12": (ROLL_CM2 * 12) / 36,
  "120": ROLL_CM2,
  "220": 2 * ROLL_CM2,
};

const UNIT_CM: Readonly<Record<Unit, number>> = { cm: 1, in: 2.54, mm: 0.1 };

/** The sizes that the trade names without a unit, the shorter side first (common practice). */
const TRADE: Readonly<Record<string, string>> = {
  cm: "9x12 10x15 13x18 18x24 24x30",
  in: "4x5 5x7 8x10 11x14",
};

/** The sizes and rolls that the trade names, as they are written: a roll of either kind is the same area. */
export const tradeFormats: readonly string[] = [
  ...["120", "220"],
  ...Object.entries(TRADE).flatMap(([unit, sizes]) => sizes.split(" ").map((size) => `${size} ${unit}`)),
];

/** A size without a unit is asked about in those units in which it could be one of a plate or sheet, cm. */
const [SHORTEST, LONGEST] = [2, 60];
const SIDES = String.raw`\d+(?:\.\d+)?\s*[x\u00d7]\s*\d+(?:\.\d+)?`;
const SIZE = /^(\d+(?:\.\d+)?)\s*[x\u00d7]\s*(\d+(?:\.\d+)?)\s*(in|cm|mm|)$/;

/** A size in a longer text, as a pattern. */
export const SIZE_IN_TEXT: string = String.raw`${SIDES}(?:\s*(?:in|cm|mm))?`;

/** What an error asks for where a size is but a part of a text. */
interface SizeAround {
  /** the whole text */
  readonly whole: string;
  /** what it should be */
  readonly form: TextForm;
  /** the whole text with another size in it */
  readonly with: (size: string) => string;
}

/**
 * Reads the size of a film, plate or sheet as people write it.
 *
 * @param text - a roll (`"135-36"`, `"135-24"`, `"135-12"`, `"120"`, `"220"`) or a sheet or plate as
 * width × height: `"4x5in"`, `"9x12 cm"`, `"6,5x9cm"`; without a unit one of the trade's sizes, `"9x12"`
 * @returns the area, the size with its unit, and whether the unit was taken for granted
 * @throws TypeError when `text` is not text
 * @throws RangeError when the text is anything else, or a side is 0 or above 200 cm; code `"ambiguous"`, with
 * the readings, for another size without a unit
 *
 * @remarks Without a unit 9x12, 10x15, 13x18, 18x24 and 24x30 are in cm, 4x5, 5x7, 8x10 and 11x14 in inches
 * (common practice). A roll counts as in {@link filmAreaCm2}.
 *
 * @example
 * ```ts
 * parseFilmFormat("9x12") // => { areaCm2: 108, name: "9x12 cm", unitTaken: true }
 * parseFilmFormat("5x4").name // => "5x4 in"
 * ```
 */
export function parseFilmFormat(text: string): FilmFormat {
  return readFilmFormat("parseFilmFormat/text", text);
}

/** The same with the place of the text, and with the text around it where it is but a part. */
export function readFilmFormat(at: string, text: unknown, around?: SizeAround): FilmFormat {
  if (typeof text !== "string") unreadable(at, FORMATS, text);
  const name = withPoint(text.trim().toLowerCase());
  const roll = ownEntry(ROLLS, name);
  if (roll !== undefined) return { areaCm2: roll, name, unitTaken: false };
  const [, width = "", height = "", written] = SIZE.exec(name) ?? [];
  if (written === undefined) unreadable(at, FORMATS, text);
  const given = [Number(width), Number(height)] as const;
  const all = around ?? { whole: text, form: FORMATS, with: (size: string) => size };
  const unit = written === "" ? tradeUnit(at, all, given) : (written as Unit);
  const sides = given.map((side) => side * UNIT_CM[unit]) as [number, number];
  if (!sides.every((side) => side > 0 && side <= 200))
    refuse(at, "sides-at-most", sidesText, { max: 200 }, all.whole);
  return {
    areaCm2: Number((sides[0] * sides[1]).toPrecision(12)),
    name: `${given.join("x")} ${unit}`,
    unitTaken: written === "",
  };
}

/** The unit that the trade means by a size; another size is asked about. */
function tradeUnit(at: string, around: SizeAround, given: readonly [number, number]): Unit {
  const [width, height] = given;
  const size = `${Math.min(width, height)}x${Math.max(width, height)}`;
  const units = Object.keys(UNIT_CM) as Unit[];
  const unit = units.find((one) => TRADE[one]?.split(" ").includes(size));
  if (unit !== undefined) return unit;
  const readings = units
    .filter((one) => given.every((side) => side * UNIT_CM[one] >= SHORTEST && side * UNIT_CM[one] <= LONGEST))
    .map((one) => around.with(`${given.join("x")} ${one}`));
  if (readings.length === 0) unreadable(at, around.form, around.whole);
  return ambiguous(at, around.form, readings, around.whole);
}
