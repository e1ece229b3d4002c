import { NO_ROW, type Row } from "../../core/row.js";
import type { RunMarks, RunTerm } from "./runTerm.js";

/** Makers' times and one's own for one film and developer lie about 20 % apart (common practice). */
const PRINTED_LOG_SD = 0.2;

const PRINTED: Row = { slopes: [{ parameter: "printed", slope: 1 }], beside: 0 };

/** Printed rows share one number: the maker's base against mine, 0 ± 0.2 in ln(time). */
export const printedTerm: RunTerm = {
  name: "printed",
  asked: false,
  over(runs) {
    const row = ({ printed }: RunMarks): Row => (printed === true ? PRINTED : NO_ROW);
    const unknowns = runs.some(({ printed }) => printed)
      ? [{ parameter: "printed", sd: PRINTED_LOG_SD }]
      : [];
    return { unknowns, run: row, question: () => NO_ROW };
  },
};
