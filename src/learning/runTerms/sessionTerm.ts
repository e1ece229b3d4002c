import { REPEAT_LOG_SD } from "../../core/estimate.js";
import { NO_ROW, rowOf, type Row } from "../../core/row.js";
import { dayOf } from "./driftTerm.js";
import type { RunMarks, RunTerm } from "./runTerm.js";

/** So many of the newest sessions have a number of their own (assumed): more cost time and say little. */
const MOST_SESSIONS = 24;

/**
 * Runs of one day share a bath, a mixing and a thermometer: what one session is off, 0 ± 4 %, as a known time
 * repeats (common practice). Twelve strips of one evening tell little more of tomorrow than four do. Where
 * each bath is mixed anew, the runs of one day that name no batch are of one mixing.
 *
 * @remarks A session older than the newest 24 has no number, and neither has one of a single run. Its n runs
 * count with n times that variance each, which leaves the variance of one session in their mean.
 */
export const sessionTerm: RunTerm = {
  name: "session",
  asked: false,
  over(runs, { batchLogSd: mixed = 0 }) {
    const counts = new Map<string, number>();
    for (const day of runs.flatMap(dayOf)) counts.set(day, (counts.get(day) ?? 0) + 1);
    const sessions = [...counts].filter(([, count]) => count > 1).map(([day]) => day);
    const newest = sessions.sort().slice(-MOST_SESSIONS);
    return {
      unknowns: newest.map((day) => ({ parameter: `session ${day}`, sd: REPEAT_LOG_SD })),
      run(marks: RunMarks): Row {
        const [day] = dayOf(marks);
        const own = marks.printed === true || marks.batch !== undefined || marks.strength !== undefined;
        const mixing = own ? 0 : mixed;
        if (day === undefined) return mixing === 0 ? NO_ROW : { slopes: [], beside: mixing ** 2 };
        const sd = Math.hypot(REPEAT_LOG_SD, mixing);
        if (newest.includes(day)) return rowOf(`session ${day}`, sd / REPEAT_LOG_SD);
        return { slopes: [], beside: (counts.get(day) ?? 1) * sd ** 2 };
      },
      question: () => NO_ROW,
    };
  },
};
