import { NO_ROW, type Row } from "../../core/row.js";
import type { RunMarks, RunTerm } from "./runTerm.js";

/**
 * What readings of one kind have in common: one factor of appearance, one growth of contrast, one eye.
 * However many runs there are, they are off alike.
 */
export const outcomeTerm: RunTerm = {
  name: "outcome",
  asked: false,
  over(runs) {
    const names = new Set(runs.flatMap(({ shared }) => shared?.parameter ?? []));
    return {
      unknowns: [...names].sort().map((parameter) => ({ parameter, sd: 1 })),
      run: ({ shared }: RunMarks): Row => (shared === undefined ? NO_ROW : { slopes: [shared], beside: 0 }),
      question: () => NO_ROW,
    };
  },
};
