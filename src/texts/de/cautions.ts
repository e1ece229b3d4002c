/*
 * Every caution in German, made from its data: the type says that none is missing.
 */
import type { CautionSentences, CautionTexts } from "../../core/cautionTexts.js";
import { answerSentences } from "./answerCautions.js";
import { brewSentences } from "./brewCautions.js";
import { runSentences } from "./runCautions.js";
import { severities } from "./words.js";

/** All cautions in German. */
export const cautions: CautionTexts & { readonly sentences: CautionSentences } = {
  severities,
  sentences: { ...answerSentences, ...brewSentences, ...runSentences },
};
