import type { CautionTexts } from "../core/cautionTexts.js";
import { farSentence } from "../core/text.js";
import { eveningSentences } from "../process/eveningText.js";
import { processSentences, severityTexts } from "../process/text.js";
import { readingSentences } from "../steering/text.js";
import { temperatureSentences } from "../temperature/text.js";

/**
 * Cautions in English. Their own messages say it already, with temperatures in °C: only the sentences that
 * name a temperature are here, for those who see it in °F.
 */
export const englishCautions: CautionTexts = {
  severities: severityTexts,
  sentences: {
    ...farSentence,
    ...temperatureSentences,
    ...readingSentences,
    ...eveningSentences,
    "temperature-step": processSentences["temperature-step"],
  },
};
