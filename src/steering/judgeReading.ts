import { gravestFirst, type Caution } from "../core/caution.js";
import { arrayOf, inRange, plainObject } from "../core/guards.js";
import { judgeLog } from "./judge.js";
import { unreadFields } from "../core/pointer.js";
import { inOrder, placedReading, unreadInReading } from "./readings.js";
import { airDoubts, SURROUNDINGS_FIELDS, surroundingsOf } from "./surroundings.js";
import type { SteeringReading, SteeringSurroundings } from "./types.js";

/** What {@link judgeReading} is told besides the readings. */
export interface JudgeReadingOptions extends SteeringSurroundings {
  /** what the bath was mixed to, °C, 0 to 100 */
  readonly temperatureC?: number | undefined;
}

/** What {@link judgeReading} answers. */
export interface JudgedReading {
  /** whether the reading would be believed as it was given */
  readonly trusted: boolean;
  /** what it would be in the other unit, °C, where that may have been meant */
  readonly celsius?: number;
  /** what is in doubt about it, and about the surroundings */
  readonly cautions: readonly Caution[];
}

/**
 * Judges one reading by those before it: for a form that asks back before the reading is taken.
 *
 * @param log - the readings so far, none to 100,000
 * @param reading - the new one
 * @param options - what is known of vessel, surroundings and thermometer, and what the bath was mixed to
 * @returns whether it would be believed, its other meaning, and cautions with paths from `/reading`, or
 * `/options`
 * @throws TypeError or RangeError as {@link steer} does
 *
 * @remarks By the rules of {@link steer}, which judges again when more readings have come: two that agree
 * outvote one that does not.
 *
 * @example
 * ```ts
 * const log = [{ timeS: 0, temperatureC: 14 }];
 * const { trusted, celsius } = judgeReading(log, { timeS: 60, temperatureC: 57 });
 * trusted // => false
 * celsius // => 13.9
 * ```
 */
export function judgeReading(
  log: readonly SteeringReading[],
  reading: SteeringReading,
  options: JudgeReadingOptions = {},
): JudgedReading {
  const before = arrayOf("judgeReading/log", log, 0).map((one, i) =>
    placedReading(`judgeReading/log/${i}`, one, i),
  );
  const index = before.length;
  const placed = placedReading("judgeReading/reading", reading, index);
  const { temperatureC, ambientC } = plainObject("judgeReading/options", options) as JudgeReadingOptions;
  const known = surroundingsOf("judgeReading/options", options);
  if (temperatureC !== undefined)
    inRange("judgeReading/options/temperatureC", temperatureC, 0, 100, "temperatureC");
  const ordered = inOrder([...before, placed], temperatureC);
  const { cautions } = judgeLog("/log", ordered, known, temperatureC);
  const from = `/log/${index}`;
  const own = cautions
    .filter(({ path }) => path === from || path?.startsWith(`${from}/`))
    .map((one) => ({ ...one, path: `/reading${(one.path as string).slice(from.length)}` }));
  const celsius = own.flatMap(({ data }) => (data && "celsius" in data ? [data.celsius] : []))[0];
  return {
    trusted: !own.some(({ path }) => path === "/reading/temperatureC"),
    ...(celsius === undefined ? undefined : { celsius }),
    cautions: gravestFirst([
      ...own,
      ...airDoubts(ambientC, "/options/ambientC"),
      ...unreadInReading("/reading", reading),
      ...unreadFields("/options", options, ["temperatureC", ...SURROUNDINGS_FIELDS]),
    ]),
  };
}
