import { wrongKind, wrongValue } from "../core/guards.js";
import { ROLL_CM2 } from "../handbook/roll.js";
import { withPoint } from "./numberText.js";

const ROLLS: Readonly<Record<string, number>> = {
  "135-36": ROLL_CM2,
  "135-24": (ROLL_CM2 * 24) / 36,
  "135-12": (ROLL_CM2 * 12) / 36,
  "120": ROLL_CM2,
  "220": 2 * ROLL_CM2,
};

const UNIT_CM: Readonly<Record<string, number>> = { in: 2.54, cm: 1, mm: 0.1 };

/**
 * The sensitive area of a film, plate or sheet, on one side.
 *
 * @param format - a roll (`"135-36"`, `"135-24"`, `"135-12"`, `"120"`, `"220"`) or a sheet or plate as
 * width × height with its unit: `"4x5in"`, `"9x12cm"`, `"6,5x9cm"`
 * @returns the area in cm²
 * @throws TypeError when `format` is not text
 * @throws RangeError when the text is anything else, or a side is 0 or above 200 cm
 *
 * @remarks A roll counts as 80 square inches, as capacities are printed: one 135-36, one 120, half a 220,
 * four 4x5 in sheets and one 8x10 in sheet (Brodie-Tyrrell, Fixer Capacity, analogue FAQ). Shorter 135 rolls
 * in proportion: common practice.
 *
 * @example
 * ```ts
 * filmAreaCm2("120") // => 516.128
 * filmAreaCm2("9x12cm") // => 108
 * ```
 */
export function filmAreaCm2(format: string): number {
  if (typeof format !== "string") wrongKind("filmAreaCm2/format", "text", format);
  const name = withPoint(format.trim().toLowerCase());
  if (Object.hasOwn(ROLLS, name)) return ROLLS[name] as number;
  const [, width, height, unit] =
    /^(\d+(?:\.\d+)?)\s*[x\u00d7]\s*(\d+(?:\.\d+)?)\s*(in|cm|mm)$/.exec(name) ?? [];
  if (unit === undefined)
    wrongValue(
      "filmAreaCm2/format",
      `one of ${Object.keys(ROLLS).sort().join(", ")} or a size such as "4x5in"`,
      format,
    );
  const toCm = UNIT_CM[unit] as number;
  const sides = [Number(width) * toCm, Number(height) * toCm];
  if (!sides.every((side) => side > 0 && side <= 200))
    wrongValue("filmAreaCm2/format", "a size with sides above 0 and at most 200 cm", format);
  return Number(((sides[0] as number) * (sides[1] as number)).toPrecision(12));
}
