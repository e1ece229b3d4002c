import { REPEAT_LOG_SD } from "../core/estimate.js";
import type { Row } from "../core/row.js";
import { EYE_LOG_SD, HALF_STEP } from "./readOutcome.js";
import type { Regression } from "./regression.js";
import { windowInformation } from "./windowInformation.js";

/** The time in question: its row, and the variance of its ln as it is now. */
export interface AskedTime {
  readonly row: Row;
  readonly variance: number;
}

/** A test that could be made. */
export interface PlannedTest {
  readonly row: Row;
  /** ln(right time/time to give), as it is expected */
  readonly off: number;
  /** how well the outcome will be read; an eye with half steps when left out */
  readonly outcomeLogSd?: number | undefined;
}

/**
 * The standard deviation of ln(time) in question that is expected once a test is made.
 *
 * @remarks In closed form: variance − covariance² · what the outcome tells. A value tells 1/(its variance);
 * an eye that names half steps tells less: see {@link windowInformation}. Noise is taken as it is known, so
 * that a first run whose noise is estimated leaves more.
 *
 * Source: D. V. Lindley, Ann. Math. Statist. 27, 1956, p. 986 (the worth of an experiment before it is made).
 */
export function expectedSpread(
  fit: Regression,
  question: AskedTime,
  { row, off, outcomeLogSd }: PlannedTest,
  noise: "estimated" | "stated" = "estimated",
): number {
  const own = fit.along(row).variance + row.beside;
  let told: number;
  if (outcomeLogSd === undefined) {
    told = windowInformation(off, HALF_STEP, own + (EYE_LOG_SD * fit.scatter) ** 2);
  } else {
    const sd = outcomeLogSd * fit.scatter;
    told = 1 / (own + (noise === "stated" ? sd : Math.max(REPEAT_LOG_SD, sd)) ** 2);
  }
  return Math.sqrt(Math.max(0, question.variance - fit.covariance(row, question.row) ** 2 * told));
}
