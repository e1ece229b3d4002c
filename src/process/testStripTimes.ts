import { inRange, wrongKind } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { checkedEstimate, type TimeEstimate } from "../core/estimate.js";
import { roundTime } from "../quantities/roundTime.js";

/** How the ladder of {@link testStripTimes} is made. */
export interface TestStripOptions {
  /** at most so many times: a whole number from 2 to 25, 5 when left out */
  readonly count?: number | undefined;
  /** the least ratio of two neighbours that the eye tells apart, 1.01 to 2; 1.15 when left out */
  readonly leastRatio?: number | undefined;
  /** step to round the times to, s, 0.1 to 3600; unrounded when left out */
  readonly stepS?: number | undefined;
}

/**
 * Why a strip has the times that it has: `"interval"`, as many as asked over the whole interval; `"eye"`,
 * fewer, because more could not be told apart; `"too-narrow"`, none, because even the ends of the interval
 * look alike.
 */
export type TestStripReason = "interval" | "eye" | "too-narrow";

/** A test strip. */
export interface TestStrip {
  /** s, rising from `lowS` to `highS`; empty where a strip tells nothing */
  readonly timesS: readonly number[];
  /** each time over the one before, before rounding; of the whole interval where there is no strip */
  readonly ratio: number;
  /** why there is no strip */
  readonly reason: TestStripReason;
}

/** Two neighbours that differ by less are not told apart: two judgements of 7 % each, rounded up. */
const LEAST_RATIO = 1.15;

/**
 * The times for a test strip: a ladder around an estimate that covers its 90 % interval.
 *
 * @param estimate - `timeS`, `lowS` and `highS` in s, as `compensate` returns them
 * @param options - how many times at most, the least ratio of two neighbours, the step to round to
 * @returns times in s, rising by one and the same ratio from `lowS` to `highS`; with an odd number of times
 * the middle one is `timeS`; the ratio, and the reason for the number of times
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when the times do not rise from `lowS` over `timeS` to `highS`, or an option is out of
 * range
 *
 * @remarks time i = low × (high/low)^(i/(n − 1)): equal steps in ln(time), because development is
 * proportional and the interval is lognormal. An eye judges a negative to about 7 % of the time, so two
 * pieces have to differ by some 10 to 15 % (judgement). Where the whole interval is narrower than that, the
 * strip would tell nothing, and the answer has no times. Cut the strip after each time, or develop pieces
 * that long; fix and compare all of them together.
 *
 * @example
 * ```ts
 * testStripTimes({ timeS: 600, lowS: 300, highS: 1200 }, { count: 3 }).timesS // => [300, 600, 1200]
 * testStripTimes({ timeS: 600, lowS: 580, highS: 621 }).reason // => "too-narrow"
 * ```
 */
export function testStripTimes(estimate: TimeEstimate, options: TestStripOptions = {}): TestStrip {
  const { timeS, lowS, highS } = checkedEstimate("testStripTimes/estimate", estimate, 1e12);
  const at = "testStripTimes/options";
  onlyFields(at, options, ["count", "leastRatio", "stepS"]);
  const { count = 5, leastRatio = LEAST_RATIO, stepS } = options;
  inRange(`${at}/count`, count, 2, 25, "count");
  if (!Number.isInteger(count)) wrongKind(`${at}/count`, ["whole number"], count);
  inRange(`${at}/leastRatio`, leastRatio, 1.01, 2, "ratio");
  if (stepS !== undefined) inRange(`${at}/stepS`, stepS, 0.1, 3600, "timeS");
  const whole = highS / lowS;
  const enough = (n: number): boolean => whole ** (1 / (n - 1)) >= leastRatio * (1 - 1e-9);
  for (let n = count; n >= 2; n--) {
    if (!enough(n)) continue;
    const timesS = rounded(ladder(timeS, lowS, highS, n), stepS);
    if (!timesS.every((one, i) => i === 0 || one > (timesS[i - 1] as number))) continue;
    return { timesS, ratio: whole ** (1 / (n - 1)), reason: n === count ? "interval" : "eye" };
  }
  return { timesS: [], ratio: whole, reason: "too-narrow" };
}

/** Beyond 1e7 s there is nothing to round. */
const rounded = (timesS: readonly number[], stepS: number | undefined): readonly number[] =>
  stepS === undefined
    ? timesS
    : timesS.map((one) => (one > 1e7 ? one : Math.max(stepS, roundTime(one, stepS))));

function ladder(timeS: number, lowS: number, highS: number, count: number): readonly number[] {
  const last = count - 1;
  const middle = Math.sqrt(lowS) * Math.sqrt(highS);
  return Array.from({ length: count }, (_, i) => {
    if (i === last) return highS;
    // The estimate itself, not a rounding of it, wherever it is the geometric middle.
    if (2 * i === last && Math.abs(middle / timeS - 1) < 1e-9) return timeS;
    return i === 0 ? lowS : lowS * (highS / lowS) ** (i / last);
  });
}
