import { joinRows, NO_ROW, rowOf, type Row } from "../../core/row.js";
import { walkOver } from "../../core/walk.js";
import type { RunMarks, RunTerm } from "./runTerm.js";

/** The base time wanders by 1.2 % from one date to the next (an assumption of this package). */
const DRIFT_LOG_SD = 0.012;

/** And it may creep one way, by 0 ± 0.5 % a date at first guess; how far, is learned too. */
const TREND_LOG_SD = 0.005;

/** The name of the trend's number: ln(time) a date, rising toward the present. */
export const TREND = "trend";

/**
 * Drift of the base time over the dates of a notebook: a random walk and one trend. Both are 0 at the newest
 * date, so that the base time is the present one.
 *
 * @remarks A date's age is the number of dates after it. The walk's knots are at the ages 0, 1, 2, 4, 8 … and
 * the oldest: eleven numbers for a thousand dates. A run without a date, in a notebook that has some, is
 * taken in the middle. Printed rows have no date of their own. Where nothing or one day is dated there is no
 * drift.
 */
export const driftTerm: RunTerm = {
  name: "drift",
  asked: false,
  over(runs) {
    const dates = [...new Set(runs.flatMap(dayOf))].sort().reverse();
    const ages = new Map(dates.map((date, age) => [date, age]));
    const oldest = dates.length - 1;
    if (oldest < 1) return { unknowns: [], run: () => NO_ROW, question: () => NO_ROW };
    const walk = walkOver("drift to age", knotsTo(oldest), DRIFT_LOG_SD);
    const rowAt = (age: number): Row => joinRows([{ ...walk.row(0, age), beside: 0 }, steadyRow(age)]);
    const rows = dates.map((_, age) => rowAt(age));
    const middle = rowAt(oldest / 2);
    return {
      unknowns: [...walk.unknowns, { parameter: TREND, sd: TREND_LOG_SD, tail: "student" }],
      run(marks) {
        const [day] = dayOf(marks);
        if (day !== undefined) return rows[ages.get(day) ?? 0] as Row;
        return marks.printed === true ? NO_ROW : middle;
      },
      question: () => NO_ROW,
      span: rows[oldest] as Row,
      steady: steadyRow(oldest),
    };
  },
};

/** What the trend adds from a date of this age to the present. */
const steadyRow = (age: number): Row => rowOf(TREND, -age);

/** The day of a dated run; none for a printed row. */
export function dayOf({ date, printed }: RunMarks): readonly string[] {
  return date === undefined || printed === true ? [] : [date.slice(0, 10)];
}

/** Ages 0, 1, 2, 4, 8 … and the oldest. */
function knotsTo(oldest: number): readonly number[] {
  const knots = [0];
  for (let age = 1; age < oldest; age *= 2) knots.push(age);
  return [...knots, oldest];
}
