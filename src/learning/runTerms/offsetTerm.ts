import { NO_ROW, type Row } from "../../core/row.js";
import type { RunMarks, RunTerm } from "./runTerm.js";

/** Every thermometer reads ln(time) off by 0 ± 0.06, about 0.8 °C (an assumption of this package). */
export const thermometerTerm: RunTerm = offsetTerm("thermometer", 0.06);

/** Everyone calls another negative right, 0 ± 0.15 in ln(time) (an assumption of this package). */
export const personTerm: RunTerm = offsetTerm("by", 0.15);

/**
 * A term with one offset for each name that runs give: 0 ± sd. A run without a name has none. A question about
 * a name that no run gave has the spread beside it.
 */
function offsetTerm(field: "thermometer" | "by", sd: number): RunTerm {
  return {
    name: field,
    over(runs) {
      const names = [...new Set(runs.flatMap((run) => run[field] ?? []))].sort();
      const rows = new Map(names.map((name) => [name, offset(`${field} ${name}`)]));
      const row = (marks: RunMarks): Row => {
        const name = marks[field];
        return name === undefined ? NO_ROW : (rows.get(name) ?? { slopes: [], beside: sd * sd });
      };
      return {
        unknowns: names.map((name) => ({ parameter: `${field} ${name}`, sd })),
        run: row,
        question: row,
      };
    },
  };
}

const offset = (parameter: string): Row => ({ slopes: [{ parameter, slope: 1 }], beside: 0 });
