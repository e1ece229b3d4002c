import { inRange, wrongKind, unreadable } from "../core/guards.js";
import { withPoint } from "../quantities/numberText.js";

const FORMS = 'an age such as "90 min", "2 h" or "3 days", with its unit';

const UNITS = ["w(?:eeks?)?", "d(?:ays?)?", "h(?:rs?|ours?)?", "min(?:s|utes?)?", "s(?:ecs?|econds?)?"];

/**
 * A number and its unit, with the blanks after it; blanks stand nowhere else, so that a long run of them is
 * read once.
 */
const part = (unit: string): string => String.raw`(?:(\d+(?:\.\d+)?)\s*${unit}\s*)?`;
const AGE = new RegExp(`^${UNITS.map(part).join("")}$`, "i");
const UNIT_S = [604800, 86400, 3600, 60, 1];

/**
 * Reads the age of a bath as people write it.
 *
 * @param text - weeks, days, hours, minutes and seconds, each with its unit: `"90 min"`, `"2 h"`, `"1,5 h"`,
 * `"3 days"`, `"1 d 6 h"`, `"2 weeks"`
 * @returns the age in h
 * @throws TypeError when `text` is not text
 * @throws RangeError when it is not an age, has no unit, or is above 1e6 h
 *
 * @remarks `"2:30"` and `"3 m"` are refused: of an age, the first could be minutes or hours, the second
 * minutes or months.
 *
 * @example
 * ```ts
 * parseAge("3 days") // => 72
 * parseAge("90 min") // => 1.5
 * ```
 */
export function parseAge(text: string): number {
  if (typeof text !== "string") wrongKind("parseAge/text", FORMS, text, { types: ["text"] });
  const parts: readonly (string | undefined)[] = AGE.exec(withPoint(text.trim()))?.slice(1) ?? [];
  if (parts.every((each) => each === undefined))
    unreadable("parseAge/text", "age", ["2 h", "3 days"], FORMS, text);
  const ageS = UNIT_S.reduce((sum, unitS, i) => sum + Number(parts[i] ?? 0) * unitS, 0);
  // Fifteen digits, as a time in text is read: 2.2 days are 52.8 h on paper. Of the seconds, so that 40 min
  // is exactly 2/3 h.
  return inRange("parseAge/text", Number(ageS.toPrecision(15)) / 3600, 0, 1e6, "ageH");
}
