/*
 * Module: notes. The English of the rules that a row of notes may break, and of its cautions.
 */
import type { CautionSentences } from "../core/cautionTexts.js";
import type { InputWanted } from "../core/errorRules.js";
import { idText } from "../learning/text.js";

export const missingText = "is missing";

export const oneColumnText: InputWanted<"one-column"> = ({ headings }) =>
  `one column, not ${headings.join(" and ")}`;

export const otherRunText: InputWanted<"other-run"> = ({ row }) =>
  `another run than that of row ${row}: a second plate needs an id of its own`;

/** The id of another row, where learning knows no rows. */
export const idOfRowText: InputWanted<"id-of-one-run"> = ({ row }, actual) =>
  row === undefined ? idText({}, actual) : `the id of one run only, and not that of row ${row}`;

export const overOrUnderText: InputWanted<"over-or-under"> = ({ readings }) => {
  const half = readings.length / 2;
  const side = (ways: readonly string[]): string => ways.map((one) => `"${one}"`).join(" or ");
  return (
    `${side(readings.slice(0, half))} if it came out too dense, ` +
    `or ${side(readings.slice(half))} if it needed more`
  );
};

export const subjectText: InputWanted<"process-or-subject"> = ({ readings: [judged] }) =>
  judged === "thin"
    ? `"thin" if it needed more development, or "good" if the subject was flat`
    : `"dense" if it needed less development, or "good" if the subject was contrasty`;

/** The codes of the cautions that this module gives. */
export type NotesCautionCode = "mixed-notes";

/** The sentence of each caution of this module. */
export const notesSentences: Pick<CautionSentences, NotesCautionCode> = {
  "mixed-notes": ({ actual, data: { heading, values, unnamed } }) => {
    const named = values.map(({ value, runs }, i) => `${value} (${i === 0 ? rows(runs) : runs})`);
    const more = actual - values.length;
    return (
      `${heading} has ${actual} ${actual === 1 ? "value" : "values"}: ${named.join(", ")}` +
      (more > 0 ? ` and ${more} more` : "") +
      (unnamed > 0 ? `; ${rows(unnamed)} without one` : "") +
      ". They are read as one."
    );
  },
};

const rows = (count: number): string => `${count} ${count === 1 ? "row" : "rows"}`;
