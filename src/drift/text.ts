/*
 * Module: drift. The English sentences of its cautions, each from its data.
 */
import type { CautionSentences } from "../core/cautionTexts.js";
import { lengthText } from "../quantities/lengthText.js";

/** The sentence of each caution of this module. */
export const driftSentences: Pick<CautionSentences, "log-gap" | "target-passed"> = {
  "log-gap": ({ limit, actual }) =>
    `A gap of ${lengthText(actual)} is longer than the rest of the log, ${lengthText(limit)}. ` +
    `The line across it is a guess.`,
  "target-passed": ({ limit, actual }) => `The development is ${lengthText(actual - limit)} past its time.`,
};
