import { ambiguous, inRange, type TextForm, unreadable } from "../core/guards.js";
import { isFresh } from "../quantities/fresh.js";
import { groupReadings, plainAmount, withoutRoughly } from "../quantities/numberText.js";

const AGES: TextForm = { format: "age", examples: ["2 h", "3 days"] };

const UNITS = [
  "(?:months?|monat(?:en?)?)",
  "(?:w(?:eeks?)?|wochen?)",
  "(?:d(?:ays?)?|tag(?:en?)?)",
  "(?:h(?:rs?|ours?)?|std|stunden?)",
  "min(?:s|uten?|utes?)?",
  "s(?:ecs?|econds?|ekunden?)?",
];

/**
 * A number and its unit, with the blanks after it; blanks stand nowhere else, so that a long run of them is
 * read once.
 */
const part = (unit: string): string => String.raw`(?:(\d+(?:\.\d+)?)\s*${unit}\.?\s*)?`;
const AGE = new RegExp(`^${UNITS.map(part).join("")}$`, "i");
const ONE_AND_HALF = /^(?:(?:one|1)\s+and\s+a\s+half|anderthalb|eineinhalb)\s+/i;
/** "1 h 20": the last unit is understood; and minutes by their sign, "45\u2032". */
const CUT = /^(\d+\s*(?:h|hrs?|hours?|std|stunden?)\.?\s*[0-5]?\d)$|^(\d+(?:\.\d+)?)\s*['\u2032\u2019]$/i;
/** Units of which a thousand are but a day: a point before three figures may part thousands. */
const SMALL = new RegExp(String.raw`^\d+\.\d+\s*(?:${UNITS.slice(-2).join("|")})\.?$`, "i");
/** A month is a twelfth of 365.25 days. */
const UNIT_S = [2_629_800, 604800, 86400, 3600, 60, 1];

/**
 * Reads the age of a bath as people write it.
 *
 * @param text - months, weeks, days, hours, minutes and seconds, each with its unit: `"90 min"`, `"2 h"`,
 * `"1,5 h"`, `"3 days"`, `"1 d 6 h"`, `"a week"`, `"half an hour"`, `"1h20"`, `"45′"`, `"3 months"`, `"0"`,
 * `"fresh"`; in German `"3 Tage"`, `"2 Stunden"`, `"eine Woche"`, `"3 Monate"`, `"frisch"`; "about" or
 * "ca." may stand before it
 * @returns the age in h
 * @throws TypeError when `text` is not text
 * @throws RangeError when it is not an age, has no unit (`"3"` could be hours or days: code `"ambiguous"`),
 * may have thousands (`"1.440 min"`: the same code), or is above 1e6 h
 *
 * @remarks `"2:30"` and `"3 m"` are refused: of an age, the first could be minutes or hours (code
 * `"ambiguous"`), the second minutes or months. A month
 * counts as 30.4375 days, a twelfth of 365.25.
 *
 * @example
 * ```ts
 * parseAge("3 days") // => 72
 * parseAge("90 min") // => 1.5
 * ```
 */
export function parseAge(text: string): number {
  if (typeof text !== "string") unreadable("parseAge/text", AGES, text);
  if (isFresh(text)) return 0;
  const plain = plainAmount(withoutRoughly(text).trim().replace(ONE_AND_HALF, "1.5 ")).replace(
    CUT,
    (_, cut: string | undefined, minutes: string) => `${cut ?? minutes} min`,
  );
  const thousands = groupReadings(plain, AGE, SMALL);
  if (thousands) ambiguous("parseAge/text", AGES, thousands, text);
  const parts: readonly (string | undefined)[] = AGE.exec(plain)?.slice(1) ?? [];
  if (parts.every((each) => each === undefined)) {
    if (Number(plain || NaN) === 0) return 0;
    const readings = readingsOf(plain);
    if (readings === undefined) unreadable("parseAge/text", AGES, text);
    ambiguous("parseAge/text", AGES, readings, text);
  }
  const ageS = UNIT_S.reduce((sum, unitS, i) => sum + Number(parts[i] ?? 0) * unitS, 0);
  // Fifteen digits, as a time in text is read: 2.2 days are 52.8 h on paper. Of the seconds, so that 40 min
  // is exactly 2/3 h.
  return inRange("parseAge/text", Number(ageS.toPrecision(15)) / 3600, 0, 1e6, "ageH");
}

/** What an age without a unit may mean. */
function readingsOf(plain: string): readonly string[] | undefined {
  if (/^\d+(?:\.\d+)?$/.test(plain)) return [`${plain} h`, `${plain} days`];
  const [, first, second] = /^(\d+):(\d{2})$/.exec(plain) ?? [];
  return first && second ? [`${first} h ${second} min`, `${first} min ${second} s`] : undefined;
}
