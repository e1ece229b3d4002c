import type { Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import { checkedStops } from "./law.js";
import { pushSentences } from "./text.js";

/**
 * What a push does not do.
 *
 * @param stops - how many stops are pushed, −3 to 5
 * @returns cautions; none for 0 stops and for a pull of up to two
 * @throws TypeError or RangeError when `stops` is of the wrong kind or out of range
 *
 * @remarks Longer development lifts the middle tones by 1 to 4 stops but the shadows by two thirds of a stop
 * at most, and true speed by one stop at most (abstract of a book chapter on modern films, Taylor and
 * Francis, e-book 9780080573304, ch. 17).
 *
 * @example
 * ```ts
 * pushCautions(2)[0].code // => "push-shadows"
 * ```
 */
export function pushCautions(stops: number): readonly Caution[] {
  const actual = checkedStops("pushCautions/stops", stops);
  const quantity = "stops";
  if (actual > 3) return [makeCaution(pushSentences, "push-far", "warn", { quantity, limit: 3, actual })];
  if (actual > 0) {
    const data = { shadowStops: 2 / 3 };
    return [makeCaution(pushSentences, "push-shadows", "note", { quantity, actual, data })];
  }
  if (actual < -2) return [makeCaution(pushSentences, "pull-far", "warn", { quantity, limit: -2, actual })];
  return [];
}
