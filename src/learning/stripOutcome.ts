import { REPEAT_LOG_SD } from "../core/estimate.js";
import { aboveZero, arrayOf, notOneOf, plainObject, positive } from "../core/guards.js";
import { EYE_LOG_SD } from "./readOutcome.js";
import type { RunOutcome } from "./types.js";

/** What {@link stripOutcome} reads of a test strip. */
export interface JudgedStrip {
  /** the times of the pieces, s, rising */
  readonly timesS: readonly number[];
  /** each time over the one before */
  readonly ratio: number;
}

/**
 * The outcome of the piece of a test strip that looked right, for the run that it makes.
 *
 * @param strip - what `testStripTimes` returned
 * @param timeS - the time of the piece that looked right, s: one of the strip's
 * @returns an outcome for a run of `timeS`: it was right, and how sure that is
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when the strip has no such piece, or a figure is out of range
 *
 * @remarks The right time lies anywhere within half a step of the piece, which is a standard deviation of
 * ln(ratio)/√12. The eye adds 7 % (judgement), and pouring, clock and thermometer 4 % (common practice). The
 * first or last piece may be the best of those there were, and the right time may lie a step beyond: it
 * counts with twice the half step.
 *
 * @example
 * ```ts
 * const strip = testStripTimes({ timeS: 1200, lowS: 810, highS: 1770 }, { stepS: 30 });
 * const outcome = stripOutcome(strip, 1470);
 * outcome.kind === "judged" && outcome.logSd // => 0.0984
 * ```
 */
export function stripOutcome(strip: JudgedStrip, timeS: number): RunOutcome {
  const at = "stripOutcome";
  const { timesS, ratio } = plainObject(`${at}/strip`, strip) as unknown as JudgedStrip;
  arrayOf(`${at}/strip/timesS`, timesS, 0);
  positive(`${at}/strip/ratio`, ratio, 100);
  aboveZero(`${at}/timeS`, timeS, 1e7, "timeS");
  const place = timesS.indexOf(timeS);
  if (place < 0) notOneOf(`${at}/timeS`, timesS, timeS);
  const step = Math.log(ratio) / Math.sqrt(12);
  const ends = place === 0 || place === timesS.length - 1 ? 2 : 1;
  const logSd = Math.hypot(ends * step, EYE_LOG_SD, REPEAT_LOG_SD);
  return { kind: "judged", timeRatio: 1, logSd: Number(logSd.toFixed(4)) };
}
