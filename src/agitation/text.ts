/*
 * Module: agitation. The English sentences of its cautions, each from its data.
 */
import type { CautionSentences } from "../core/cautionTexts.js";
import { lengthText } from "../quantities/lengthText.js";

/** The sentence of each caution of this module. */
export const agitationSentences: Pick<CautionSentences, "stand" | "long-interval"> = {
  "stand": ({ data }) =>
    (data.side === "baseline" ? "The known time is one of stand development. That " : "Stand development ") +
    "depends on local exhaustion. Treat this time as a rough guide.",
  "long-interval": ({ limit }) => `The law of agitation serves intervals up to ${lengthText(limit)}.`,
};
