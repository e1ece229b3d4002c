import { offsetName, PERSON, THERMOMETER, type Mark } from "../../compensate/marks.js";
import { NO_ROW, rowOf, type Row } from "../../core/row.js";
import type { RunTerm } from "./runTerm.js";

/** The offset of every thermometer that runs name. */
export const thermometerTerm: RunTerm = offsetTerm(THERMOMETER);

/** The offset of everyone that runs name. */
export const personTerm: RunTerm = offsetTerm(PERSON);

/**
 * A term with one offset for each name that runs give: 0 ± its spread. A run without a name has none. A
 * question about a name that no run gave has the spread beside it; one without a name means the name that
 * every run gives, where there is one.
 */
function offsetTerm({ field, logSd: sd }: Mark): RunTerm {
  return {
    name: field,
    asked: true,
    over(runs) {
      const names = [...new Set(runs.flatMap((run) => run[field] ?? []))].sort();
      const rows = new Map(names.map((name) => [name, rowOf(offsetName(field, name), 1)]));
      const row = (name: string | undefined): Row =>
        name === undefined ? NO_ROW : (rows.get(name) ?? { slopes: [], beside: sd * sd });
      // A printed row is nobody's.
      const all = names.length === 1 && runs.every((run) => run.printed === true || run[field] !== undefined);
      const usual = all ? names[0] : undefined;
      return {
        unknowns: names.map((name) => ({ parameter: offsetName(field, name), sd })),
        run: (marks) => row(marks[field]),
        question: (marks) => row(marks[field] ?? usual),
        ...(usual !== undefined && { usual: offsetName(field, usual) }),
      };
    },
  };
}
