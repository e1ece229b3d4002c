import { inRange, plainObject, positive, wrongValue } from "../core/guards.js";
import type { TimeEstimate } from "../core/estimate.js";

/** How many times the ladder of {@link testStripTimes} has: a whole number from 2 to 25, 5 when left out. */
export interface TestStripOptions {
  readonly count?: number;
}

/**
 * The times for a test strip: a ladder around an estimate that covers its 90 % interval.
 *
 * @param estimate - `timeS`, `lowS` and `highS` in s, as `compensate` returns them
 * @param options - `count`: how many times
 * @returns times in s, rising by one and the same ratio from `lowS` to `highS`; with an odd count the middle
 * one is `timeS`
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when the times do not rise from `lowS` over `timeS` to `highS`, or lie less than a part
 * in 1e9 apart, or `count` is no whole number from 2 to 25
 *
 * @remarks time i = low × (high/low)^(i/(n − 1)): equal steps in ln(time), because development is
 * proportional and the interval is lognormal. Cut the strip after each time, or develop pieces that long; fix
 * and compare all of them together.
 *
 * @example
 * ```ts
 * testStripTimes({ timeS: 600, lowS: 300, highS: 1200 }, { count: 3 }) // => [300, 600, 1200]
 * ```
 */
export function testStripTimes(estimate: TimeEstimate, options: TestStripOptions = {}): readonly number[] {
  plainObject("testStripTimes/estimate", estimate);
  plainObject("testStripTimes/options", options);
  const lowS = positive("testStripTimes/estimate/lowS", estimate.lowS, 1e12, "timeS");
  const highS = positive("testStripTimes/estimate/highS", estimate.highS, 1e12, "timeS");
  const timeS = positive("testStripTimes/estimate/timeS", estimate.timeS, 1e12, "timeS");
  // Closer together, the times of a long ladder are one and the same number.
  if (!(highS / lowS > 1 + 1e-9))
    wrongValue(
      "testStripTimes/estimate/highS",
      `above lowS (${lowS} s): there is no interval to cover`,
      highS,
    );
  if (!(lowS < timeS && timeS < highS))
    wrongValue("testStripTimes/estimate/timeS", `between lowS (${lowS} s) and highS (${highS} s)`, timeS);
  const { count = 5 } = options;
  inRange("testStripTimes/options/count", count, 2, 25);
  if (!Number.isInteger(count)) wrongValue("testStripTimes/options/count", "a whole number", count);
  const last = count - 1;
  const middle = Math.sqrt(lowS) * Math.sqrt(highS);
  return Array.from({ length: count }, (_, i) => {
    if (i === last) return highS;
    // The estimate itself, not a rounding of it, wherever it is the geometric middle.
    if (2 * i === last && Math.abs(middle / timeS - 1) < 1e-9) return timeS;
    return i === 0 ? lowS : lowS * (highS / lowS) ** (i / last);
  });
}
