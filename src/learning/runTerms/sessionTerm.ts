import { REPEAT_LOG_SD } from "../../core/estimate.js";
import { NO_ROW, rowOf, type Row } from "../../core/row.js";
import { dayOf } from "./driftTerm.js";
import type { RunMarks, RunTerm } from "./runTerm.js";

/** So many of the newest sessions have a number of their own (assumed): more cost time and say little. */
const MOST_SESSIONS = 24;

/**
 * Runs of one day share a bath, a mixing and a thermometer: what one session is off, 0 ± 4 %, as a known time
 * repeats (common practice). Twelve strips of one evening tell little more of tomorrow than four do.
 *
 * @remarks A session older than the newest 24 has no number, and neither has one of a single run. Its n runs
 * count with n times that variance each, which leaves the variance of one session in their mean.
 */
export const sessionTerm: RunTerm = {
  name: "session",
  asked: false,
  over(runs) {
    const counts = new Map<string, number>();
    for (const day of runs.flatMap(dayOf)) counts.set(day, (counts.get(day) ?? 0) + 1);
    const sessions = [...counts].filter(([, count]) => count > 1).map(([day]) => day);
    const newest = sessions.sort().slice(-MOST_SESSIONS);
    const rows = new Map(newest.map((day) => [day, rowOf(`session ${day}`, 1)]));
    return {
      unknowns: newest.map((day) => ({ parameter: `session ${day}`, sd: REPEAT_LOG_SD })),
      run(marks: RunMarks): Row {
        const [day] = dayOf(marks);
        if (day === undefined) return NO_ROW;
        return rows.get(day) ?? { slopes: [], beside: (counts.get(day) ?? 1) * REPEAT_LOG_SD ** 2 };
      },
      question: () => NO_ROW,
    };
  },
};
