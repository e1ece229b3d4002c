import { offsetName, PERSON, THERMOMETER, type Mark } from "../../compensate/marks.js";
import { NO_ROW, rowOf, type Row } from "../../core/row.js";
import type { RunMarks, RunTerm } from "./runTerm.js";

/** The offset of every thermometer that runs name. */
export const thermometerTerm: RunTerm = offsetTerm(THERMOMETER);

/** The offset of everyone that runs name. */
export const personTerm: RunTerm = offsetTerm(PERSON);

/**
 * A term with one offset for each name that runs give: 0 ± its spread. A run without a name has none. A
 * question about a name that no run gave has the spread beside it.
 */
function offsetTerm({ field, logSd: sd }: Mark): RunTerm {
  return {
    name: field,
    asked: true,
    over(runs) {
      const names = [...new Set(runs.flatMap((run) => run[field] ?? []))].sort();
      const rows = new Map(names.map((name) => [name, rowOf(offsetName(field, name), 1)]));
      const row = (marks: RunMarks): Row => {
        const name = marks[field];
        return name === undefined ? NO_ROW : (rows.get(name) ?? { slopes: [], beside: sd * sd });
      };
      return {
        unknowns: names.map((name) => ({ parameter: offsetName(field, name), sd })),
        run: row,
        question: row,
      };
    },
  };
}
