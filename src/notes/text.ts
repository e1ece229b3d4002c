/*
 * Module: notes. The English of the rules that a row of notes may break.
 */
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
