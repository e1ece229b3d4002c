import { inRange, wrongKind, unreadable } from "../core/guards.js";
import { filmAreaCm2 } from "../quantities/filmAreaCm2.js";
import { withPoint } from "../quantities/numberText.js";

const FORMS = 'a use such as "516 cm2/l" or "2 rolls/l"';

/**
 * Reads how much a bath was used, as people write it.
 *
 * @param text - area developed in each litre, with its unit: `"516 cm2/l"`, `"516 cm²/l"`, `"2 rolls/l"`,
 * `"1,5 rolls/l"`
 * @returns the area in cm²/l
 * @throws TypeError when `text` is not text
 * @throws RangeError when it is not a use, has no unit, or is above 1e6 cm²/l
 *
 * @remarks A roll counts as 516.128 cm², as in {@link filmAreaCm2}.
 *
 * @example
 * ```ts
 * parseUse("2 rolls/l") // => 1032.256
 * ```
 */
export function parseUse(text: string): number {
  if (typeof text !== "string") wrongKind("parseUse/text", FORMS, text, { types: ["text"] });
  const [, amount, unit] =
    /^(\d+(?:\.\d+)?)\s*(cm[2\u00b2]|rolls?)\s*(?:\/|per)\s*l(?:it(?:er|re))?$/i.exec(
      withPoint(text.trim()),
    ) ?? [];
  if (unit === undefined) unreadable("parseUse/text", "use", ["516 cm2/l", "2 rolls/l"], FORMS, text);
  // To twelve figures: ten rolls stand at a capacity of ten rolls, and not a rounding past it.
  return inRange(
    "parseUse/text",
    Number((Number(amount) * (/^r/i.test(unit) ? filmAreaCm2("120") : 1)).toPrecision(12)),
    0,
    1e6,
    "cm2PerL",
  );
}
