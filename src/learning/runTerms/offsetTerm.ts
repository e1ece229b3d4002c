import { BATCH, logSdOfMark, offsetName, PERSON, THERMOMETER, type Mark } from "../../compensate/marks.js";
import { NO_ROW, rowOf, type Row } from "../../core/row.js";
import type { RunMarks, RunTerm } from "./runTerm.js";

/** The offset of every thermometer that runs name. */
export const thermometerTerm: RunTerm = offsetTerm(THERMOMETER);

/** The offset of everyone that runs name. */
export const personTerm: RunTerm = offsetTerm(PERSON);

/**
 * The offset of every batch that runs name: a bottle, or a mixing. A question that names none is about a
 * further one, where runs came out of several or the laws say that each bath is mixed anew.
 */
export const batchTerm: RunTerm = offsetTerm(BATCH);

/**
 * A term with one offset for each name that runs give: 0 ± its spread. A run without a name has none. A
 * question about a name that no run gave has the spread beside it; one without a name means the name that
 * every run gives, where there is one.
 */
function offsetTerm(mark: Mark): RunTerm {
  const { field } = mark;
  const isBatch = field === "batch";
  // A printed row is nobody's, and what a batch is by its strength needs no other number.
  const hasOwn = (run: RunMarks): boolean => run.printed !== true && !(isBatch && run.strength !== undefined);
  const nameOf = (run: RunMarks): string | undefined => (hasOwn(run) ? run[field] : undefined);
  return {
    name: field,
    asked: true,
    over(runs, { batchLogSd }) {
      const sd = logSdOfMark(mark, batchLogSd);
      const names = [...new Set(runs.flatMap((run) => nameOf(run) ?? []))].sort();
      const rows = new Map(names.map((name) => [name, rowOf(offsetName(field, name), 1)]));
      const unknown: Row = { slopes: [], beside: sd * sd };
      const row = (name: string | undefined): Row =>
        name === undefined ? NO_ROW : (rows.get(name) ?? unknown);
      const all = names.length === 1 && runs.every((run) => !hasOwn(run) || run[field] !== undefined);
      const usual = all ? names[0] : undefined;
      const further = isBatch && (names.length > 0 || batchLogSd !== undefined);
      return {
        unknowns: names.map((name) => ({ parameter: offsetName(field, name), sd })),
        run: (marks) => row(nameOf(marks)),
        question(marks) {
          if (!hasOwn(marks)) return NO_ROW;
          const name = marks[field] ?? usual;
          return name === undefined && further ? unknown : row(name);
        },
        ...(usual !== undefined && { usual: offsetName(field, usual) }),
      };
    },
  };
}
