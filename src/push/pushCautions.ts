import type { Caution } from "../core/caution.js";
import { checkedStops } from "./law.js";

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
  if (actual > 3)
    return [
      {
        code: "push-far",
        severity: "warn",
        message: "Beyond three stops published times hardly exist, and the shadows stay empty.",
        limit: 3,
        actual,
      },
    ];
  if (actual > 0)
    return [
      {
        code: "push-shadows",
        severity: "note",
        message: "A push lifts the middle tones; shadows gain two thirds of a stop at most.",
        limit: 2 / 3,
        actual,
      },
    ];
  if (actual < -2)
    return [
      {
        code: "pull-far",
        severity: "warn",
        message: "A pull beyond two stops leaves a flat negative.",
        limit: -2,
        actual,
      },
    ];
  return [];
}
